package gripwright.planning.placement;

import gripwright.history.TestMatch;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.schedule.DatedRetest;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Matches logged tests with planned tests: a line of one of the same setups in the planned week, or
 * at most three days away from the planned day. A line in a week that has such a test itself
 * belongs to that week; no line counts for the tests of two weeks.
 */
public final class LoggedRetests {

  /**
   * Maximum distance from its day at which a planned test may be logged outside its week; the
   * library's own choice.
   */
  static final int DAYS = 3;

  private final Plan plan;
  private final List<LogEntry.Tested> lines;

  /**
   * Reads the tests of a log.
   *
   * @param plan the plan with tests
   * @param log the log; lines outside the plan's days are not tests of the plan
   */
  public LoggedRetests(Plan plan, Log log) {
    this.plan = plan;
    this.lines =
        plan.retests().isEmpty()
            ? List.of()
            : log.of(LogEntry.Tested.class).stream().filter(t -> isNear(plan, t.date())).toList();
  }

  /** Returns whether a day is in the plan, or near a week before or after it with a test. */
  private static boolean isNear(Plan plan, LocalDate day) {
    return (!day.isBefore(plan.from()) && !day.isAfter(plan.to()))
        || plan.testWeeksOutside().stream()
            .map(plan::firstDayOf)
            .anyMatch(
                first ->
                    !day.isBefore(first.minusDays(DAYS))
                        && day.isBefore(first.plusDays(7L + DAYS)));
  }

  /**
   * Returns the lines that may be planned tests of a week, on any day of it.
   *
   * @param first first day of the week
   * @param before tests of the weeks before it
   */
  public List<LogEntry.Tested> near(LocalDate first, List<DatedRetest> before) {
    return lines.stream()
        .filter(t -> !t.date().isBefore(first.minusDays(DAYS)))
        .filter(t -> t.date().isBefore(first.plusDays(7L + DAYS)))
        .filter(t -> asked(first).anyMatch(retest -> isOf(retest, t)))
        .filter(t -> isFree(t, first, before))
        .toList();
  }

  /**
   * Returns the day on which a planned test was done, if it was: one in its week first, then the
   * nearest.
   *
   * @param planned the test on its planned day
   * @param first first day of its week
   * @param before tests of the weeks before it
   */
  public Optional<LocalDate> dayOf(DatedRetest planned, LocalDate first, List<DatedRetest> before) {
    return near(first, before).stream()
        .filter(t -> isOf(planned, t))
        .map(LogEntry.Tested::date)
        .filter(day -> inWeek(day, first) || away(day, planned.date()) <= DAYS)
        .min(
            Comparator.comparing((LocalDate day) -> !inWeek(day, first))
                .thenComparing(day -> away(day, planned.date()))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Returns the first day of a week on which tests without a planned day were done. */
  public Optional<LocalDate> dayIn(PlannedTest retest, LocalDate first) {
    return lines.stream()
        .filter(t -> inWeek(t.date(), first))
        .filter(t -> isOf(retest, t))
        .map(LogEntry.Tested::date)
        .min(Comparator.naturalOrder());
  }

  private Stream<PlannedTest> asked(LocalDate first) {
    int number = plan.weekOf(first);
    return plan.taperIn(first).isPresent()
        ? Stream.empty()
        : plan.retests().stream().filter(retest -> retest.isDueIn(number, plan.weeks()));
  }

  /**
   * Returns whether a line has the setup and kind of a test. Of tests that say no more than a time
   * and an interval, as plans always could, a line of another kind is one too, unless another test
   * of the plan asks for that kind.
   */
  private boolean isOf(PlannedTest retest, LogEntry.Tested line) {
    return retest.setups().stream().anyMatch(line::isOf)
        && (TestMatch.isOf(retest.kind(), line.test().result())
            || (retest.isPlain() && !isOfAnother(line)));
  }

  private boolean isOf(DatedRetest planned, LogEntry.Tested line) {
    return planned.tests(line.test().setup())
        && plan.retests().stream()
            .anyMatch(retest -> retest.kind().equals(planned.kind()) && isOf(retest, line));
  }

  private boolean isOfAnother(LogEntry.Tested line) {
    return plan.retests().stream()
        .filter(retest -> retest.setups().stream().anyMatch(line::isOf))
        .anyMatch(retest -> TestMatch.isOf(retest.kind(), line.test().result()));
  }

  private boolean isFree(LogEntry.Tested line, LocalDate first, List<DatedRetest> before) {
    if (before.stream().anyMatch(b -> stands(b, line))) {
      return false;
    }
    LocalDate itsWeek = plan.firstDayOf(plan.weekOf(line.date()));
    return itsWeek.equals(first) || asked(itsWeek).noneMatch(retest -> isOf(retest, line));
  }

  /** Returns whether a line is a test of the plan. */
  static boolean stands(DatedRetest test, LogEntry.Tested line) {
    return test.done() && test.date().equals(line.date()) && test.tests(line.test().setup());
  }

  private static boolean inWeek(LocalDate day, LocalDate first) {
    return !day.isBefore(first) && day.isBefore(first.plusDays(7));
  }

  private static long away(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }
}
