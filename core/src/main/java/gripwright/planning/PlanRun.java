package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedRetest;
import gripwright.plan.DatedSession;
import gripwright.plan.HeardLog;
import gripwright.plan.MissedSession;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Protocol;
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
  private final Heard heard;
  private final Setbacks setbacks;
  private final Setbacks noSetbacks;
  private final WeekAsDone asDone;
  private final WeekPlacing placing;
  private final ToldFindings toldFindings;
  private final List<MissedSession> missed = new ArrayList<>();
  private final TestDays testDays;
  private final ReturnRamp ramp;
  private final ModelPath root;

  /**
   * Prepares a compilation.
   *
   * @param protocols all that are known, by name, for work that was not planned
   */
  PlanRun(Plan plan, Athlete athlete, Log log, Map<String, Protocol> protocols) {
    this.plan = plan;
    this.athlete = athlete;
    this.log = log;
    this.hardDays = new HardDays(plan, athlete, log);
    this.heard = new Heard(plan, athlete, log);
    this.setbacks = new Setbacks(plan, log, heard, sessions);
    Log before = Heard.before(log, plan.from());
    this.noSetbacks = new Setbacks(plan, before, new Heard(plan, athlete, before), List.of());
    this.root = plan.path().then("for", athlete.name());
    this.fits = new HandFits(athlete);
    this.expansion = new SessionExpansion(plan, athlete, log, protocols, root, fits, findings);
    this.lookAhead = new LookAhead(plan, athlete, noSetbacks, expansion);
    this.testDays = new TestDays(plan, athlete, root, fits, lookAhead, findings);
    this.ramp = new ReturnRamp(athlete);
    this.toldFindings = new ToldFindings(heard, athlete, root);
    this.placing =
        new WeekPlacing(
            athlete,
            root,
            heard,
            expansion,
            lookAhead,
            findings,
            new WeekPlacing.SoFar(sessions, retests, lastOfName));
    this.asDone = new WeekAsDone(heard, expansion, fits, plan.from());
  }

  CompiledPlan compile() {
    plan.blocks().forEach(this::weeks);
    noteIdleTaper();
    toldFindings.all(missed).forEach(findings::add);
    findings.settle(SessionOutlook.DOUBTFUL, SessionOutlook.FAILS);
    return new CompiledPlan(
        plan,
        athlete,
        log,
        sessions,
        weeks,
        retests,
        hardDays.climbing(plan.from(), plan.to()),
        findings.all(),
        new HeardLog(heard.until(), missed, List.of()));
  }

  /** Goes through the weeks of a block. */
  private void weeks(Block block) {
    Progression progression = progression(block);
    List<Progression.Chance> chances = new ArrayList<>();
    List<Progression.Chance> unlightened = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    LocalDate since = plan.from().plusDays(7L * weeks.size());
    Set<String> grips = new TreeSet<>();
    Outcome last = Outcome.EMPTY;
    for (int blockWeek = 1; blockWeek <= block.weeks(); blockWeek++) {
      int number = weeks.size() + 1;
      LocalDate first = plan.from().plusDays(7L * (number - 1));
      ramp.before(first, lastSession(), heard.hurts(lastSession(), first));
      Optional<Double> easedTo = easedTo(block, blockWeek, first);
      if (last != Outcome.EMPTY && easedTo.isEmpty() && (ramp.steady() || ramp.byLog())) {
        unlightened.add(new Progression.Chance(since, first, allGrips(block)));
      }
      List<Progression.Chance> chancesNow = new ArrayList<>(chances);
      if (last == Outcome.TRAINED && easedTo.isEmpty() && ramp.steady()) {
        chancesNow.add(new Progression.Chance(since, first, grips));
      }
      double share = ramp.share(easedTo.isPresent());
      last =
          week(
              block,
              new WeekOfBlock(number, blockWeek, first, easedTo.isPresent()),
              progression,
              new Progression.Week(
                  first,
                  chancesNow,
                  lost,
                  easedTo,
                  share,
                  ramp.from(),
                  Optional.of(unlightened(first, unlightened, easedTo, share))));
      if (last == Outcome.TRAINED) {
        if (easedTo.isEmpty()) {
          since = first;
          grips.clear();
        }
        grips.addAll(gripsOf(number));
        chances = chancesNow;
      } else if (last == Outcome.SKIPPED) {
        lost.add("week " + number + " was not trained");
      }
      ramp.after(last == Outcome.TRAINED, easedTo.isPresent(), share, last == Outcome.SKIPPED);
    }
    noteUnfinishedRamps(block, chances);
  }

  /** Returns where a week would stand if the log had lightened nothing. */
  private Progression.Week unlightened(
      LocalDate first,
      List<Progression.Chance> chances,
      Optional<Double> easedTo,
      double returning) {
    return new Progression.Week(
        first,
        chances,
        List.of(),
        easedTo,
        ramp.byLog() ? 1 : returning,
        ramp.from(),
        Optional.empty());
  }

  private Progression progression(Block block) {
    Block.Content content = block.contentFor(athlete.name());
    return Heard.speaks(log, plan)
        ? new Progression(content, setbacks, noSetbacks)
        : new Progression(content, setbacks);
  }

  /** What became of a week. */
  private enum Outcome {
    /** Something was trained in it or is planned. */
    TRAINED,
    /** Sessions were planned, and a log tells that none was trained. */
    SKIPPED,
    /** Nothing was planned. */
    EMPTY
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

  private Outcome week(
      Block block, WeekOfBlock week, Progression progression, Progression.Week state) {
    List<SessionExpansion.Draft> drafts = drafts(block, week, progression, state);
    HardDays known = heard.isPast(week.first()) ? hardDays.before(week.first()) : hardDays;
    List<DatedSession> placed =
        isAwayAllWeek(week.first())
            ? List.of()
            : placing.place(block, week, drafts, known, progression, state);
    List<DatedSession> onDays = new ArrayList<>(placed);
    List<DatedRetest> tests =
        testDays.of(
            block,
            week,
            onDays,
            more ->
                known.near(
                    week.first(),
                    Stream.concat(sessions.stream(), onDays.stream()).toList(),
                    Stream.concat(retests.stream(), more.stream()).toList()));
    List<DatedSession> kept = onDays;
    boolean planned = !kept.isEmpty();
    if (heard.isPast(week.first())) {
      kept = asTold(block, week, kept, tests, drafts, progression, state);
      retests.addAll(new TestsAsDone(log, heard, findings).of(week.first(), tests));
    } else {
      sessions.addAll(sorted(kept));
      retests.addAll(tests);
    }
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
    if (!kept.isEmpty()) {
      return Outcome.TRAINED;
    }
    return planned ? Outcome.SKIPPED : Outcome.EMPTY;
  }

  private List<SessionExpansion.Draft> drafts(
      Block block, WeekOfBlock week, Progression progression, Progression.Week state) {
    List<SessionExpansion.Draft> drafts = new ArrayList<>();
    block.contentFor(athlete.name()).sessions().stream()
        .sorted(Comparator.comparing(SessionPlan::name))
        .forEach(
            session ->
                expansion
                    .draft(block, week, session, progression, state, findings)
                    .ifPresent(
                        draft -> drafts.addAll(Collections.nCopies(session.perWeek(), draft))));
    return drafts;
  }

  private static List<DatedSession> sorted(List<DatedSession> some) {
    return some.stream()
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name))
        .toList();
  }

  /** Puts what the log tells of a week in the place of its plan, and plans what is left of it. */
  private List<DatedSession> asTold(
      Block block,
      WeekOfBlock week,
      List<DatedSession> planned,
      List<DatedRetest> tests,
      List<SessionExpansion.Draft> drafts,
      Progression progression,
      Progression.Week state) {
    WeekAsDone.Told told = asDone.read(block, week, planned);
    missed.removeIf(m -> told.late().contains(m.planned()));
    missed.addAll(told.missed());
    sessions.addAll(sorted(told.done()));
    told.done().forEach(s -> lastOfName.merge(s.name(), s.date(), PlanRun::later));
    RestOfWeek rest =
        new RestOfWeek(
            athlete,
            heard.until().orElseThrow(),
            week.first(),
            hardDays.near(
                week.first(), sessions, Stream.concat(retests.stream(), tests.stream()).toList()),
            lastOfName);
    List<DatedSession> kept = new ArrayList<>(told.done());
    for (RestOfWeek.Dated dated : rest.place(told.ahead(), drafts)) {
      expansion
          .dated(
              block,
              week,
              dated.draft().session(),
              progression,
              state,
              dated.day(),
              dated.because())
          .ifPresent(
              session -> {
                hardDays.note(session, dated.draft().request().hardFingers());
                kept.add(session);
              });
    }
    toldFindings.note(block, week, told, rest.dropped());
    sessions.addAll(sorted(kept.stream().filter(s -> s.happened().isEmpty()).toList()));
    return kept;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private ModelPath path(Block block, WeekOfBlock week) {
    return root.then("block", block.name()).then("week", week.blockWeek());
  }

  /** Tells whether every day of the week on which the athlete trains is spent away. */
  private boolean isAwayAllWeek(LocalDate first) {
    return first
        .datesUntil(first.plusDays(7))
        .filter(day -> athlete.available().containsKey(day.getDayOfWeek()))
        .allMatch(athlete::isAway);
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

  private Set<String> allGrips(Block block) {
    Set<String> grips = new TreeSet<>();
    block.contentFor(athlete.name()).sessions().stream()
        .flatMap(session -> session.contentFor(athlete.name()).exercises().stream())
        .flatMap(exercise -> Choice.grips(exercise).stream())
        .forEach(grip -> grips.add(grip.name()));
    return grips;
  }

  private Set<String> gripsOf(int week) {
    Set<String> grips = new TreeSet<>();
    for (int i = sessions.size() - 1; i >= 0 && sessions.get(i).week() == week; i--) {
      sessions.get(i).exercises().forEach(e -> grips.add(e.setup().grip().name()));
    }
    return grips;
  }

  private void noteUnfinishedRamps(Block block, List<Progression.Chance> chances) {
    Collection<Block.Introduction> introductions = block.contentFor(athlete.name()).introductions();
    int number = 0;
    for (Block.Introduction introduction : introductions) {
      number++;
      String grip = introduction.grip().name();
      int steps = (int) chances.stream().filter(c -> c.grips().contains(grip)).count();
      if (steps < introduction.weeks() - 1) {
        findings.add(
            Finding.advice(
                    "plan.ramp-unfinished",
                    root.then("block", block.name()).then("introduce", number))
                .with("grip", grip)
                .with("reached", steps + 1)
                .with("weeks", introduction.weeks()));
      }
    }
  }
}
