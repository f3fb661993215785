package gripwright.planning.placement;

import gripwright.athlete.Athlete;
import gripwright.plan.Plan;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.schedule.PlacementReason;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the day of a week for tests: a rested one, or else that of the hardest session. */
public final class RetestDay {

  private final Plan.Retest retest;
  private final int minutes;

  public RetestDay(Plan.Retest retest, int minutes) {
    this.retest = retest;
    this.minutes = minutes;
  }

  /**
   * The day found.
   *
   * @param day the day
   * @param displaced the session that the tests replace, if they have no day of their own
   * @param because the reason for this day
   */
  public record Found(LocalDate day, Optional<DatedSession> displaced, PlacementReason because) {}

  public Optional<Found> find(
      LocalDate first, Athlete athlete, List<Placement.HardDay> hardDays, List<DatedSession> week) {
    for (int d = 0; d < 7; d++) {
      LocalDate day = first.plusDays(d);
      if (athlete.availableOn(day).toMinutes() >= minutes && rested(day, hardDays, week)) {
        return Optional.of(
            new Found(
                day,
                Optional.empty(),
                new PlacementReason.Rested(athlete.availableOn(day).toMinutes())));
      }
    }
    return week.stream()
        .filter(
            s ->
                hardDays.stream()
                    .noneMatch(h -> h.what() instanceof HardThing.Goal && near(h.date(), s.date())))
        .min(
            Comparator.comparing((DatedSession s) -> !s.hard())
                .thenComparing(DatedSession::loadIndex, Comparator.reverseOrder())
                .thenComparing(DatedSession::date)
                .thenComparing(DatedSession::name))
        .map(
            hardest ->
                new Found(
                    hardest.date(),
                    Optional.of(hardest),
                    new PlacementReason.InsteadOfHardest(retest.setups().size())));
  }

  private static boolean rested(
      LocalDate day, List<Placement.HardDay> hardDays, List<DatedSession> week) {
    return hardDays.stream().noneMatch(h -> near(h.date(), day))
        && week.stream().noneMatch(s -> s.date().equals(day) || (s.hard() && near(s.date(), day)));
  }

  private static boolean near(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other)) < Placement.HARD_GAP_DAYS;
  }
}
