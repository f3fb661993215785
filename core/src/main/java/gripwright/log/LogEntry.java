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
import org.jspecify.annotations.Nullable;

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

  /** Completed work of one exercise. Immutable. */
  final class Done {
    /** The components, checked. */
    private record DoneParts(
        String protocol,
        Setup setup,
        OptionalInt sets,
        OptionalInt setsPlanned,
        Optional<Load> load,
        OptionalDouble effort,
        OptionalDouble pain) {
      DoneParts {
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
    }

    private final DoneParts parts;

    private Done(DoneParts parts) {
      this.parts = parts;
    }

    /**
     * Returns a builder for completed work of one exercise.
     *
     * @param protocol name of the protocol
     * @param setup grip, edge and hands
     */
    public static Builder builder(String protocol, Setup setup) {
      return new Builder(protocol, setup);
    }

    /** Returns a builder with these components. */
    public Builder toBuilder() {
      return new Builder(parts);
    }

    /** Returns the name of the protocol. */
    public String protocol() {
      return parts.protocol;
    }

    /** Returns the grip, edge and hands. */
    public Setup setup() {
      return parts.setup;
    }

    /** Returns the number of sets done, 0 to 1000, if written. */
    public OptionalInt sets() {
      return parts.sets;
    }

    /** Returns the number of sets planned, 1 to 1000, if written. */
    public OptionalInt setsPlanned() {
      return parts.setsPlanned;
    }

    /** Returns the total load, above 0 kg and up to 1000 kg, if written. */
    public Optional<Load> load() {
      return parts.load;
    }

    /** Returns the effort, 0 to 10, if written. */
    public OptionalDouble effort() {
      return parts.effort;
    }

    /** Returns the pain, 0 to 10, if written. */
    public OptionalDouble pain() {
      return parts.pain;
    }

    /** Returns whether all planned sets are logged as done. */
    public boolean inFull() {
      return parts.sets.isPresent()
          && (parts.setsPlanned.isEmpty() || parts.sets.getAsInt() >= parts.setsPlanned.getAsInt());
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Done that && parts.equals(that.parts);
    }

    @Override
    public int hashCode() {
      return parts.hashCode();
    }

    @Override
    public String toString() {
      return "Done" + parts.toString().substring("DoneParts".length());
    }

    /** Collects the components. Not thread-safe. */
    public static final class Builder {
      private String protocol;
      private Setup setup;
      private OptionalInt sets = OptionalInt.empty();
      private OptionalInt setsPlanned = OptionalInt.empty();
      private Optional<Load> load = Optional.empty();
      private OptionalDouble effort = OptionalDouble.empty();
      private OptionalDouble pain = OptionalDouble.empty();

      private Builder(String protocol, Setup setup) {
        this.protocol = Objects.requireNonNull(protocol, "protocol");
        this.setup = Objects.requireNonNull(setup, "setup");
      }

      private Builder(DoneParts copied) {
        protocol = copied.protocol;
        setup = copied.setup;
        sets = copied.sets;
        setsPlanned = copied.setsPlanned;
        load = copied.load;
        effort = copied.effort;
        pain = copied.pain;
      }

      /** Sets the name of the protocol. */
      public Builder protocol(String value) {
        Objects.requireNonNull(value, "value");
        protocol = value;
        return this;
      }

      /** Sets the grip, edge and hands. */
      public Builder setup(Setup value) {
        Objects.requireNonNull(value, "value");
        setup = value;
        return this;
      }

      /** Sets the number of sets done, 0 to 1000. */
      public Builder sets(int value) {
        return sets(OptionalInt.of(value));
      }

      /** Sets the number of sets done, 0 to 1000, if written. */
      public Builder sets(OptionalInt value) {
        Objects.requireNonNull(value, "value");
        sets = value;
        return this;
      }

      /** Sets the number of sets planned, 1 to 1000. */
      public Builder setsPlanned(int value) {
        return setsPlanned(OptionalInt.of(value));
      }

      /** Sets the number of sets planned, 1 to 1000, if written. */
      public Builder setsPlanned(OptionalInt value) {
        Objects.requireNonNull(value, "value");
        setsPlanned = value;
        return this;
      }

      /** Sets the total load, above 0 kg and up to 1000 kg. */
      public Builder load(Load value) {
        Objects.requireNonNull(value, "value");
        return load(Optional.of(value));
      }

      /** Sets the total load, above 0 kg and up to 1000 kg, if written. */
      public Builder load(Optional<Load> value) {
        Objects.requireNonNull(value, "value");
        load = value;
        return this;
      }

      /** Sets the effort, 0 to 10. */
      public Builder effort(double value) {
        return effort(OptionalDouble.of(value));
      }

      /** Sets the effort, 0 to 10, if written. */
      public Builder effort(OptionalDouble value) {
        Objects.requireNonNull(value, "value");
        effort = value;
        return this;
      }

      /** Sets the pain, 0 to 10. */
      public Builder pain(double value) {
        return pain(OptionalDouble.of(value));
      }

      /** Sets the pain, 0 to 10, if written. */
      public Builder pain(OptionalDouble value) {
        Objects.requireNonNull(value, "value");
        pain = value;
        return this;
      }

      /**
       * Returns the completed work.
       *
       * @throws IllegalArgumentException if a value is present and outside its {@link Range}
       */
      public Done build() {
        return new Done(new DoneParts(protocol, setup, sets, setsPlanned, load, effort, pain));
      }
    }
  }

  /** Climbing outside the plan. Immutable. */
  final class Climbed implements LogEntry {
    /** The components, checked. */
    private record ClimbedParts(
        LocalDate date,
        boolean hard,
        String how,
        Duration time,
        OptionalDouble effort,
        OptionalDouble pain,
        Optional<String> note) {
      ClimbedParts {
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
    }

    private final ClimbedParts parts;

    private Climbed(ClimbedParts parts) {
      this.parts = parts;
    }

    /**
     * Returns a builder for climbing outside the plan.
     *
     * @param date the day, in the years 1900 to 2199
     * @param hard whether it was hard on the fingers
     * @param how the word in the log, such as {@code hard}
     * @param time how long it was, above 0 and up to 16 h
     */
    public static Builder builder(LocalDate date, boolean hard, String how, Duration time) {
      return new Builder(date, hard, how, time);
    }

    /** Returns a builder with these components. */
    public Builder toBuilder() {
      return new Builder(parts);
    }

    /** Returns the day. */
    @Override
    public LocalDate date() {
      return parts.date;
    }

    /** Returns whether it was hard on the fingers. */
    public boolean hard() {
      return parts.hard;
    }

    /** Returns the word in the log, such as {@code hard}. */
    public String how() {
      return parts.how;
    }

    /** Returns how long it was, above 0 and up to 16 h. */
    public Duration time() {
      return parts.time;
    }

    /** Returns the effort, 0 to 10, if written. */
    public OptionalDouble effort() {
      return parts.effort;
    }

    /** Returns the pain, 0 to 10, if written. */
    public OptionalDouble pain() {
      return parts.pain;
    }

    /** Returns a note in the athlete's words. */
    public Optional<String> note() {
      return parts.note;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.climbed(this);
    }

    @Override
    public void pain(PainReader reader) {
      parts.pain.ifPresent(score -> reader.whileClimbing(this, score));
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Climbed that && parts.equals(that.parts);
    }

    @Override
    public int hashCode() {
      return parts.hashCode();
    }

    @Override
    public String toString() {
      return "Climbed" + parts.toString().substring("ClimbedParts".length());
    }

    /** Collects the components. Not thread-safe. */
    public static final class Builder {
      private LocalDate date;
      private boolean hard;
      private String how;
      private Duration time;
      private OptionalDouble effort = OptionalDouble.empty();
      private OptionalDouble pain = OptionalDouble.empty();
      private Optional<String> note = Optional.empty();

      private Builder(LocalDate date, boolean hard, String how, Duration time) {
        this.date = Objects.requireNonNull(date, "date");
        this.hard = hard;
        this.how = Objects.requireNonNull(how, "how");
        this.time = Objects.requireNonNull(time, "time");
      }

      private Builder(ClimbedParts copied) {
        date = copied.date;
        hard = copied.hard;
        how = copied.how;
        time = copied.time;
        effort = copied.effort;
        pain = copied.pain;
        note = copied.note;
      }

      /** Sets the day. */
      public Builder date(LocalDate value) {
        Objects.requireNonNull(value, "value");
        date = value;
        return this;
      }

      /** Sets whether it was hard on the fingers. */
      public Builder hard(boolean value) {
        hard = value;
        return this;
      }

      /** Sets the word in the log, such as {@code hard}. */
      public Builder how(String value) {
        Objects.requireNonNull(value, "value");
        how = value;
        return this;
      }

      /** Sets how long it was, above 0 and up to 16 h. */
      public Builder time(Duration value) {
        Objects.requireNonNull(value, "value");
        time = value;
        return this;
      }

      /** Sets the effort, 0 to 10. */
      public Builder effort(double value) {
        return effort(OptionalDouble.of(value));
      }

      /** Sets the effort, 0 to 10, if written. */
      public Builder effort(OptionalDouble value) {
        Objects.requireNonNull(value, "value");
        effort = value;
        return this;
      }

      /** Sets the pain, 0 to 10. */
      public Builder pain(double value) {
        return pain(OptionalDouble.of(value));
      }

      /** Sets the pain, 0 to 10, if written. */
      public Builder pain(OptionalDouble value) {
        Objects.requireNonNull(value, "value");
        pain = value;
        return this;
      }

      /** Sets a note in the athlete's words. */
      public Builder note(String value) {
        Objects.requireNonNull(value, "value");
        return note(Optional.of(value));
      }

      /** Sets a note in the athlete's words. */
      public Builder note(Optional<String> value) {
        Objects.requireNonNull(value, "value");
        note = value;
        return this;
      }

      /**
       * Returns the climbing entry.
       *
       * @throws IllegalArgumentException if a value is outside its {@link Range}
       */
      public Climbed build() {
        return new Climbed(new ClimbedParts(date, hard, how, time, effort, pain, note));
      }
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

  /** Pain of a finger. Immutable. */
  final class Pain implements LogEntry {
    /** The components, checked. */
    private record PainParts(
        LocalDate date,
        Finger finger,
        Optional<Structure> structure,
        Optional<Side> side,
        double score,
        Kind kind,
        Optional<String> note) {
      PainParts {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(finger, "finger");
        Objects.requireNonNull(structure, "structure");
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(note, "note");
        Range.YEAR.check(date);
        Range.PAIN.check(score);
      }
    }

    private final PainParts parts;

    private Pain(PainParts parts) {
      this.parts = parts;
    }

    /**
     * Returns a builder for pain that is neither sharp nor sudden unless set.
     *
     * @param date the day, in the years 1900 to 2199
     * @param finger the finger
     * @param score 0 to 10
     */
    public static Builder builder(LocalDate date, Finger finger, double score) {
      return new Builder(date, finger, score);
    }

    /** Returns a builder with these components. */
    public Builder toBuilder() {
      return new Builder(parts);
    }

    /** Returns the day. */
    @Override
    public LocalDate date() {
      return parts.date;
    }

    /** Returns the finger. */
    public Finger finger() {
      return parts.finger;
    }

    /** Returns what hurts, if known. */
    public Optional<Structure> structure() {
      return parts.structure;
    }

    /** Returns which hand; empty if both or not reported. */
    public Optional<Side> side() {
      return parts.side;
    }

    /** Returns the score, 0 to 10. */
    public double score() {
      return parts.score;
    }

    /** Returns whether it was sharp, sudden or neither. */
    public Kind kind() {
      return parts.kind;
    }

    /** Returns a note in the athlete's words. */
    public Optional<String> note() {
      return parts.note;
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

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Pain that && parts.equals(that.parts);
    }

    @Override
    public int hashCode() {
      return parts.hashCode();
    }

    @Override
    public String toString() {
      return "Pain" + parts.toString().substring("PainParts".length());
    }

    /** Collects the components. Not thread-safe. */
    public static final class Builder {
      private LocalDate date;
      private Finger finger;
      private Optional<Structure> structure = Optional.empty();
      private Optional<Side> side = Optional.empty();
      private double score;
      private Kind kind = Kind.DULL;
      private Optional<String> note = Optional.empty();

      private Builder(LocalDate date, Finger finger, double score) {
        this.date = Objects.requireNonNull(date, "date");
        this.finger = Objects.requireNonNull(finger, "finger");
        this.score = score;
      }

      private Builder(PainParts copied) {
        date = copied.date;
        finger = copied.finger;
        structure = copied.structure;
        side = copied.side;
        score = copied.score;
        kind = copied.kind;
        note = copied.note;
      }

      /** Sets the day. */
      public Builder date(LocalDate value) {
        Objects.requireNonNull(value, "value");
        date = value;
        return this;
      }

      /** Sets the finger. */
      public Builder finger(Finger value) {
        Objects.requireNonNull(value, "value");
        finger = value;
        return this;
      }

      /** Sets what hurts. */
      public Builder structure(Structure value) {
        Objects.requireNonNull(value, "value");
        return structure(Optional.of(value));
      }

      /** Sets what hurts, if known. */
      public Builder structure(Optional<Structure> value) {
        Objects.requireNonNull(value, "value");
        structure = value;
        return this;
      }

      /** Sets the hand. */
      public Builder side(Side value) {
        Objects.requireNonNull(value, "value");
        return side(Optional.of(value));
      }

      /** Sets which hand; empty if both or not reported. */
      public Builder side(Optional<Side> value) {
        Objects.requireNonNull(value, "value");
        side = value;
        return this;
      }

      /** Sets the score, 0 to 10. */
      public Builder score(double value) {
        score = value;
        return this;
      }

      /** Sets whether it was sharp, sudden or neither. */
      public Builder kind(Kind value) {
        Objects.requireNonNull(value, "value");
        kind = value;
        return this;
      }

      /** Sets a note in the athlete's words. */
      public Builder note(String value) {
        Objects.requireNonNull(value, "value");
        return note(Optional.of(value));
      }

      /** Sets a note in the athlete's words. */
      public Builder note(Optional<String> value) {
        Objects.requireNonNull(value, "value");
        note = value;
        return this;
      }

      /**
       * Returns the pain entry.
       *
       * @throws IllegalArgumentException if the score is outside 0 to 10, or the year is outside
       *     1900 to 2199
       */
      public Pain build() {
        return new Pain(new PainParts(date, finger, structure, side, score, kind, note));
      }
    }
  }
}
