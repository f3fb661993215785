package gripwright.planning.placement;

import gripwright.athlete.Athlete;
import gripwright.athlete.Slot;
import gripwright.grip.FingerSet;
import gripwright.plan.PlannedTest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.schedule.PlacementReason;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the day of a week for tests: a rested one, or else that of the hardest session. */
public final class RetestDay {

  private static final long A_DAY = Duration.ofDays(1).toSeconds();

  private final PlannedTest retest;
  private final Placement.Tests tests;

  /**
   * Prepares the search.
   *
   * @param minutes how long the tests take
   * @param places the places at which they may be, as in a request
   */
  public RetestDay(PlannedTest retest, int minutes, Set<String> places) {
    this.retest = retest;
    this.tests =
        new Placement.Tests(minutes, FingerSet.FOUR, restedDays(retest), retest.onlyOn(), places);
  }

  public RetestDay(PlannedTest retest, int minutes) {
    this(retest, minutes, Set.of());
  }

  /**
   * The day found.
   *
   * @param day the day
   * @param time the local time at which they begin, if the day says one
   * @param place name of the place, if the day says one
   * @param displaced the session that the tests replace, if they have no day of their own
   * @param because the reason for this day
   */
  public record Found(
      LocalDate day,
      Optional<LocalTime> time,
      Optional<String> place,
      Optional<DatedSession> displaced,
      PlacementReason because) {}

  public Optional<Found> find(
      LocalDate first, Athlete athlete, List<Placement.HardDay> hardDays, List<DatedSession> week) {
    for (int d = 0; d < 7; d++) {
      LocalDate day = first.plusDays(d);
      Optional<Slot> slot = athlete.slotsOn(day).stream().filter(tests::fits).findFirst();
      if (slot.isPresent() && allows(day) && rested(day, hardDays, week)) {
        return Optional.of(
            new Found(
                day,
                slot.get().at(),
                slot.get().place(),
                Optional.empty(),
                new PlacementReason.Rested(
                    slot.get().time().toMinutes(), retest.rested().toHours())));
      }
    }
    return week.stream()
        .filter(s -> allows(s.date()) && tests.isAt(s) && restedInstead(s, hardDays, week))
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
                    hardest.time(),
                    hardest.place(),
                    Optional.of(hardest),
                    new PlacementReason.InsteadOfHardest(retest.setups().size())));
  }

  /** Returns the days that a test is to be away from the last hard work, 2 or more. */
  public static int restedDays(PlannedTest test) {
    return (int) ((test.rested().toSeconds() + A_DAY - 1) / A_DAY);
  }

  private boolean allows(LocalDate day) {
    return retest.onlyOn().isEmpty() || retest.onlyOn().contains(day.getDayOfWeek());
  }

  private boolean rested(LocalDate day, List<Placement.HardDay> hardDays, List<DatedSession> week) {
    return hardDays.stream().allMatch(h -> tests.restsOn(day, h.date()))
        && week.stream()
            .noneMatch(s -> s.date().equals(day) || (s.hard() && !tests.restsOn(day, s.date())));
  }

  /**
   * Returns whether the day of a session is rested without it, where more than its own gap is
   * asked.
   */
  private boolean restedInstead(
      DatedSession session, List<Placement.HardDay> hardDays, List<DatedSession> week) {
    if (tests.restedDays() <= Placement.HARD_GAP_DAYS) {
      return true;
    }
    LocalDate day = session.date();
    return hardDays.stream()
            .filter(h -> !h.date().equals(day))
            .allMatch(h -> tests.restsOn(day, h.date()))
        && week.stream()
            .filter(s -> s.hard() && !s.date().equals(day))
            .allMatch(s -> tests.restsOn(day, s.date()));
  }

  private static boolean near(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other)) < Placement.HARD_GAP_DAYS;
  }
}
