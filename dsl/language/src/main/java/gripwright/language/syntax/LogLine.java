package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A dated line of a log. */
public sealed interface LogLine extends Syntax {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of line of a log.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a test. */
    R testLine(TestLine line);

    /** Visits a session. */
    R sessionLine(SessionLine line);

    /** Visits climbing. */
    R climbingLine(ClimbingLine line);

    /** Visits a session that was skipped. */
    R skippedLine(SkippedLine line);

    /** Visits a body mass. */
    R bodyMassLine(BodyMassLine line);

    /** Visits pain. */
    R painLine(PainLine line);
  }

  /** Returns the day the line is about. */
  DateText date();

  /** {@code DATE test GRIP edge 20 mm ...}. */
  record TestLine(
      int id, DateText date, Word grip, Setup setup, TestResult result, @Nullable Text note)
      implements LogLine {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.testLine(this);
    }
  }

  /** {@code DATE session NAME { ... }}. */
  record SessionLine(
      int id, DateText date, Word name, @Nullable Text note, List<DoneLine> done, boolean damaged)
      implements LogLine {
    /** Copies the lists. */
    public SessionLine {
      done = List.copyOf(done);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sessionLine(this);
    }
  }

  /** {@code DATE climbing hard 120 min effort 8}. */
  record ClimbingLine(
      int id,
      DateText date,
      Word how,
      Amount time,
      @Nullable Amount effort,
      @Nullable Amount pain,
      @Nullable Text note)
      implements LogLine {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.climbingLine(this);
    }
  }

  /** {@code DATE skipped NAME "..."}. */
  record SkippedLine(int id, DateText date, Word session, @Nullable Text note) implements LogLine {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.skippedLine(this);
    }
  }

  /** {@code DATE body-mass 61.0 kg}. */
  record BodyMassLine(int id, DateText date, Amount mass) implements LogLine {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bodyMassLine(this);
    }
  }

  /** {@code DATE pain ring a2 left 3 sharp "..."}. */
  record PainLine(
      int id,
      DateText date,
      Word finger,
      @Nullable Word structure,
      @Nullable Word side,
      Amount score,
      @Nullable Word kind,
      @Nullable Text note)
      implements LogLine {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.painLine(this);
    }
  }
}
