package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.planning.BlockProgress.Outcome;
import gripwright.planning.load.HandFindings;
import gripwright.planning.placement.HardDays;
import gripwright.planning.placement.HardWork;
import gripwright.planning.placement.LoggedRetests;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.NotMadeUp;
import gripwright.schedule.PlanWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Plans one week: its sessions and tests on their days and, if it is past, what the log says came
 * of them.
 */
final class WeekPlanner {

  private final Athlete athlete;
  private final LogTimeline timeline;
  private final HardDays hardDays;
  private final LoggedRetests loggedTests;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final TestDays testDays;
  private final WeekPlacing placing;
  private final WeekReconciliation reconciliation;

  WeekPlanner(
      LogTimeline timeline,
      HardDays hardDays,
      SessionExpansion expansion,
      LookAhead lookAhead,
      HandFindings hands,
      Meter meter) {
    this.athlete = timeline.athlete();
    this.timeline = timeline;
    this.hardDays = hardDays;
    this.loggedTests = new LoggedRetests(timeline.plan(), timeline.log());
    this.expansion = expansion;
    this.lookAhead = lookAhead;
    this.testDays = new TestDays(timeline, hands, lookAhead, expansion);
    this.placing = new WeekPlacing(athlete, timeline, expansion, lookAhead, meter);
    this.reconciliation =
        new WeekReconciliation(timeline.plan().from(), timeline, expansion, hands.fits());
  }

  /**
   * A week with its sessions and tests.
   *
   * @param week the week
   * @param work all that is dated, this week included
   * @param past what the log made of the weeks, this one included
   * @param outcome what became of it
   * @param grips names of the grips that are trained in it
   */
  record Filled(
      PlanWeek week, HardWork work, PlanState.Past past, Outcome outcome, Set<String> grips) {}

  /**
   * Fills a week.
   *
   * @param before the result of the weeks before it
   * @param found what can't be met is added here
   */
  Filled fill(PlanState before, WeekContext week, FindingList found) {
    List<SessionExpansion.Draft> drafts = expansion.drafts(week, found);
    boolean away = isAwayAllWeek(week.first());
    boolean past = timeline.isPast(week.first());
    List<LogEntry.Tested> logged = loggedTests.near(week.first(), before.work().retests());
    HardDays known =
        (past ? hardDays.before(week.first()) : hardDays)
            .asPlanned(week.first(), before.work().retests());
    WeekPlacing.Placed placed =
        away
            ? WeekPlacing.Placed.NOTHING
            : placing.place(week, drafts, known, before.work(), found);
    HardWork noted = before.work().with(placed.withoutLogLimits());
    TestDays.Tested tested =
        testDays.of(
            new TestDays.Week(
                week.number(), week.first(), week.block().name(), last(before, week.first()), week),
            placed.sessions(),
            (sessions, tests) -> known.near(week.first(), noted.with(sessions, tests)),
            found);
    boolean planned = !tested.sessions().isEmpty();
    Dated dated =
        past || !logged.isEmpty()
            ? reconciled(before, week, noted, tested, drafts, found)
            : new Dated(
                tested.sessions(),
                noted.with(sorted(tested.sessions()), tested.tests()),
                before.past());
    List<DatedSession> kept = dated.sessions();
    List<DatedRetest> tests =
        dated.work().retests().stream().filter(test -> test.week() == week.number()).toList();
    if (away && !week.block().contentFor(athlete.name()).isNoTraining()) {
      found.add(
          Finding.advice("plan.week-away", week.path())
              .with("week", week.number())
              .with("from", week.first())
              .with("to", week.first().plusDays(6)));
    }
    return new Filled(
        PlanWeek.builder(
                week.number(), week.block().name(), week.blockWeek(), week.first(), week.path())
            .eased(week.eased())
            .away(away)
            .timeUnderLoadSeconds(
                kept.stream().mapToDouble(DatedSession::timeUnderLoadSeconds).sum()
                    + tests.stream().mapToDouble(DatedRetest::timeUnderLoadSeconds).sum())
            .loadIndex(
                kept.stream().mapToDouble(DatedSession::loadIndex).sum()
                    + tests.stream().mapToDouble(DatedRetest::loadIndex).sum())
            .build(),
        dated.work(),
        dated.past().withNotMadeUp(placed.notMadeUp()),
        kept.isEmpty() ? planned ? Outcome.SKIPPED : Outcome.EMPTY : Outcome.TRAINED,
        grips(kept));
  }

  /**
   * What is dated in a week.
   *
   * @param sessions its sessions: those that were done first
   * @param work all that is dated, this week included
   * @param past what the log made of the weeks, this one included
   */
  private record Dated(List<DatedSession> sessions, HardWork work, PlanState.Past past) {}

  /**
   * Returns the work with the tests of a week before or after those of the plan.
   *
   * @param before the result of the weeks before it
   * @param number its number: 0 before the plan, above its last after it
   * @param found what can't be met is added here
   */
  HardWork testsOutside(PlanState before, int number, FindingList found) {
    LocalDate first = timeline.plan().firstDayOf(number);
    List<DatedRetest> earlier = before.work().retests();
    boolean past = timeline.isPast(first);
    HardDays known = (past ? hardDays.before(first) : hardDays).asPlanned(first, earlier);
    TestDays.Tested tested =
        testDays.of(
            new TestDays.Week(
                number, first, "", last(before, first), lookAhead.outside(number, first)),
            List.of(),
            (sessions, tests) -> known.near(first, before.work().with(sessions, tests)),
            found);
    List<DatedRetest> tests =
        past || !loggedTests.near(first, earlier).isEmpty()
            ? TestsAsDone.of(timeline, first, tested.tests(), earlier, found)
            : tested.tests();
    return before.work().with(List.of(), tests);
  }

  /** Returns the last day of training before a week, planned or logged. */
  private Optional<LocalDate> last(PlanState before, LocalDate first) {
    return Stream.concat(
            before.lastSession().stream(),
            timeline.log().of(LogEntry.Trained.class).stream()
                .map(LogEntry.Trained::date)
                .filter(first::isAfter))
        .max(Comparator.naturalOrder());
  }

  /** Replaces the past days of a week by the log and plans its remaining days. */
  private Dated reconciled(
      PlanState before,
      WeekContext week,
      HardWork noted,
      TestDays.Tested tested,
      List<SessionExpansion.Draft> drafts,
      FindingList found) {
    List<DatedSession> open = before.past().open();
    ReconciledWeek reconciled =
        timeline.isPast(week.first())
            ? reconciliation.read(week, tested.sessions(), open)
            : ReconciledWeek.ahead(tested.sessions(), open);
    HardWork done = noted.with(sorted(reconciled.done()), List.of());
    LocalDate until =
        timeline
            .lastKnownDay()
            .filter(day -> !day.isBefore(week.first()))
            .orElse(week.first().minusDays(1));
    List<DatedRetest> tests =
        TestsAsDone.of(timeline, week.first(), tested.tests(), before.work().retests(), found);
    RestOfWeek rest =
        new RestOfWeek(
            athlete,
            until,
            week.first(),
            hardDays.near(week.first(), done.with(List.of(), tests)),
            PlanState.lastOfName(done.sessions()));
    WeekContext afterwards = week.after(done.sessions());
    List<DatedSession> ahead = new ArrayList<>();
    Map<ModelPath, FingerSet> hardFingers = new HashMap<>();
    RestOfWeek.Placed left = rest.place(reconciled.ahead(), drafts);
    for (RestOfWeek.Dated dated : left.dated()) {
      expansion
          .dated(afterwards, dated.draft().session(), dated.spot(), dated.because(), found)
          .ifPresent(
              session -> {
                dated
                    .draft()
                    .request()
                    .hardFingers()
                    .ifPresent(fingers -> hardFingers.put(session.path(), fingers));
                ahead.add(session);
              });
    }
    List<MissedSession> missed = new ArrayList<>(before.past().missed());
    missed.removeIf(m -> reconciled.late().contains(m.planned()));
    missed.addAll(reconciled.missed());
    return new Dated(
        Stream.concat(reconciled.done().stream(), ahead.stream()).toList(),
        done.with(hardFingers).with(sorted(ahead), tests),
        new PlanState.Past(
                missed,
                reconciled.open(),
                PlanState.append(
                    before.past().notes(),
                    new LogFindings.Note(
                        week, reconciled.unplanned(), left.dropped(), lastOf(until, tests))),
                before.past().notMadeUp())
            .withNotMadeUp(
                left.dropped().stream().map(s -> new NotMadeUp(s.week(), s.name(), 1)).toList()));
  }

  private static LocalDate lastOf(LocalDate until, List<DatedRetest> tests) {
    return tests.stream()
        .filter(DatedRetest::done)
        .map(DatedRetest::date)
        .filter(until::isBefore)
        .max(Comparator.naturalOrder())
        .orElse(until);
  }

  private static List<DatedSession> sorted(List<DatedSession> some) {
    return some.stream().sorted(DatedSession.IN_ORDER).toList();
  }

  /** Returns whether every day of the week on which the athlete trains is spent away. */
  private boolean isAwayAllWeek(LocalDate first) {
    List<LocalDate> week = first.datesUntil(first.plusDays(7)).toList();
    return week.stream().anyMatch(athlete::losesDayAway)
        && week.stream().allMatch(day -> athlete.slotsOn(day).isEmpty());
  }

  private static Set<String> grips(List<DatedSession> sessions) {
    Set<String> grips = new TreeSet<>();
    sessions.stream()
        .flatMap(s -> s.exercises().stream())
        .forEach(e -> grips.add(e.setup().grip().name()));
    return grips;
  }
}
