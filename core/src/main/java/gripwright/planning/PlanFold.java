package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.history.LogTimeline;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.plan.SessionPlan;
import gripwright.planning.BlockProgress.Outcome;
import gripwright.planning.load.HandFindings;
import gripwright.planning.mix.Choice;
import gripwright.planning.placement.HardDays;
import gripwright.planning.placement.HardWork;
import gripwright.planning.progression.Progression;
import gripwright.planning.progression.ProgressionBlockers;
import gripwright.planning.progression.ReturnRamp;
import gripwright.protocol.Protocol;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
import gripwright.schedule.ScheduleSize;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Plans week after week: each is made from what came of the weeks before it, and nothing else.
 * Progress depends on which weeks were trained, and that depends on where sessions found a day.
 */
public final class PlanFold {

  private final Plan plan;
  private final Athlete athlete;
  private final LogTimeline timeline;
  private final ModelPath root;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final TestDays testDays;
  private final WeekPlacing placing;
  private final WeekReconciliation reconciliation;
  private final HardDays hardDays;
  private final ProgressionBlockers blockers;
  private final ProgressionBlockers noBlockers;
  private final Meter meter;
  private final Runnable planned;

  /**
   * Prepares to plan.
   *
   * @param timeline the plan, the athlete and what is known of the athlete
   * @param protocols all that are known, by name, for work that was not planned
   * @param meter counts the work; sessions and holds that it has counted so far are kept beside
   *     those of this plan, which it checks and does not count
   * @param planned is run after each week
   */
  public PlanFold(
      LogTimeline timeline, Map<String, Protocol> protocols, Meter meter, Runnable planned) {
    this.meter = meter;
    this.planned = planned;
    this.plan = timeline.plan();
    this.athlete = timeline.athlete();
    this.timeline = timeline;
    this.root = plan.path().then("for", athlete.name());
    HandFindings hands = new HandFindings(athlete);
    this.hardDays = new HardDays(plan, athlete, timeline);
    this.blockers = ProgressionBlockers.of(plan, timeline);
    this.noBlockers = ProgressionBlockers.of(plan, timeline.withoutPlanDays());
    this.expansion = new SessionExpansion(plan, athlete, timeline, protocols, hands, meter);
    this.lookAhead = new LookAhead(plan, athlete, noBlockers, expansion);
    this.testDays = new TestDays(plan, athlete, hands, lookAhead);
    this.placing = new WeekPlacing(athlete, timeline, expansion, lookAhead, meter);
    this.reconciliation = new WeekReconciliation(plan.from(), timeline, expansion, hands.fits());
  }

  /**
   * What came of a plan.
   *
   * @param schedule what is dated
   * @param findings what can't be met or is worth a look
   */
  public record Planned(Schedule schedule, List<Finding> findings) {
    /** Copies the list. */
    public Planned {
      findings = List.copyOf(findings);
    }
  }

  /**
   * Plans all weeks.
   *
   * @throws gripwright.budget.OverBudget if that is more work than the budget allows
   */
  public Planned plan() {
    PlanState state = PlanState.start(athlete, plan.from());
    ScheduleSize size = new ScheduleSize(0, PlanSize.AN_ATHLETE);
    for (Block block : plan.blocks()) {
      state = state.beginning(plan.from().plusWeeks(state.weeks().size()));
      for (int blockWeek = 1; blockWeek <= block.weeks(); blockWeek++) {
        PlanState before = state;
        state = next(state, block, blockWeek);
        size = size.plusWeeks(1).plus(added(before, state), addedTests(before, state));
        meter.require(Limit.SESSIONS, meter.taken(Limit.SESSIONS) + size.sessions());
        meter.require(Limit.HOLDS, meter.taken(Limit.HOLDS) + size.holds());
        planned.run();
      }
      state = state.with(unfinishedRamps(block, state.progress()));
    }
    state = state.with(idleTaper(state.weeks()));
    FindingList logged = new FindingList();
    new LogFindings(timeline, athlete, state.past()).all().forEach(logged::add);
    return new Planned(
        new Schedule(
            plan,
            athlete,
            state.work().sessions(),
            state.weeks(),
            state.work().retests(),
            hardDays.climbing(plan.from(), plan.to()),
            state.past().missed()),
        state.findings().plus(logged).all());
  }

  private static List<DatedSession> added(PlanState before, PlanState after) {
    return after
        .work()
        .sessions()
        .subList(before.work().sessions().size(), after.work().sessions().size());
  }

  private static List<DatedRetest> addedTests(PlanState before, PlanState after) {
    return after
        .work()
        .retests()
        .subList(before.work().retests().size(), after.work().retests().size());
  }

  /** Plans one week more. */
  private PlanState next(PlanState before, Block block, int blockWeek) {
    int number = before.weeks().size() + 1;
    LocalDate first = plan.from().plusWeeks(number - 1L);
    Optional<LocalDate> last = before.lastSession();
    ReturnRamp ramp = before.ramp().before(first, last, timeline.hurts(last, first));
    Optional<Double> easedTo = easedTo(block, blockWeek, first);
    BlockProgress progress =
        before.progress().offering(first, easedTo.isPresent(), ramp, allGrips(block));
    double share = ramp.share(easedTo.isPresent());
    WeekContext week =
        new WeekContext(
            block,
            number,
            blockWeek,
            first,
            root.then("block", block.name()).then("week", blockWeek),
            new Progression.Week(
                first,
                progress.opportunities(),
                progress.lost(),
                easedTo,
                new Progression.Returning(share, ramp.from()),
                blockers.after(before.work().sessions()),
                timeline.coversPlanDays()
                    ? Optional.of(withoutLogLimits(first, progress, easedTo, ramp))
                    : Optional.empty()));
    FindingList found = new FindingList();
    Filled filled = fill(before, week, found);
    found.all().forEach(f -> meter.take(Limit.FINDINGS, f.places().size()));
    Outcome outcome = filled.outcome();
    return new PlanState(
        filled.work(),
        append(before.weeks(), filled.week()),
        filled.past(),
        progress.after(before.progress(), week, outcome, filled.grips()),
        ramp.after(outcome == Outcome.TRAINED, week.eased(), share, outcome == Outcome.SKIPPED),
        before.findings().plus(found));
  }

  /** Returns where a week would stand if the log had limited nothing. */
  private Progression.Week withoutLogLimits(
      LocalDate first, BlockProgress progress, Optional<Double> easedTo, ReturnRamp ramp) {
    return new Progression.Week(
        first,
        progress.withoutLogLimits(),
        List.of(),
        easedTo,
        new Progression.Returning(ramp.byLog() ? 1 : ramp.share(easedTo.isPresent()), ramp.from()),
        noBlockers,
        Optional.empty());
  }

  /** Returns the share of the sets that a week keeps by its block or the taper, the lower one. */
  private Optional<Double> easedTo(Block block, int blockWeek, LocalDate first) {
    return Stream.concat(
            block.contentFor(athlete.name()).eases().stream()
                .filter(e -> e.week() == blockWeek)
                .map(Block.Ease::setsFraction),
            plan.taperIn(first).map(Plan.Taper::setsFraction).stream())
        .min(Comparator.naturalOrder());
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
  private record Filled(
      PlanWeek week, HardWork work, PlanState.Past past, Outcome outcome, Set<String> grips) {}

  private Filled fill(PlanState before, WeekContext week, FindingList found) {
    List<SessionExpansion.Draft> drafts = drafts(week, found);
    boolean away = isAwayAllWeek(week.first());
    HardDays known = timeline.isPast(week.first()) ? hardDays.before(week.first()) : hardDays;
    WeekPlacing.Placed placed =
        away
            ? WeekPlacing.Placed.NOTHING
            : placing.place(week, drafts, known, before.work(), found);
    HardWork noted = before.work().with(placed.withoutLogLimits());
    TestDays.Tested tested =
        testDays.of(
            week,
            placed.sessions(),
            (sessions, tests) -> known.near(week.first(), noted.with(sessions, tests)),
            found);
    boolean planned = !tested.sessions().isEmpty();
    boolean past = timeline.isPast(week.first());
    Dated dated =
        past
            ? reconciled(before, week, noted, tested, drafts, found)
            : new Dated(
                tested.sessions(),
                noted.with(sorted(tested.sessions()), tested.tests()),
                before.past());
    List<DatedSession> kept = dated.sessions();
    if (away) {
      found.add(
          Finding.warning("plan.week-away", week.path())
              .with("week", week.number())
              .with("from", week.first())
              .with("to", week.first().plusDays(6)));
    }
    return new Filled(
        new PlanWeek(
            week.number(),
            week.block().name(),
            week.blockWeek(),
            week.first(),
            week.eased(),
            away,
            kept.stream().mapToDouble(DatedSession::timeUnderLoadSeconds).sum(),
            kept.stream().mapToDouble(DatedSession::loadIndex).sum(),
            week.path()),
        dated.work(),
        dated.past(),
        kept.isEmpty() ? planned ? Outcome.SKIPPED : Outcome.EMPTY : Outcome.TRAINED,
        grips(kept));
  }

  private List<SessionExpansion.Draft> drafts(WeekContext week, FindingList found) {
    List<SessionExpansion.Draft> drafts = new ArrayList<>();
    week.block().contentFor(athlete.name()).sessions().stream()
        .sorted(Comparator.comparing(SessionPlan::name))
        .forEach(
            session ->
                expansion
                    .draft(week, session, found)
                    .ifPresent(
                        draft -> drafts.addAll(Collections.nCopies(session.perWeek(), draft))));
    return drafts;
  }

  /**
   * What is dated in a week.
   *
   * @param sessions its sessions: those that were done first
   * @param work all that is dated, this week included
   * @param past what the log made of the weeks, this one included
   */
  private record Dated(List<DatedSession> sessions, HardWork work, PlanState.Past past) {}

  /** Puts what was logged of a week in the place of its plan, and plans what is left of it. */
  private Dated reconciled(
      PlanState before,
      WeekContext week,
      HardWork noted,
      TestDays.Tested tested,
      List<SessionExpansion.Draft> drafts,
      FindingList found) {
    ReconciledWeek told = reconciliation.read(week, tested.sessions(), before.past().open());
    HardWork done = noted.with(sorted(told.done()), List.of());
    RestOfWeek rest =
        new RestOfWeek(
            athlete,
            timeline.lastKnownDay().orElseThrow(),
            week.first(),
            hardDays.near(week.first(), done.with(List.of(), tested.tests())),
            PlanState.lastOfName(done.sessions()));
    WeekContext afterwards = week.after(done.sessions());
    List<DatedSession> ahead = new ArrayList<>();
    Map<ModelPath, FingerSet> hardFingers = new HashMap<>();
    RestOfWeek.Placed left = rest.place(told.ahead(), drafts);
    for (RestOfWeek.Dated dated : left.dated()) {
      expansion
          .dated(afterwards, dated.draft().session(), dated.day(), dated.because(), found)
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
    missed.removeIf(m -> told.late().contains(m.planned()));
    missed.addAll(told.missed());
    List<DatedRetest> tests = TestsAsDone.of(timeline, week.first(), tested.tests(), found);
    return new Dated(
        Stream.concat(told.done().stream(), ahead.stream()).toList(),
        done.with(hardFingers).with(sorted(ahead), tests),
        new PlanState.Past(
            missed,
            told.open(),
            append(
                before.past().notes(),
                new LogFindings.Note(week, told.unplanned(), left.dropped()))));
  }

  private static <T> List<T> append(List<T> list, T one) {
    List<T> longer = new ArrayList<>(list);
    longer.add(one);
    return longer;
  }

  private static List<DatedSession> sorted(List<DatedSession> some) {
    return some.stream()
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name))
        .toList();
  }

  /** Tells whether every day of the week on which the athlete trains is spent away. */
  private boolean isAwayAllWeek(LocalDate first) {
    return first
        .datesUntil(first.plusDays(7))
        .filter(day -> athlete.available().containsKey(day.getDayOfWeek()))
        .allMatch(athlete::isAway);
  }

  private FindingList idleTaper(List<PlanWeek> weeks) {
    FindingList found = new FindingList();
    if (plan.taper().isPresent()
        && weeks.stream().noneMatch(w -> plan.taperIn(w.from()).isPresent())) {
      found.add(
          Finding.warning("plan.taper-idle", root.then("taper", 1))
              .with("weeks", plan.taper().get().weeks())
              .with("goal", plan.towards().orElseThrow().date())
              .with("to", plan.to()));
    }
    return found;
  }

  private Set<String> allGrips(Block block) {
    Set<String> grips = new TreeSet<>();
    block.contentFor(athlete.name()).sessions().stream()
        .flatMap(session -> session.contentFor(athlete.name()).exercises().stream())
        .flatMap(exercise -> Choice.grips(exercise).stream())
        .forEach(grip -> grips.add(grip.name()));
    return grips;
  }

  private static Set<String> grips(List<DatedSession> sessions) {
    Set<String> grips = new TreeSet<>();
    sessions.stream()
        .flatMap(s -> s.exercises().stream())
        .forEach(e -> grips.add(e.setup().grip().name()));
    return grips;
  }

  private FindingList unfinishedRamps(Block block, BlockProgress progress) {
    FindingList found = new FindingList();
    Collection<Block.Introduction> introductions = block.contentFor(athlete.name()).introductions();
    int number = 0;
    for (Block.Introduction introduction : introductions) {
      number++;
      String grip = introduction.grip().name();
      int steps =
          (int) progress.opportunities().stream().filter(c -> c.grips().contains(grip)).count();
      if (steps < introduction.weeks() - 1) {
        found.add(
            Finding.advice(
                    "plan.ramp-unfinished",
                    root.then("block", block.name()).then("introduce", number))
                .with("grip", grip)
                .with("reached", steps + 1)
                .with("weeks", introduction.weeks()));
      }
    }
    return found;
  }
}
