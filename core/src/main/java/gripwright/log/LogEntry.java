package gripwright.log;

import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One dated line of a log. */
public sealed interface LogEntry {

  /** Returns the day. */
  LocalDate date();

  /** Returns what the visitor returns for this kind of line. */
  <R> R accept(Visitor<R> visitor);

  /** Reports each pain score of the line. */
  void pain(PainReader reader);

  /**
   * One method for each kind of line.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a test of strength. */
    R tested(Tested entry);

    /** Visits a session that was trained. */
    R trained(Trained entry);

    /** Visits climbing outside the plan. */
    R climbed(Climbed entry);

    /** Visits a session that was not trained. */
    R skipped(Skipped entry);

    /** Visits body mass. */
    R bodyMass(BodyMass entry);

    /** Visits pain. */
    R pain(Pain entry);
  }

  /** Receives the pain scores of a line: of a finger, of climbing or of an exercise. */
  interface PainReader {
    /** Receives pain of a finger. */
    void ofFinger(Pain pain);

    /** Receives pain while climbing. */
    void whileClimbing(Climbed climbed, double score);

    /** Receives pain in an exercise. */
    void inTraining(Trained trained, Done done, double score);
  }

  /** A line about a session, by its name in the plan. */
  sealed interface OfSession extends LogEntry {
    /** Returns the session's name in the plan. */
    String session();

    /** Returns a note in the athlete's words. */
    Optional<String> note();
  }

  /**
   * A test of strength.
   *
   * @param test the test
   * @param note in the athlete's words
   */
  record Tested(StrengthTest test, Optional<String> note) implements LogEntry {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the year is outside 1900 to 2199
     */
    public Tested {
      Objects.requireNonNull(test, "test");
      Objects.requireNonNull(note, "note");
      Range.YEAR.check(test.date());
    }

    /** Returns whether exactly this setup was tested. */
    public boolean isOf(Setup setup) {
      return test.setup().toString().equals(setup.toString());
    }

    @Override
    public LocalDate date() {
      return test.date();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tested(this);
    }

    @Override
    public void pain(PainReader reader) {
      // none
    }
  }

  /**
   * A session that was trained.
   *
   * @param date when
   * @param session its name in the plan
   * @param done exercises done, in order
   * @param note in the athlete's words
   */
  record Trained(LocalDate date, String session, List<Done> done, Optional<String> note)
      implements OfSession {
    /**
     * Copies the list and checks the range.
     *
     * @throws IllegalArgumentException if the year is outside 1900 to 2199
     */
    public Trained {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(session, "session");
      Objects.requireNonNull(done, "done");
      Objects.requireNonNull(note, "note");
      done = List.copyOf(done);
      Range.YEAR.check(date);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.trained(this);
    }

    @Override
    public void pain(PainReader reader) {
      done.forEach(each -> each.pain().ifPresent(score -> reader.inTraining(this, each, score)));
    }
  }

  /**
   * Completed work of one exercise.
   *
   * @param protocol name of the protocol
   * @param setup grip, edge and hands
   * @param sets sets done, 0 to 1000, if written
   * @param setsPlanned sets planned, 1 to 1000, if written
   * @param load total load, above 0 kg and up to 1000 kg, if written
   * @param effort 0 to 10, if written
   * @param pain 0 to 10, if written
   */
  record Done(
      String protocol,
      Setup setup,
      OptionalInt sets,
      OptionalInt setsPlanned,
      Optional<Load> load,
      OptionalDouble effort,
      OptionalDouble pain) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if a value is present and outside its {@link Range}
     */
    public Done {
      Objects.requireNonNull(protocol, "protocol");
      Objects.requireNonNull(setup, "setup");
      Objects.requireNonNull(sets, "sets");
      Objects.requireNonNull(setsPlanned, "setsPlanned");
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(effort, "effort");
      Objects.requireNonNull(pain, "pain");
      Range.SETS.check(sets);
      Range.REPEATS.check(setsPlanned);
      load.ifPresent(Range.LOAD::check);
      Range.EFFORT.check(effort);
      Range.PAIN.check(pain);
    }

    /** Returns whether all planned sets are logged as done. */
    public boolean inFull() {
      return sets.isPresent()
          && (setsPlanned.isEmpty() || sets.getAsInt() >= setsPlanned.getAsInt());
    }
  }

  /**
   * Climbing outside the plan.
   *
   * @param date when
   * @param hard true if it was hard on the fingers
   * @param how the word in the log, such as {@code hard}
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
      implements LogEntry {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if a value is outside its {@link Range}
     */
    public Climbed {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(how, "how");
      Objects.requireNonNull(time, "time");
      Objects.requireNonNull(effort, "effort");
      Objects.requireNonNull(pain, "pain");
      Objects.requireNonNull(note, "note");
      Range.YEAR.check(date);
      Range.CLIMBING.check(time);
      Range.EFFORT.check(effort);
      Range.PAIN.check(pain);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.climbed(this);
    }

    @Override
    public void pain(PainReader reader) {
      pain.ifPresent(score -> reader.whileClimbing(this, score));
    }
  }

  /**
   * A session that was planned and not trained.
   *
   * @param date when it was planned
   * @param session its name in the plan
   * @param note why
   */
  record Skipped(LocalDate date, String session, Optional<String> note) implements OfSession {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the year is outside 1900 to 2199
     */
    public Skipped {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(session, "session");
      Objects.requireNonNull(note, "note");
      Range.YEAR.check(date);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.skipped(this);
    }

    @Override
    public void pain(PainReader reader) {
      // none
    }
  }

  /**
   * Body mass.
   *
   * @param date when
   * @param mass 15 to 300 kg
   */
  record BodyMass(LocalDate date, Load mass) implements LogEntry {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the mass is outside 15 to 300 kg, or the year is outside
     *     1900 to 2199
     */
    public BodyMass {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(mass, "mass");
      Range.YEAR.check(date);
      Range.BODY_MASS.check(mass);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bodyMass(this);
    }

    @Override
    public void pain(PainReader reader) {
      // none
    }
  }

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
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the score is outside 0 to 10, or the year is outside 1900
     *     to 2199
     */
    public Pain {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(structure, "structure");
      Objects.requireNonNull(side, "side");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(note, "note");
      Range.YEAR.check(date);
      Range.PAIN.check(score);
    }

    /** Kinds of pain. */
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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pain(this);
    }

    @Override
    public void pain(PainReader reader) {
      reader.ofFinger(this);
    }
  }
}
