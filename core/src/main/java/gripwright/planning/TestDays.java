package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.history.LogTimeline;
import gripwright.plan.Plan;
import gripwright.planning.load.HandFindings;
import gripwright.planning.placement.LoggedRetests;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.RetestDay;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds days for the tests that are due in a week. */
final class TestDays {

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
  Tested of(WeekContext week, List<DatedSession> placed, Near near, FindingList found) {
    List<DatedSession> kept = new ArrayList<>(placed);
    List<DatedRetest> tests = new ArrayList<>();
    for (int n = 1; n <= plan.retests().size(); n++) {
      Plan.Retest retest = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n).then("week", week.number());
      boolean due = week.number() % retest.everyWeeks() == 0;
      if (due && lookAhead.tapers(week.number())) {
        found.add(Finding.advice("plan.retest-tapered", place).with("week", week.number()));
      } else if (due) {
        noteSetups(retest, place, found);
        Optional<RetestDay.Found> day =
            new RetestDay(retest, lookAhead.minutes(retest))
                .find(week.first(), athlete, near.with(kept, tests), kept)
                .or(() -> asLogged(retest, week.first()));
        if (day.isEmpty()) {
          found.add(Finding.warning("plan.retest-no-day", place).with("week", week.number()));
          continue;
        }
        day.get().displaced().ifPresent(kept::remove);
        tests.add(dated(week, retest, place, day.get()));
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
  private Optional<RetestDay.Found> asLogged(Plan.Retest retest, LocalDate first) {
    return logged
        .dayIn(retest, first)
        .map(day -> new RetestDay.Found(day, Optional.empty(), new PlacementReason.TestedOnDay()));
  }

  /** Reports tests on a missing edge or with a grip that the hand can't take. */
  private void noteSetups(Plan.Retest retest, ModelPath place, FindingList found) {
    retest.setups().stream()
        .filter(s -> !athlete.equipment().has(s.edge()))
        .findFirst()
        .ifPresent(
            s ->
                found.add(
                    Finding.error("plan.edge-missing", place)
                        .with("edge", s.edge())
                        .with("owned", edges())));
    retest.setups().stream()
        .filter(s -> athlete.equipment().has(s.edge()))
        .flatMap(s -> hands.outOfReach(s, place).stream())
        .forEach(found::add);
  }

  private List<String> edges() {
    return athlete.equipment().edges().stream().map(Object::toString).toList();
  }

  private static DatedRetest dated(
      WeekContext week, Plan.Retest retest, ModelPath place, RetestDay.Found found) {
    return DatedRetest.builder(
            found.day(),
            week.number(),
            week.block().name(),
            retest.setups(),
            retest.hold(),
            place.then("date", found.day().toString()))
        .insteadOf(found.displaced().map(DatedSession::name).orElse(""))
        .placedBecause(found.because())
        .build();
  }
}
