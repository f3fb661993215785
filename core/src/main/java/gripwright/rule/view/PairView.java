package gripwright.rule.view;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/** Two sessions, the earlier first, as read by rules. */
public record PairView(SessionView earlier, SessionView later) implements Subject {

  private static final double SECONDS_PER_DAY = 86_400;

  /** Returns the calendar days between them, of 24 h each, in seconds. */
  double gap() {
    return (later.day - earlier.day) * SECONDS_PER_DAY;
  }

  /**
   * Returns the time from the end of the earlier to the start of the later, in seconds; if a time
   * of day isn't known, that of the calendar days.
   */
  double pause() {
    double end = earlier.startSecond + 60 * earlier.minutes;
    double pause = gap() + later.startSecond - end;
    return Double.isNaN(pause) ? gap() : pause;
  }

  boolean sharedFingers() {
    return (earlier.fingerBits & later.fingerBits) != 0;
  }

  boolean sharedHardFingers() {
    return (earlier.hardFingerBits & later.hardFingerBits) != 0;
  }

  /**
   * Returns the session that a finding about the pair refers to, a training session if there is
   * one.
   */
  public SessionView place() {
    if (later.what == SessionView.What.TRAINING) {
      return later;
    }
    return earlier.what == SessionView.What.TRAINING || later.what == SessionView.What.CLIMBING
        ? earlier
        : later;
  }

  @Override
  public ModelPath path() {
    return place().path;
  }

  @Override
  public LocalDate date() {
    return later.date;
  }
}
