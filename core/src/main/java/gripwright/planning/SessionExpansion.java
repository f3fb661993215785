package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.DatedSession;
import gripwright.plan.Exercise;
import gripwright.plan.GripMix;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import gripwright.plan.PlannedExercise.Derivation;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Protocol;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/** Turns a kind of session into exercises with loads, for a week and then for a day of it. */
final class SessionExpansion {

  private final Plan plan;
  private final Athlete athlete;
  private final ModelPath root;
  private final HandFits fits;
  private final FindingList findings;
  private final Prescription prescription;
  private final Choice choice;
  private final SessionOutlook outlook;
  private final UnplannedWork unplannedWork;

  SessionExpansion(
      Plan plan,
      Athlete athlete,
      Log log,
      Map<String, Protocol> protocols,
      ModelPath root,
      HandFits fits,
      FindingList findings) {
    this.plan = plan;
    this.athlete = athlete;
    this.root = root;
    this.fits = fits;
    this.findings = findings;
    this.prescription = new Prescription(athlete, log, plan.from(), fits);
    this.outlook = new SessionOutlook(fits);
    this.unplannedWork = new UnplannedWork(protocols, prescription, fits);
    this.choice = new Choice(plan, athlete, log, fits, prescription);
  }

  /**
   * A session that wants a day.
   *
   * @param session what it comes from
   * @param request what it asks of the day
   */
  record Draft(SessionPlan session, Placement.Request request) {}

  /**
   * Returns what a session would ask of a day; empty if none of its exercises can be trained, and
   * then tells why.
   */
  Optional<Draft> draft(
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session,
      Progression progression,
      Progression.Week state,
      FindingList into) {
    FindingList unsaid = new FindingList();
    List<PlannedExercise> exercises =
        exercises(block, week, session, progression, state, week.first(), unsaid);
    if (exercises.isEmpty()) {
      unsaid.all().forEach(into::add);
      return Optional.empty();
    }
    Optional<FingerSet> hard =
        Stream.concat(
                exercises.stream(), unlightened(block, week, session, progression, state).stream())
            .filter(PlannedExercise::hard)
            .map(e -> e.setup().grip().fingers())
            .reduce((a, b) -> new FingerSet(a.bits() | b.bits()));
    return Optional.of(
        new Draft(
            session,
            new Placement.Request(
                session.name(),
                minutes(session, exercises),
                session.gap(),
                hard,
                session.prefer())));
  }

  /** Days are found as if the log had lightened nothing, so that they stay where they were. */
  private List<PlannedExercise> unlightened(
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session,
      Progression progression,
      Progression.Week state) {
    return progression
        .unlightened()
        .map(
            without ->
                exercises(
                    block,
                    week,
                    session,
                    without,
                    state.unlightened().orElse(state),
                    week.first(),
                    new FindingList()))
        .orElseGet(List::of);
  }

  /** Returns a session on a day; empty if none of its exercises can be trained on it. */
  Optional<DatedSession> dated(
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session,
      Progression progression,
      Progression.Week state,
      LocalDate day,
      String because) {
    List<PlannedExercise> exercises =
        exercises(block, week, session, progression, state, day, findings);
    return exercises.isEmpty()
        ? Optional.empty()
        : Optional.of(session(block, week, session, day, exercises, because));
  }

  private DatedSession session(
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session,
      LocalDate day,
      List<PlannedExercise> exercises,
      String because) {
    return new DatedSession(
        day,
        week.number(),
        block.name(),
        week.blockWeek(),
        session.name(),
        minutes(session, exercises),
        exercises.stream().anyMatch(PlannedExercise::hard),
        week.eased(),
        prescription.bodyMassOn(day),
        because,
        exercises,
        path(block, week, session, day),
        Optional.empty());
  }

  private ModelPath path(
      Block block, PlanRun.WeekOfBlock week, SessionPlan session, LocalDate day) {
    return path(block, week, session.name(), day);
  }

  /** Returns where a session of a day stands. */
  ModelPath path(Block block, PlanRun.WeekOfBlock week, String session, LocalDate day) {
    return root.then("block", block.name())
        .then("week", week.blockWeek())
        .then("session", session)
        .then("date", day.toString());
  }

  /** Returns what a line of the log stands for that no exercise of the week is like. */
  Optional<PlannedExercise> unplanned(LogEntry.Done done, LocalDate day, ModelPath path) {
    return unplannedWork.of(done, day, path);
  }

  /** Returns the body mass that loads on a day are reckoned with. */
  Load bodyMassOn(LocalDate day) {
    return prescription.bodyMassOn(day);
  }

  /** Returns how long a session takes with these exercises, in minutes, rounded up. */
  int minutes(SessionPlan session, List<PlannedExercise> exercises) {
    Duration time = session.contentFor(athlete.name()).warmUp().orElse(plan.warmUp());
    Duration between = restBetween(session);
    for (int i = 0; i < exercises.size(); i++) {
      time = time.plus(exercises.get(i).scheme().duration()).plus(i == 0 ? Duration.ZERO : between);
    }
    long seconds = time.toSeconds() + (time.toNanosPart() > 0 ? 1 : 0);
    return (int) ((seconds + 59) / 60);
  }

  private Duration restBetween(SessionPlan session) {
    return session.contentFor(athlete.name()).restBetween().orElse(plan.restBetween());
  }

  private List<PlannedExercise> exercises(
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session,
      Progression progression,
      Progression.Week state,
      LocalDate day,
      FindingList into) {
    List<PlannedExercise> all = new ArrayList<>();
    ModelPath sessionPath = path(block, week, session, day);
    int line = 0;
    for (Exercise exercise : session.contentFor(athlete.name()).exercises()) {
      line++;
      ModelPath path = sessionPath.then("exercise", line);
      if (exercise.target() instanceof Exercise.BestOf) {
        all.addAll(
            chosen(
                exercise, progression, state, day, path, into, all.size(), block, week, session));
      } else {
        Grip grip = Choice.grips(exercise).get(0);
        prescription
            .prescribe(
                exercise,
                grip,
                progression.dose(exercise, grip, state, day, path),
                day,
                all.size() + 1,
                path,
                into)
            .ifPresent(all::add);
      }
    }
    return outlook.of(all, restBetween(session), prescription.strengthOn(day), into);
  }

  private List<PlannedExercise> chosen(
      Exercise exercise,
      Progression progression,
      Progression.Week state,
      LocalDate day,
      ModelPath path,
      FindingList into,
      int before,
      Block block,
      PlanRun.WeekOfBlock week,
      SessionPlan session) {
    List<Setup> setups =
        Choice.grips(exercise).stream()
            .map(g -> exercise.setup(g).withEdge(progression.dose(exercise, g, state).edge()))
            .toList();
    PlanWeek planWeek =
        new PlanWeek(
            week.number(),
            block.name(),
            week.blockWeek(),
            week.first(),
            week.eased(),
            false,
            0,
            0,
            path);
    List<Choice.Out> out = new ArrayList<>();
    for (Setup setup : setups) {
      Dose dose = progression.dose(exercise, setup.grip(), state, day, path);
      FindingList why = new FindingList();
      Optional<PlannedExercise> candidate =
          prescription.prescribe(exercise, setup.grip(), dose, day, before + 1, path, why);
      choice
          .outByItself(setup)
          .or(
              () ->
                  candidate.isEmpty()
                      ? Optional.of(Choice.Out.withoutLoad(setup, why.all()))
                      : choice.outByRule(
                          candidate.get(),
                          session(block, week, session, day, List.of(candidate.get()), ""),
                          planWeek))
          .ifPresent(out::add);
    }
    Optional<GripMix> mix = choice.mix(exercise, setups, out);
    if (mix.isEmpty()) {
      if (out.stream().allMatch(o -> o.kind() == GripMix.Kind.LOAD)) {
        // What keeps the first from a load is what the coach has to mend.
        Setup first = setups.get(0);
        Dose dose = progression.dose(exercise, first.grip(), state, day, path);
        prescription.prescribe(exercise, first.grip(), dose, day, before + 1, path, into);
        return List.of();
      }
      into.add(noneOpen(exercise, progression, state, path).with("session", session.name()));
      return List.of();
    }
    return shared(exercise, mix.get(), progression, state, day, path, into, before);
  }

  /** Prescribes each grip of a mix its share of the sets. */
  private List<PlannedExercise> shared(
      Exercise exercise,
      GripMix mix,
      Progression progression,
      Progression.Week state,
      LocalDate day,
      ModelPath path,
      FindingList into,
      int before) {
    List<PlannedExercise> chosen = new ArrayList<>();
    SortedMap<String, Double> shares = mix.best().shares();
    Grip first = gripNamed(exercise, shares.firstKey());
    // A grip that is introduced takes its steps later, and the line as a whole waits for it.
    int full =
        shares.keySet().stream()
            .map(name -> gripNamed(exercise, name))
            .filter(grip -> grip.equals(first) || progression.introduction(grip).isPresent())
            .mapToInt(grip -> progression.fullSets(exercise, grip, state))
            .min()
            .orElseThrow();
    int all = progression.doseOfMix(exercise, first, state, full, day, path).scheme().sets();
    Choice.apportion(all, shares)
        .forEach(
            (name, sets) -> {
              if (sets > 0) {
                Grip grip = gripNamed(exercise, name);
                Dose dose = progression.doseOfMix(exercise, grip, state, full, day, path);
                List<Derivation> why = new ArrayList<>(dose.why());
                why.addAll(
                    MixWords.why(
                        mix,
                        name,
                        sets,
                        all,
                        chosen.stream().findFirst().map(c -> c.setup().grip().name())));
                prescription
                    .prescribe(
                        exercise,
                        grip,
                        dose.withSets(sets, why),
                        day,
                        before + chosen.size() + 1,
                        path,
                        into)
                    .map(planned -> planned.chosenBy(mix))
                    .ifPresent(chosen::add);
              }
            });
    return chosen;
  }

  private static Grip gripNamed(Exercise exercise, String name) {
    return Choice.grips(exercise).stream()
        .filter(grip -> grip.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Tells that a line leaves no choice, and where the hand alone is why. */
  private Finding noneOpen(
      Exercise exercise, Progression progression, Progression.Week state, ModelPath path) {
    List<Grip> grips = Choice.grips(exercise);
    Finding none =
        Finding.error("plan.choose-none", path)
            .with("grips", grips.stream().map(Grip::name).toList());
    List<Setup> beyond =
        grips.stream()
            .map(g -> exercise.setup(g).withEdge(progression.dose(exercise, g, state).edge()))
            .filter(setup -> !fits.takes(setup))
            .toList();
    return beyond.isEmpty()
        ? none
        : none.with("out-of-reach", beyond.stream().map(s -> s.grip().name()).toList())
            .with("edge", beyond.get(0).edge());
  }
}
