package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.fatigue.SessionOutlook;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.Dose;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.planning.load.UnplannedWork;
import gripwright.planning.mix.Choice;
import gripwright.planning.mix.MixLinks;
import gripwright.planning.placement.Placement;
import gripwright.planning.progression.Progression;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.GripMix;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/** Turns a kind of session into exercises with loads, for a week and then for a day of it. */
final class SessionExpansion {

  private final Plan plan;
  private final Athlete athlete;
  private final HandFindings hands;
  private final Prescription prescription;
  private final Choice choice;
  private final SessionOutlook outlook;
  private final UnplannedWork unplannedWork;
  private final Map<String, Protocol> protocols;
  private final Meter meter;
  private final IdentityHashMap<Block, Progression> progressions = new IdentityHashMap<>();

  SessionExpansion(
      Plan plan,
      Athlete athlete,
      LogTimeline timeline,
      Map<String, Protocol> protocols,
      HandFindings hands) {
    this(plan, athlete, timeline, protocols, hands, Meter.unbounded());
  }

  /**
   * Prepares to expand within a budget.
   *
   * @param meter stops what grows beyond the limit of an exercise
   */
  SessionExpansion(
      Plan plan,
      Athlete athlete,
      LogTimeline timeline,
      Map<String, Protocol> protocols,
      HandFindings hands,
      Meter meter) {
    this.protocols = protocols;
    this.meter = meter;
    this.plan = plan;
    this.athlete = athlete;
    this.hands = hands;
    this.prescription = new Prescription(athlete, timeline.log(), plan.from(), hands);
    this.outlook = new SessionOutlook();
    this.unplannedWork = new UnplannedWork(protocols, prescription, hands.fits());
    this.choice =
        new Choice(
            timeline,
            hands.fits(),
            prescription.strengthOn(plan.from()),
            prescription.bodyMassOn(plan.from()));
  }

  private Progression progression(WeekContext week) {
    return progressions.computeIfAbsent(
        week.block(), block -> new Progression(block.contentFor(athlete.name())));
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
  Optional<Draft> draft(WeekContext week, SessionPlan session, FindingList into) {
    FindingList unsaid = new FindingList();
    List<PlannedExercise> exercises = exercises(week, session, week.first(), unsaid);
    if (exercises.isEmpty()) {
      unsaid.all().forEach(into::add);
      return Optional.empty();
    }
    Optional<FingerSet> hard =
        Stream.concat(exercises.stream(), withoutLogLimits(week, session).stream())
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

  /** Days are found as if the log had limited nothing, so that they stay where they were. */
  private List<PlannedExercise> withoutLogLimits(WeekContext week, SessionPlan session) {
    return week.standing()
        .withoutLogLimits()
        .map(standing -> exercises(week.with(standing), session, week.first(), new FindingList()))
        .orElseGet(List::of);
  }

  /** Returns a session on a day; empty if none of its exercises can be trained on it. */
  Optional<DatedSession> dated(
      WeekContext week,
      SessionPlan session,
      LocalDate day,
      PlacementReason because,
      FindingList found) {
    List<PlannedExercise> exercises = exercises(week, session, day, found);
    return exercises.isEmpty()
        ? Optional.empty()
        : Optional.of(session(week, session, day, exercises, because));
  }

  private DatedSession session(
      WeekContext week,
      SessionPlan session,
      LocalDate day,
      List<PlannedExercise> exercises,
      PlacementReason because) {
    return new DatedSession(
        day,
        week.number(),
        week.block().name(),
        week.blockWeek(),
        session.name(),
        minutes(session, exercises),
        exercises.stream().anyMatch(PlannedExercise::hard),
        week.eased(),
        prescription.bodyMassOn(day),
        because,
        exercises,
        week.path(session.name(), day),
        Optional.empty());
  }

  /** Returns what a line of the log stands for that no exercise of the week is like. */
  Optional<PlannedExercise> unplanned(LogEntry.Done done, LocalDate day, ModelPath path) {
    Protocol protocol = protocols.get(done.protocol());
    if (protocol != null) {
      meter.require(Limit.EXERCISE, protocol.size(Map.of()));
    }
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

  /**
   * A line of a session on a day.
   *
   * @param week the week
   * @param session the session
   * @param day the day
   * @param exercise the line
   * @param path where it stands
   * @param before how many exercises the session has before it
   */
  private record Line(
      WeekContext week,
      SessionPlan session,
      LocalDate day,
      Exercise exercise,
      ModelPath path,
      int before) {

    Prescription.Place place(int offset) {
      return new Prescription.Place(day, before + offset + 1, path);
    }
  }

  private List<PlannedExercise> exercises(
      WeekContext week, SessionPlan session, LocalDate day, FindingList into) {
    List<PlannedExercise> all = new ArrayList<>();
    ModelPath sessionPath = week.path(session.name(), day);
    int number = 0;
    for (Exercise exercise : session.contentFor(athlete.name()).exercises()) {
      number++;
      Line line =
          new Line(week, session, day, exercise, sessionPath.then("exercise", number), all.size());
      if (exercise.target() instanceof Exercise.BestOf) {
        all.addAll(chosen(line, into));
      } else {
        Grip grip = Choice.grips(exercise).get(0);
        prescription
            .prescribe(exercise, grip, dose(line, grip), line.place(0), into)
            .ifPresent(all::add);
      }
    }
    List<PlannedExercise> felt =
        outlook.of(all, restBetween(session), prescription.strengthOn(day), into);
    for (int i = 0; i < felt.size(); i++) {
      PlannedExercise exercise = felt.get(i);
      if (exercise.hard() && !all.get(i).hard()) {
        hands.notForced(exercise.setup(), exercise.path()).ifPresent(into::add);
      }
    }
    return felt;
  }

  private Dose dose(Line line, Grip grip) {
    return within(
        progression(line.week())
            .dose(line.exercise(), grip, line.week().standing(), line.day(), line.path()));
  }

  private Dose within(Dose dose) {
    within(dose.scheme());
    dose.whole().ifPresent(this::within);
    return dose;
  }

  /** Returns a scheme that may be written out: sets may have become more than were written. */
  Scheme within(Scheme scheme) {
    meter.require(Limit.EXERCISE, scheme.size());
    return scheme;
  }

  /** Returns the grips that a line leaves a choice of, on the edges that progress has come to. */
  private List<Setup> setups(Line line) {
    Exercise exercise = line.exercise();
    return Choice.grips(exercise).stream()
        .map(
            grip ->
                exercise
                    .setup(grip)
                    .withEdge(
                        progression(line.week())
                            .dose(exercise, grip, line.week().standing())
                            .edge()))
        .toList();
  }

  private List<PlannedExercise> chosen(Line line, FindingList into) {
    meter.look();
    Exercise exercise = line.exercise();
    List<Setup> setups = setups(line);
    List<Choice.Exclusion> out = new ArrayList<>();
    for (Setup setup : setups) {
      excluded(line, setup).ifPresent(out::add);
    }
    Optional<GripMix> mix = choice.mix(exercise, setups, out);
    if (mix.isPresent()) {
      return shared(line, mix.get(), into);
    }
    if (out.stream().allMatch(o -> o.reason() instanceof GripMix.NoLoad)) {
      // What keeps the first from a load is what the coach has to mend.
      Grip first = setups.get(0).grip();
      prescription.prescribe(exercise, first, dose(line, first), line.place(0), into);
    } else {
      into.add(noneOpen(line, setups).with("session", line.session().name()));
    }
    return List.of();
  }

  private Optional<Choice.Exclusion> excluded(Line line, Setup setup) {
    FindingList why = new FindingList();
    Optional<PlannedExercise> candidate =
        prescription.prescribe(
            line.exercise(), setup.grip(), dose(line, setup.grip()), line.place(0), why);
    Optional<Choice.Exclusion> byHand = choice.excludedByHand(setup);
    if (byHand.isPresent()) {
      return byHand;
    }
    if (candidate.isEmpty()) {
      return Optional.of(Choice.Exclusion.withoutLoad(setup, why.all()));
    }
    WeekContext week = line.week();
    return choice.excludedByRule(
        candidate.get(),
        session(
            week,
            line.session(),
            line.day(),
            List.of(candidate.get()),
            new PlacementReason.Unplaced()),
        new PlanWeek(
            week.number(),
            week.block().name(),
            week.blockWeek(),
            week.first(),
            week.eased(),
            false,
            0,
            0,
            line.path()));
  }

  /** Prescribes each grip of a mix its share of the sets. */
  private List<PlannedExercise> shared(Line line, GripMix mix, FindingList into) {
    Exercise exercise = line.exercise();
    Progression progression = progression(line.week());
    Progression.Week standing = line.week().standing();
    List<PlannedExercise> chosen = new ArrayList<>();
    SortedMap<String, Double> shares = mix.best().shares();
    Grip first = gripNamed(exercise, shares.firstKey());
    // A grip that is introduced takes its steps later, and the line as a whole waits for it.
    int full =
        shares.keySet().stream()
            .map(name -> gripNamed(exercise, name))
            .filter(grip -> grip.equals(first) || progression.introduction(grip).isPresent())
            .mapToInt(grip -> progression.fullSets(exercise, grip, standing))
            .min()
            .orElseThrow();
    int all =
        progression
            .doseOfMix(exercise, first, standing, full, line.day(), line.path())
            .scheme()
            .sets();
    Choice.apportion(all, shares)
        .forEach(
            (name, sets) -> {
              if (sets > 0) {
                Grip grip = gripNamed(exercise, name);
                Dose dose =
                    within(
                        progression.doseOfMix(
                            exercise, grip, standing, full, line.day(), line.path()));
                List<Derivation> why = new ArrayList<>(dose.why());
                why.addAll(
                    MixLinks.why(
                        mix,
                        name,
                        sets,
                        all,
                        chosen.stream().findFirst().map(c -> c.setup().grip().name())));
                prescription
                    .prescribe(
                        exercise, grip, dose.withSets(sets, why), line.place(chosen.size()), into)
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

  /** Reports that a line leaves no choice, and where the hand alone is why. */
  private Finding noneOpen(Line line, List<Setup> setups) {
    Finding none =
        Finding.error("plan.choose-none", line.path())
            .with("grips", Choice.grips(line.exercise()).stream().map(Grip::name).toList());
    List<Setup> beyond = setups.stream().filter(setup -> !hands.fits().takes(setup)).toList();
    return beyond.isEmpty()
        ? none
        : none.with("out-of-reach", beyond.stream().map(s -> s.grip().name()).toList())
            .with("edge", beyond.get(0).edge());
  }
}
