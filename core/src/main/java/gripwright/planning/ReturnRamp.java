package gripwright.planning;

import gripwright.athlete.Athlete;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Which share of the load a week gets after weeks without training: after 14 days or more away, 80
 * % and then 90 %; the whole load otherwise. The shares are the library's own choice.
 *
 * <p>Goes with the weeks: {@link #before} each, {@link #after} each. Not thread-safe.
 */
final class ReturnRamp {

  /** Days away in a row after which training starts again below where it stopped. */
  private static final int LONG_ABSENCE_DAYS = 14;

  private static final double[] SHARES = {0.8, 0.9};

  private final Athlete athlete;
  private int untrainedWeeks;
  private int returnWeek = SHARES.length;
  private double lastShare = 1;
  private boolean skippedLast;
  private String from = "";
  private boolean byLog;

  ReturnRamp(Athlete athlete) {
    this.athlete = athlete;
  }

  /**
   * Looks at the time before a week.
   *
   * @param first first day of the week
   * @param last last day with a session before it; empty if there was none
   * @param hurt true if pain that stops training was logged since then
   */
  void before(LocalDate first, Optional<LocalDate> last, boolean hurt) {
    if (skippedLast) {
      afterSkipped(first);
    }
    if (hurt && untrainedWeeks > 0) {
      returnWeek = 0;
      from = "first weeks after pain that stopped training";
      byLog = true;
    }
    if (last.isEmpty()) {
      return;
    }
    int longest = 0;
    int row = 0;
    for (LocalDate day = last.get().plusDays(1); day.isBefore(first.plusDays(7)); ) {
      row = athlete.isAway(day) ? row + 1 : 0;
      longest = Math.max(longest, row);
      day = day.plusDays(1);
    }
    boolean stillAway = row > 0; // the week itself is spent away, so nothing returns yet
    if (!stillAway && (longest >= LONG_ABSENCE_DAYS || untrainedWeeks >= 2)) {
      returnWeek = 0;
      byLog = skippedLast || hurt;
      from = byLog ? from : "first weeks after 14 days or more away";
    }
  }

  private void afterSkipped(LocalDate first) {
    boolean isLong = untrainedWeeks >= 2;
    byLog = true;
    returnWeek = Math.min(returnWeek, isLong ? 0 : SHARES.length - 1);
    from =
        isLong
            ? "first weeks after " + untrainedWeeks + " weeks without training"
            : "first week after one without training, from "
                + first.minusDays(7)
                + " to "
                + first.minusDays(1);
  }

  /** Returns what the load returns from, in words. */
  String from() {
    return from;
  }

  /** Tells whether the log alone says that there was such a time. */
  boolean byLog() {
    return byLog;
  }

  /** Tells whether nothing returns, so that something else may get harder. */
  boolean steady() {
    return returnWeek == SHARES.length && lastShare == 1;
  }

  /** Returns the share of the load of a week; an eased week keeps the last load per hold. */
  double share(boolean eased) {
    double share = returnWeek < SHARES.length ? SHARES[returnWeek] : 1;
    return eased ? Math.min(share, lastShare) : share;
  }

  /**
   * Notes what became of a week that had a share of the load.
   *
   * @param skipped true if sessions were planned in it and a log tells that none was trained
   */
  void after(boolean trained, boolean eased, double share, boolean skipped) {
    skippedLast = skipped;
    untrainedWeeks = trained ? 0 : untrainedWeeks + 1;
    if (trained && !eased) {
      lastShare = share;
      returnWeek = Math.min(SHARES.length, returnWeek + 1);
    }
  }
}
