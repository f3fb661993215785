package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.history.LogTimeline;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.planning.load.HandFindings;
import gripwright.planning.placement.LoggedRetests;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.RetestDay;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds days for the tests that are due in a week. */
final class TestDays {

  /** The days without training after which a test is reported; the library's own number. */
  private static final int BREAK_DAYS = 14;

  private final Plan plan;
  private final Athlete athlete;
  private final ModelPath root;
  private final HandFindings hands;
  private final LookAhead lookAhead;
  private final LoggedRetests logged;

  TestDays(LogTimeline timeline, HandFindings hands, LookAhead lookAhead) {
    this.plan = timeline.plan();
    this.athlete = timeline.athlete();
    this.logged = new LoggedRetests(plan, timeline.log());
    this.root = plan.path().then("for", athlete.name());
    this.hands = hands;
    this.lookAhead = lookAhead;
  }

  /**
   * The tests of a week.
   *
   * @param sessions the week's sessions without those replaced by a test
   * @param tests its tests
   */
  record Tested(List<DatedSession> sessions, List<DatedRetest> tests) {}

  /**
   * A week with tests.
   *
   * @param number its number, from 1; 0 before the plan, above its last after it
   * @param first first day
   * @param block name of its block; empty outside the plan
   * @param last the last day of training before it; empty if none is known
   */
  record Week(int number, LocalDate first, String block, Optional<LocalDate> last) {}

  /** The hard work near a week, including its sessions and some of its tests. */
  interface Near {
    List<Placement.HardDay> with(List<DatedSession> sessions, List<DatedRetest> tests);
  }

  /**
   * Returns the tests of a week.
   *
   * @param placed the week's sessions
   * @param near the hard work near the week
   * @param found receives findings about what can't be met
   */
  Tested of(Week week, List<DatedSession> placed, Near near, FindingList found) {
    List<DatedSession> kept = new ArrayList<>(placed);
    List<DatedRetest> tests = new ArrayList<>();
    for (int n = 1; n <= plan.retests().size(); n++) {
      PlannedTest retest = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n).then("week", week.number());
      boolean due = retest.isDueIn(week.number(), plan.weeks());
      if (due && lookAhead.tapers(week.number())) {
        found.add(Finding.advice("plan.retest-tapered", place).with("week", week.number()));
      } else if (due) {
        noteSetups(retest, place, found);
        Optional<RetestDay.Found> day =
            new RetestDay(retest, lookAhead.minutes(retest), lookAhead.places(retest).open())
                .find(week.first(), athlete, near.with(kept, tests), kept)
                .or(() -> asLogged(retest, week.first()));
        if (day.isEmpty()) {
          found.add(Finding.warning("plan.retest-no-day", place).with("week", week.number()));
          continue;
        }
        day.get().displaced().ifPresent(kept::remove);
        DatedRetest dated = dated(week, retest, place, day.get());
        noteBreak(retest, dated, lastTraining(week, kept, dated.date()), found);
        tests.add(dated);
        retest.setups().stream() // tests are hard
            .flatMap(s -> hands.notForced(s, place).stream())
            .forEach(found::add);
        day.get()
            .displaced()
            .ifPresent(
                session ->
                    found.add(
                        Finding.advice("plan.retest-displaces", place)
                            .with("week", week.number())
                            .with("session", session.name())));
      }
    }
    return new Tested(List.copyOf(kept), List.copyOf(tests));
  }

  /** Returns the day of tests that were done although the plan has no day for them. */
  private Optional<RetestDay.Found> asLogged(PlannedTest retest, LocalDate first) {
    return logged
        .dayIn(retest, first)
        .map(
            day ->
                new RetestDay.Found(
                    day,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    new PlacementReason.TestedOnDay()));
  }

  private static Optional<LocalDate> lastTraining(
      Week week, List<DatedSession> sessions, LocalDate day) {
    return Stream.concat(
            week.last().stream(),
            sessions.stream().map(DatedSession::date).filter(date -> date.isBefore(day)))
        .max(Comparator.naturalOrder());
  }

  /**
   * Reports a test after a time without training. A test that says no more than a time and an
   * interval is left out, as before tests could say more.
   */
  private static void noteBreak(
      PlannedTest retest, DatedRetest test, Optional<LocalDate> last, FindingList found) {
    last.map(day -> ChronoUnit.DAYS.between(day, test.date()))
        .filter(days -> days > BREAK_DAYS && !retest.isPlain())
        .ifPresent(
            days ->
                found.add(
                    Finding.advice("plan.test-after-break", test.path())
                        .with("week", test.week())
                        .with("days", days.intValue())));
  }

  /** Reports tests on a missing edge or with a grip that the hand can't take. */
  private void noteSetups(PlannedTest retest, ModelPath place, FindingList found) {
    Optional<String> at = lookAhead.places(retest).built().get(0);
    Equipment equipment = athlete.equipmentAt(at);
    retest.setups().stream()
        .filter(s -> !equipment.has(s.edge()))
        .findFirst()
        .ifPresent(
            s -> {
              Finding missing =
                  Finding.error("plan.edge-missing", place)
                      .with("edge", s.edge())
                      .with("owned", equipment.edges().stream().map(Object::toString).toList());
              found.add(at.map(name -> missing.with("place", name)).orElse(missing));
            });
    retest.setups().stream()
        .filter(s -> equipment.has(s.edge()))
        .flatMap(s -> hands.outOfReach(s, place).stream())
        .forEach(found::add);
  }

  private static DatedRetest dated(
      Week week, PlannedTest retest, ModelPath place, RetestDay.Found found) {
    return DatedRetest.of(
            found.day(),
            week.number(),
            week.block(),
            retest,
            place.then("date", found.day().toString()))
        .time(found.time())
        .place(found.place())
        .insteadOf(found.displaced().map(DatedSession::name).orElse(""))
        .placedBecause(found.because())
        .build();
  }
}
