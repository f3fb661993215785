package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A dated line of a log. */
public sealed interface LogLine extends Syntax {

  /** Returns the day the line is about. */
  DateText date();

  /** {@code DATE test GRIP edge 20 mm ...}. */
  record TestLine(
      int id, DateText date, Word grip, Setup setup, TestResult result, @Nullable Text note)
      implements LogLine {}

  /** {@code DATE session NAME { ... }}. */
  record SessionLine(
      int id, DateText date, Word name, @Nullable Text note, List<DoneLine> done, boolean damaged)
      implements LogLine {
    /** Copies the lists. */
    public SessionLine {
      done = List.copyOf(done);
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
      implements LogLine {}

  /** {@code DATE skipped NAME "..."}. */
  record SkippedLine(int id, DateText date, Word session, @Nullable Text note) implements LogLine {}

  /** {@code DATE body-mass 61.0 kg}. */
  record BodyMassLine(int id, DateText date, Amount mass) implements LogLine {}

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
      implements LogLine {}
}
