package gripwright.log;

import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One dated line of a log. */
public sealed interface LogEntry {

  /** Returns the day. */
  LocalDate date();

  /**
   * A test of strength.
   *
   * @param test the test
   * @param note in the athlete's words
   */
  record Tested(StrengthTest test, Optional<String> note) implements LogEntry {
    @Override
    public LocalDate date() {
      return test.date();
    }
  }

  /**
   * A session that was trained.
   *
   * @param date when
   * @param session its name in the plan
   * @param done what was done, in order
   * @param note in the athlete's words
   */
  record Trained(LocalDate date, String session, List<Done> done, Optional<String> note)
      implements LogEntry {
    /** Copies the list. */
    public Trained {
      done = List.copyOf(done);
    }
  }

  /**
   * What was done of one exercise.
   *
   * @param protocol name of the protocol
   * @param setup grip, edge and hands
   * @param sets sets done, if written
   * @param setsAsked sets asked for, if written
   * @param load total load, if written
   * @param effort 0 to 10, if written
   * @param pain 0 to 10, if written
   */
  record Done(
      String protocol,
      Setup setup,
      OptionalInt sets,
      OptionalInt setsAsked,
      Optional<Load> load,
      OptionalDouble effort,
      OptionalDouble pain) {

    /** Tells whether all sets that were asked for are written down as done. */
    public boolean inFull() {
      return sets.isPresent() && (setsAsked.isEmpty() || sets.getAsInt() >= setsAsked.getAsInt());
    }
  }

  /**
   * Climbing outside the plan.
   *
   * @param date when
   * @param hard true if it was hard on the fingers
   * @param how the word written, such as {@code hard}
   * @param time how long
   * @param effort 0 to 10, if written
   * @param pain 0 to 10, if written
   * @param note in the athlete's words
   */
  record Climbed(
      LocalDate date,
      boolean hard,
      String how,
      Duration time,
      OptionalDouble effort,
      OptionalDouble pain,
      Optional<String> note)
      implements LogEntry {}

  /**
   * A session that was planned and not trained.
   *
   * @param date when it was planned
   * @param session its name in the plan
   * @param note why
   */
  record Skipped(LocalDate date, String session, Optional<String> note) implements LogEntry {}

  /**
   * Body mass.
   *
   * @param date when
   * @param mass above 0 kg
   */
  record BodyMass(LocalDate date, Load mass) implements LogEntry {}

  /**
   * Pain.
   *
   * @param date when
   * @param finger where
   * @param structure what hurts, if known
   * @param side which hand; empty if both or not said
   * @param score 0 to 10
   * @param kind sharp, sudden or neither
   * @param note in the athlete's words
   */
  record Pain(
      LocalDate date,
      Finger finger,
      Optional<Structure> structure,
      Optional<Side> side,
      double score,
      Kind kind,
      Optional<String> note)
      implements LogEntry {

    /** What the pain was like. */
    public enum Kind {
      /** Neither sharp nor sudden. */
      DULL,
      /** Sharp. */
      SHARP,
      /** It came suddenly. */
      SUDDEN
    }

    /** The score above which a grip is stopped; the limit of 5 of the pain-monitoring model. */
    public static final double LIMIT = 5;

    /** Tells whether the pain calls for stopping: above the limit, sharp or sudden. */
    public boolean stops() {
      return score > LIMIT || kind != Kind.DULL;
    }
  }
}
