package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.history.LogTimeline;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.planning.BlockProgress.Outcome;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Rise;
import gripwright.planning.mix.Choice;
import gripwright.planning.placement.HardDays;
import gripwright.planning.placement.HardWork;
import gripwright.planning.progression.Progression;
import gripwright.planning.progression.ProgressionBlockers;
import gripwright.planning.progression.ReturnRamp;
import gripwright.protocol.Protocol;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
import gripwright.schedule.ScheduleSize;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Plans week after week: each is made from the result of the weeks before it, and nothing else.
 * Progress depends on which weeks were trained, and that depends on where sessions found a day.
 */
public final class PlanFold {

  /** The share of the sets of a week without training, which has none. */
  private static final double NOTHING_LEFT = 0;

  private final Plan plan;
  private final Athlete athlete;
  private final LogTimeline timeline;
  private final ModelPath root;
  private final WeekPlanner weekPlanner;
  private final HardDays hardDays;
  private final SessionExpansion expansion;
  private final List<DatedSession> beside;
  private final ProgressionBlockers blockers;
  private final ProgressionBlockers noBlockers;
  private final Meter meter;
  private final Runnable planned;

  /**
   * Prepares to plan.
   *
   * @param timeline the plan, the athlete and what is known of the athlete
   * @param before the result of the athlete's plans that began before this one, whose hard days
   *     keep their gaps
   * @param protocols all that are known, by name, for work that was not planned
   * @param meter counts the work; sessions and holds counted so far are kept together with those of
   *     this plan, which it checks and does not count
   * @param planned is run after each week
   */
  public PlanFold(
      LogTimeline timeline,
      List<Schedule> before,
      Map<String, Protocol> protocols,
      Meter meter,
      Runnable planned) {
    this.meter = meter;
    this.planned = planned;
    this.plan = timeline.plan();
    this.athlete = timeline.athlete();
    this.timeline = timeline;
    this.root = plan.path().then("for", athlete.name());
    HandFindings hands = new HandFindings(athlete);
    this.blockers = ProgressionBlockers.of(plan, timeline);
    this.noBlockers = ProgressionBlockers.of(plan, timeline.withoutPlanDays());
    this.expansion = new SessionExpansion(plan, athlete, timeline, protocols, hands, meter);
    this.beside = new WorkBesidePlans(timeline, expansion, hands.fits()).sessions(before);
    this.hardDays = new HardDays(timeline, before, beside);
    LookAhead lookAhead = new LookAhead(plan, athlete, noBlockers, expansion);
    this.weekPlanner = new WeekPlanner(timeline, hardDays, expansion, lookAhead, hands, meter);
  }

  /**
   * The result of a plan.
   *
   * @param schedule what is dated
   * @param findings what can't be met or is worth a look
   * @param unloaded lines that no load could be given to, as rules look at them
   */
  public record Planned(Schedule schedule, List<Finding> findings, List<DatedSession> unloaded) {
    /** Copies the lists. */
    public Planned {
      unloaded = List.copyOf(unloaded);
      findings = List.copyOf(findings);
    }
  }

  /**
   * Plans all weeks.
   *
   * @throws gripwright.budget.OverBudget if that is more work than the budget allows
   */
  public Planned plan() {
    PlanState state =
        PlanState.start(athlete, plan)
            .with(new TestDoses(plan, root).findings())
            .with(new SharedDays(athlete).findings(plan, root));
    ScheduleSize size = new ScheduleSize(0, PlanSize.AN_ATHLETE).plus(beside, List.of());
    SortedSet<Integer> outside = plan.testWeeksOutside();
    if (outside.contains(0)) {
      state = testsOutside(state, 0);
    }
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
    for (int week : outside.tailSet(plan.weeks() + 1)) {
      state = testsOutside(state, week);
    }
    size = size.plus(List.of(), outsideTests(state));
    meter.require(Limit.HOLDS, meter.taken(Limit.HOLDS) + size.holds());
    state = state.with(idleTaper(state.weeks()));
    FindingList logged = new FindingList();
    new LogFindings(timeline, athlete, state.past()).all().forEach(logged::add);
    return new Planned(
        Schedule.builder(plan, athlete)
            .sessions(state.work().sessions())
            .weeks(state.weeks())
            .retests(state.work().retests())
            .climbing(hardDays.climbing(plan.from(), plan.to()))
            .missed(state.past().missed())
            .notMadeUp(state.past().notMadeUp())
            .beside(beside)
            .build(),
        state.findings().plus(logged).all(),
        expansion.unloaded());
  }

  /** Adds the tests of a week before or after those of the plan. */
  private PlanState testsOutside(PlanState before, int week) {
    FindingList found = new FindingList();
    HardWork work = weekPlanner.testsOutside(before, week, found);
    found.all().forEach(f -> meter.take(Limit.FINDINGS, f.places().size()));
    return before.with(work).with(found);
  }

  private List<DatedRetest> outsideTests(PlanState state) {
    return state.work().retests().stream()
        .filter(test -> test.week() < 1 || test.week() > plan.weeks())
        .toList();
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
    Rise rise = before.rise().in(first, easedTo.isEmpty() && ramp.steady(), allGrips(block));
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
                rise,
                blockers.after(before.work().sessions()),
                timeline.coversPlanDays()
                    ? Optional.of(withoutLogLimits(first, progress, easedTo, ramp))
                    : Optional.empty()));
    FindingList found = new FindingList();
    WeekPlanner.Filled filled = weekPlanner.fill(before, week, found);
    found.all().forEach(f -> meter.take(Limit.FINDINGS, f.places().size()));
    Outcome outcome = filled.outcome();
    return new PlanState(
        filled.work(),
        PlanState.append(before.weeks(), filled.week()),
        filled.past(),
        progress.after(before.progress(), week, outcome, filled.grips()),
        ramp.after(outcome == Outcome.TRAINED, week.eased(), share, outcome == Outcome.SKIPPED),
        rise.after(outcome == Outcome.TRAINED),
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
        Rise.of(0),
        noBlockers,
        Optional.empty());
  }

  /** Returns the share of the sets that a week keeps by its block or the taper, the lower one. */
  private Optional<Double> easedTo(Block block, int blockWeek, LocalDate first) {
    if (block.contentFor(athlete.name()).isNoTraining()) {
      return Optional.of(NOTHING_LEFT);
    }
    return Stream.concat(
            block.contentFor(athlete.name()).eases().stream()
                .filter(e -> e.week() == blockWeek)
                .map(Block.Ease::setsFraction),
            plan.taperIn(first).map(Plan.Taper::setsFraction).stream())
        .min(Comparator.naturalOrder());
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
