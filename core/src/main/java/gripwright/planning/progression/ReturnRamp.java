package gripwright.planning.progression;

import gripwright.athlete.Athlete;
import gripwright.schedule.Cause;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The share of the load in a week after weeks without training: 80 % and then 90 % after 14 days or
 * more away; the full load otherwise. The shares are the library's own choice. Immutable: {@link
 * #before} a week and {@link #after} it return what follows.
 *
 * @param athlete whose days away count
 * @param untrainedWeeks weeks in a row without training
 * @param returnWeek which week of the return comes next; the number of its weeks if none does
 * @param lastShare share of the load in the last trained week that was not eased
 * @param skippedLast true if nothing planned was trained in the last week
 * @param from the cause of the last return, if there was one
 * @param byLog true if only the log shows that time without training
 */
public record ReturnRamp(
    Athlete athlete,
    int untrainedWeeks,
    int returnWeek,
    double lastShare,
    boolean skippedLast,
    Optional<Cause> from,
    boolean byLog) {

  /** Days away in a row after which training starts again below where it stopped. */
  private static final int LONG_ABSENCE_DAYS = 14;

  private static final double[] SHARES = {0.8, 0.9};

  /** Returns a ramp for an athlete without a time off. */
  public static ReturnRamp none(Athlete athlete) {
    return new ReturnRamp(athlete, 0, SHARES.length, 1, false, Optional.empty(), false);
  }

  /**
   * Returns the ramp as of the beginning of a week.
   *
   * @param first first day of the week
   * @param last last day with a session before it; empty if there was none
   * @param hurt true if pain that stops training was logged since then
   */
  public ReturnRamp before(LocalDate first, Optional<LocalDate> last, boolean hurt) {
    ReturnRamp ramp = skippedLast ? afterSkipped(first) : this;
    if (hurt && untrainedWeeks > 0) {
      ramp = ramp.returning(0, Optional.of(new Cause.AfterPain()), true);
    }
    if (last.isEmpty()) {
      return ramp;
    }
    int longest = 0;
    int row = 0;
    for (LocalDate day = last.get().plusDays(1); day.isBefore(first.plusDays(7)); ) {
      row = athlete.isAway(day) ? row + 1 : 0;
      longest = Math.max(longest, row);
      day = day.plusDays(1);
    }
    boolean stillAway = row > 0; // the athlete is away all week, so the return has not begun
    if (stillAway || (longest < LONG_ABSENCE_DAYS && untrainedWeeks < 2)) {
      return ramp;
    }
    return skippedLast || hurt
        ? ramp.returning(0, ramp.from, true)
        : ramp.returning(0, Optional.of(new Cause.AfterAbsence(LONG_ABSENCE_DAYS)), false);
  }

  private ReturnRamp afterSkipped(LocalDate first) {
    boolean isLong = untrainedWeeks >= 2;
    return returning(
        Math.min(returnWeek, isLong ? 0 : SHARES.length - 1),
        Optional.of(
            isLong
                ? new Cause.AfterWeeksOff(untrainedWeeks)
                : new Cause.AfterWeekOff(first.minusDays(7), first.minusDays(1))),
        true);
  }

  private ReturnRamp returning(int week, Optional<Cause> reason, boolean fromLog) {
    return new ReturnRamp(athlete, untrainedWeeks, week, lastShare, skippedLast, reason, fromLog);
  }

  /** Returns whether no load is returning, so that steps may be taken. */
  public boolean steady() {
    return returnWeek == SHARES.length && lastShare == 1;
  }

  /** Returns the share of the load of a week; an eased week keeps the last load per hold. */
  public double share(boolean eased) {
    double share = returnWeek < SHARES.length ? SHARES[returnWeek] : 1;
    return eased ? Math.min(share, lastShare) : share;
  }

  /**
   * Returns the ramp after a week that had a share of the load.
   *
   * @param skipped true if sessions were planned in it and none was trained, as logged
   */
  public ReturnRamp after(boolean trained, boolean eased, double share, boolean skipped) {
    boolean steps = trained && !eased;
    return new ReturnRamp(
        athlete,
        trained ? 0 : untrainedWeeks + 1,
        steps ? Math.min(SHARES.length, returnWeek + 1) : returnWeek,
        steps ? share : lastShare,
        skipped,
        from,
        byLog);
  }
}
