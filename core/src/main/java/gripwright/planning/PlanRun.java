package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedRetest;
import gripwright.plan.DatedSession;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.SessionPlan;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One compilation of a plan for one athlete, week after week: progress depends on which weeks were
 * trained, and that depends on where sessions found a day.
 */
final class PlanRun {

  private final Plan plan;
  private final Athlete athlete;
  private final Log log;
  private final HandFits fits;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final FindingList findings = new FindingList();
  private final List<DatedSession> sessions = new ArrayList<>();
  private final List<DatedRetest> retests = new ArrayList<>();
  private final List<PlanWeek> weeks = new ArrayList<>();
  private final Map<String, LocalDate> lastOfName = new HashMap<>();
  private final HardDays hardDays;
  private final TestDays testDays;
  private final ReturnRamp ramp;
  private final ModelPath root;

  PlanRun(Plan plan, Athlete athlete, Log log) {
    this.plan = plan;
    this.athlete = athlete;
    this.log = log;
    this.hardDays = new HardDays(plan, athlete, log);
    this.root = plan.path().then("for", athlete.name());
    this.fits = new HandFits(athlete);
    this.expansion = new SessionExpansion(plan, athlete, log, root, fits, findings);
    this.lookAhead = new LookAhead(plan, athlete, log, expansion);
    this.testDays = new TestDays(plan, athlete, root, fits, lookAhead, findings);
    this.ramp = new ReturnRamp(athlete);
  }

  CompiledPlan compile() {
    int number = 0;
    for (Block block : plan.blocks()) {
      Progression progression = new Progression(block.contentFor(athlete.name()), log, plan.from());
      int chances = 0;
      boolean trainedLastWeek = false;
      for (int blockWeek = 1; blockWeek <= block.weeks(); blockWeek++) {
        number++;
        LocalDate first = plan.from().plusDays(7L * (number - 1));
        ramp.before(first, lastSession());
        Optional<Double> easedTo = easedTo(block, blockWeek, first);
        boolean mayStep = trainedLastWeek && easedTo.isEmpty() && ramp.steady();
        int chancesNow = chances + (mayStep ? 1 : 0);
        double share = ramp.share(easedTo.isPresent());
        trainedLastWeek =
            week(
                block,
                new WeekOfBlock(number, blockWeek, first, easedTo.isPresent()),
                progression,
                new Progression.Week(first, chancesNow, easedTo, share));
        chances = trainedLastWeek ? chancesNow : chances;
        ramp.after(trainedLastWeek, easedTo.isPresent(), share);
      }
      noteUnfinishedRamps(block, chances);
    }
    noteIdleTaper();
    findings.settle(SessionOutlook.DOUBTFUL, SessionOutlook.FAILS);
    return new CompiledPlan(
        plan,
        athlete,
        log,
        sessions,
        weeks,
        retests,
        hardDays.climbing(plan.from(), plan.to()),
        findings.all());
  }

  /**
   * A week and its two numbers.
   *
   * @param number from 1 through the plan
   * @param blockWeek from 1 in the block
   * @param first first day
   * @param eased true if the block eases it
   */
  record WeekOfBlock(int number, int blockWeek, LocalDate first, boolean eased) {}

  /** Returns the share of the sets that a week keeps by its block or the taper, the lower one. */
  private Optional<Double> easedTo(Block block, int blockWeek, LocalDate first) {
    return Stream.concat(
            block.contentFor(athlete.name()).eases().stream()
                .filter(e -> e.week() == blockWeek)
                .map(Block.Ease::setsFraction),
            plan.taperIn(first).map(Plan.Taper::setsFraction).stream())
        .min(Comparator.naturalOrder());
  }

  private Optional<LocalDate> lastSession() {
    return sessions.stream().map(DatedSession::date).max(Comparator.naturalOrder());
  }

  private boolean week(
      Block block, WeekOfBlock week, Progression progression, Progression.Week state) {
    List<SessionExpansion.Draft> drafts = new ArrayList<>();
    block.contentFor(athlete.name()).sessions().stream()
        .sorted(Comparator.comparing(SessionPlan::name))
        .forEach(
            session ->
                expansion
                    .draft(block, week, session, progression, state, findings)
                    .ifPresent(
                        draft -> {
                          for (int i = 0; i < session.perWeek(); i++) {
                            drafts.add(draft);
                          }
                        }));
    List<DatedSession> placed =
        isAwayAllWeek(week.first()) ? List.of() : placed(block, week, drafts, progression, state);
    List<DatedSession> kept = new ArrayList<>(placed);
    retests.addAll(
        testDays.of(
            block,
            week,
            kept,
            more ->
                hardDays.near(
                    week.first(),
                    sessions,
                    Stream.concat(retests.stream(), more.stream()).toList())));
    kept.sort(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name));
    sessions.addAll(kept);
    kept.forEach(s -> lastOfName.merge(s.name(), s.date(), PlanRun::later));
    weeks.add(
        new PlanWeek(
            week.number(),
            block.name(),
            week.blockWeek(),
            week.first(),
            week.eased(),
            isAwayAllWeek(week.first()),
            kept.stream().mapToDouble(DatedSession::timeUnderLoadSeconds).sum(),
            kept.stream().mapToDouble(DatedSession::loadIndex).sum(),
            path(block, week)));
    if (isAwayAllWeek(week.first())) {
      findings.add(
          Finding.warning("plan.week-away", path(block, week))
              .with("week", week.number())
              .with("from", week.first())
              .with("to", week.first().plusDays(6)));
    }
    return !kept.isEmpty();
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private ModelPath path(Block block, WeekOfBlock week) {
    return root.then("block", block.name()).then("week", week.blockWeek());
  }

  /** Tells whether every day of the week on which the athlete trains is spent away. */
  private boolean isAwayAllWeek(LocalDate first) {
    boolean anyDay = false;
    for (int d = 0; d < 7; d++) {
      LocalDate day = first.plusDays(d);
      if (athlete.available().containsKey(day.getDayOfWeek())) {
        if (!athlete.isAway(day)) {
          return false;
        }
        anyDay = true;
      }
    }
    return anyDay;
  }

  private List<DatedSession> placed(
      Block block,
      WeekOfBlock week,
      List<SessionExpansion.Draft> drafts,
      Progression progression,
      Progression.Week state) {
    Placement.Week fixed =
        new Placement.Week(
            week.first(),
            athlete::availableOn,
            hardDays.near(week.first(), sessions, retests),
            lastOfName);
    PlacementWords words = new PlacementWords(fixed, athlete, week.number());
    List<SessionExpansion.Draft> fitting =
        drafts.stream().filter(d -> fitsSomeDay(block, week, d)).toList();
    List<Placement.Request> requests =
        fitting.stream().map(SessionExpansion.Draft::request).toList();
    Placement.Found found =
        Placement.place(
            new Placement.Asked(fixed, requests, lookAhead.testsIn(week.number())),
            () ->
                lookAhead.after(
                    block, week, requests, day -> hardDays.near(day, sessions, retests)));
    noteUnproved(block, week, found);
    List<Optional<LocalDate>> days = found.first().sessions();
    List<DatedSession> placed = new ArrayList<>();
    List<Placement.Request> dated = new ArrayList<>();
    Map<String, Integer> missing = new TreeMap<>();
    for (int i = 0; i < fitting.size(); i++) {
      SessionExpansion.Draft draft = fitting.get(i);
      if (days.get(i).isPresent()) {
        LocalDate day = days.get(i).get();
        String because = words.because(draft.request(), day);
        dated.add(draft.request());
        expansion
            .dated(block, week, draft.session(), progression, state, day, because)
            .ifPresent(placed::add);
      } else {
        missing.merge(draft.session().name(), 1, Integer::sum);
      }
    }
    missing.forEach((name, count) -> noteMissing(block, week, fixed, fitting, dated, name, count));
    return placed;
  }

  private void noteUnproved(Block block, WeekOfBlock week, Placement.Found found) {
    if (!found.proved()) {
      findings.add(
          Finding.advice("plan.days-unproved", path(block, week))
              .with("week", week.number())
              .with("more", found.more()));
    }
  }

  private boolean fitsSomeDay(Block block, WeekOfBlock week, SessionExpansion.Draft draft) {
    Duration longest =
        athlete.available().values().stream().max(Duration::compareTo).orElse(Duration.ZERO);
    if (draft.request().minutes() <= longest.toMinutes()) {
      return true;
    }
    findings.add(
        Finding.error(
                "plan.session-too-long", path(block, week).then("session", draft.session().name()))
            .with("session", draft.session().name())
            .with("minutes", draft.request().minutes())
            .with("longest", longest.toMinutes()));
    return false;
  }

  private void noteMissing(
      Block block,
      WeekOfBlock week,
      Placement.Week fixed,
      List<SessionExpansion.Draft> drafts,
      List<Placement.Request> placed,
      String name,
      int missing) {
    SessionExpansion.Draft draft =
        drafts.stream().filter(d -> d.session().name().equals(name)).findFirst().orElseThrow();
    int wanted = draft.session().perWeek();
    List<Placement.Request> others = placed.stream().filter(r -> !r.name().equals(name)).toList();
    Set<Conflict.Fact> facts = new Conflict(fixed, draft.request(), wanted, others).fewest();
    boolean away = week.first().datesUntil(week.first().plusDays(7)).anyMatch(athlete::isAway);
    ModelPath place = path(block, week).then("session", name);
    Optional<LocalDate> goal =
        facts.stream()
            .filter(
                f -> f instanceof Conflict.HardOn hard && hard.day().what().equals(HardDays.GOAL))
            .map(f -> ((Conflict.HardOn) f).day().date())
            .findFirst();
    Finding finding =
        away || goal.isPresent()
            ? Finding.warning("plan.week-short", place)
            : Finding.error("plan.no-day", place);
    finding = goal.isPresent() ? finding.with("goal", goal.get()) : finding;
    findings.add(
        finding
            .with("session", name)
            .with("week", week.number())
            .with("wanted", wanted)
            .with("placed", wanted - missing)
            .with(
                "reason",
                new PlacementWords(fixed, athlete, week.number()).reason(draft.request(), facts)));
  }

  private void noteIdleTaper() {
    if (plan.taper().isPresent()
        && weeks.stream().noneMatch(w -> plan.taperIn(w.from()).isPresent())) {
      findings.add(
          Finding.warning("plan.taper-idle", root.then("taper", 1))
              .with("weeks", plan.taper().get().weeks())
              .with("goal", plan.towards().orElseThrow().date())
              .with("to", plan.to()));
    }
  }

  private void noteUnfinishedRamps(Block block, int chances) {
    Collection<Block.Introduction> introductions = block.contentFor(athlete.name()).introductions();
    int number = 0;
    for (Block.Introduction introduction : introductions) {
      number++;
      if (chances < introduction.weeks() - 1) {
        findings.add(
            Finding.advice(
                    "plan.ramp-unfinished",
                    root.then("block", block.name()).then("introduce", number))
                .with("grip", introduction.grip().name())
                .with("reached", chances + 1)
                .with("weeks", introduction.weeks()));
      }
    }
  }
}
