package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.fatigue.SessionOutlook;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.planning.load.UnplannedWork;
import gripwright.planning.placement.CountedTests;
import gripwright.planning.placement.Placement;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlannedExercise;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * Expands a planned session into exercises with loads, first for a week and then for a day of it.
 */
final class SessionExpansion {

  private final Athlete athlete;
  private final SharedDays sharedDays;
  private final HandFindings hands;
  private final Prescription prescription;
  private final SessionFrame frame;
  private final LineExpansion lines;
  private final SessionOutlook outlook;
  private final UnplannedWork unplannedWork;
  private final Map<String, Protocol> protocols;
  private final Meter meter;

  SessionExpansion(
      Plan plan,
      Athlete athlete,
      LogTimeline timeline,
      Map<String, Protocol> protocols,
      HandFindings hands) {
    this(plan, athlete, timeline, protocols, hands, Meter.unbounded());
  }

  /**
   * Creates an expansion within a budget.
   *
   * @param meter enforces the limits of an exercise
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
    this.athlete = athlete;
    this.sharedDays = new SharedDays(athlete);
    this.hands = hands;
    this.prescription =
        new Prescription(athlete, CountedTests.of(plan, timeline.log()), plan.from(), hands);
    this.outlook = new SessionOutlook();
    this.unplannedWork = new UnplannedWork(protocols, prescription, hands.fits());
    this.frame = new SessionFrame(plan, athlete, prescription);
    this.lines = new LineExpansion(timeline, hands, prescription, frame, meter);
  }

  /**
   * A session that needs a day.
   *
   * @param session its plan
   * @param request its requirements for the day
   */
  record Draft(SessionPlan session, Placement.Request request) {}

  /** Returns the sessions of a week with their requirements, each as often as planned. */
  List<Draft> drafts(WeekContext week, FindingList found) {
    List<Draft> drafts = new ArrayList<>();
    week.block().contentFor(athlete.name()).sessions().stream()
        .sorted(Comparator.comparing(SessionPlan::name))
        .forEach(
            session ->
                draft(week, session, found)
                    .ifPresent(
                        draft -> drafts.addAll(Collections.nCopies(session.perWeek(), draft))));
    return drafts;
  }

  /**
   * Returns a session with its requirements for a day; empty, with a finding, if none of its
   * exercises can be trained.
   */
  private Optional<Draft> draft(WeekContext week, SessionPlan session, FindingList into) {
    SlotPlaces places = SlotPlaces.of(athlete, session.onlyAt(), edges(week, session));
    Optional<FingerSet> hard = Optional.empty();
    int minutes = 0;
    for (Optional<String> at : places.built()) {
      FindingList unsaid = new FindingList();
      List<PlannedExercise> exercises = exercises(week, session, new At(week.first(), at), unsaid);
      if (exercises.isEmpty()) {
        unsaid.all().forEach(into::add);
        return Optional.empty();
      }
      minutes = Math.max(minutes, minutes(session, exercises));
      hard = together(hard, hard(exercises, withoutLogLimits(week, session, at)));
    }
    return Optional.of(
        new Draft(
            session,
            new Placement.Request(
                session.name(),
                minutes,
                session.gap(),
                hard,
                session.prefer(),
                session.onlyOn(),
                sharedDays.of(session, week.first()),
                places.open())));
  }

  /** Returns the edges that a session needs. */
  private List<Length> edges(WeekContext week, SessionPlan session) {
    ModelPath path = week.path(session.name(), week.first());
    return session.contentFor(athlete.name()).exercises().stream()
        .flatMap(
            exercise ->
                lines
                    .edges(
                        new LineExpansion.Line(
                            week, session, week.first(), exercise, path, 0, Optional.empty()))
                    .stream())
        .distinct()
        .toList();
  }

  private static Optional<FingerSet> hard(
      List<PlannedExercise> exercises, List<PlannedExercise> unlimited) {
    return Stream.concat(exercises.stream(), unlimited.stream())
        .filter(PlannedExercise::hard)
        .map(e -> e.setup().grip().fingers())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()));
  }

  private static Optional<FingerSet> together(Optional<FingerSet> one, Optional<FingerSet> other) {
    return Stream.concat(one.stream(), other.stream())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()));
  }

  /**
   * When and where a session is.
   *
   * @param day the day
   * @param place name of the place, if there is one
   */
  private record At(LocalDate day, Optional<String> place) {}

  /** Days are chosen without the limits of the log, so that sessions keep their days. */
  private List<PlannedExercise> withoutLogLimits(
      WeekContext week, SessionPlan session, Optional<String> at) {
    return week.standing()
        .withoutLogLimits()
        .map(
            standing ->
                exercises(
                    week.with(standing), session, new At(week.first(), at), new FindingList()))
        .orElseGet(List::of);
  }

  /** Returns a session on a day; empty if none of its exercises can be trained on it. */
  Optional<DatedSession> dated(
      WeekContext week,
      SessionPlan session,
      Placement.Spot spot,
      PlacementReason because,
      FindingList found) {
    List<PlannedExercise> exercises =
        exercises(week, session, new At(spot.date(), spot.slot().place()), found);
    return exercises.isEmpty()
        ? Optional.empty()
        : Optional.of(
            frame.dated(week, session, spot.date(), exercises, because).toBuilder()
                .time(spot.slot().at())
                .place(spot.slot().place())
                .build());
  }

  /** Returns the duration of a session with these exercises, in minutes, rounded up. */
  int minutes(SessionPlan session, List<PlannedExercise> exercises) {
    return frame.minutes(session, exercises);
  }

  /** Returns the exercise for logged work that matches no exercise of the week. */
  Optional<PlannedExercise> unplanned(LogEntry.Done done, LocalDate day, ModelPath path) {
    return unplanned(done, Map.of(), day, path);
  }

  /**
   * Returns the exercise for logged work.
   *
   * @param with the arguments of its protocol
   */
  Optional<PlannedExercise> unplanned(
      LogEntry.Done done, Map<String, Argument> with, LocalDate day, ModelPath path) {
    Protocol protocol = protocols.get(done.protocol());
    if (protocol != null) {
      meter.require(Limit.EXERCISE, protocol.size(with));
    }
    return unplannedWork.of(done, with, day, path);
  }

  /**
   * Returns whether the load of logged work, similar to a planned exercise, is known to be light
   * without a test.
   */
  boolean isKnownLight(Setup setup, Load load, LocalDate day, PlannedExercise like) {
    return prescription.isKnownLight(setup, load, day, like.rehabilitation().isPresent());
  }

  /** Returns the body mass used for the loads of a day. */
  Load bodyMassOn(LocalDate day) {
    return prescription.bodyMassOn(day);
  }

  private List<PlannedExercise> exercises(
      WeekContext week, SessionPlan session, At at, FindingList into) {
    List<Exercise> written = session.contentFor(athlete.name()).exercises();
    if (written.stream().noneMatch(Exercise::warmUp)) {
      return felt(week, session, at, (exercise, place) -> week, into);
    }
    WeekContext full = week.notEased();
    List<PlannedExercise> whole =
        felt(full, session, at, (exercise, place) -> full, week.eased() ? new FindingList() : into);
    WarmUpLines warmUps = WarmUpLines.of(whole, written);
    List<PlannedExercise> all =
        warmUps.mark(
            week.eased()
                ? felt(
                    week,
                    session,
                    at,
                    (line, place) -> line.warmUp() && !warmUps.isWork(place) ? full : week,
                    into)
                : whole,
            into);
    if (!all.stream().allMatch(PlannedExercise::warmUp)) {
      return all;
    }
    all.forEach(warmUp -> lines.untrained(week, session, at.day(), warmUp));
    return List.of();
  }

  /**
   * Returns the exercises of a session with what they leave.
   *
   * @param weekOf the week of a line at its place: a warm-up is not eased
   */
  private List<PlannedExercise> felt(
      WeekContext week,
      SessionPlan session,
      At at,
      BiFunction<Exercise, ModelPath, WeekContext> weekOf,
      FindingList into) {
    List<PlannedExercise> all = new ArrayList<>();
    LocalDate day = at.day();
    ModelPath sessionPath = week.path(session.name(), day);
    int number = 0;
    for (Exercise exercise : session.contentFor(athlete.name()).exercises()) {
      number++;
      ModelPath place = sessionPath.then("exercise", number);
      for (Exercise side : exercise.sides()) {
        all.addAll(
            lines.exercises(
                new LineExpansion.Line(
                    weekOf.apply(exercise, place),
                    session,
                    day,
                    side,
                    place,
                    all.size(),
                    at.place()),
                into));
      }
    }
    return felt(all, frame.restBetween(session), day, into);
  }

  /** Returns exercises in a row with what they leave. */
  private List<PlannedExercise> felt(
      List<PlannedExercise> all, Duration restBetween, LocalDate day, FindingList into) {
    List<PlannedExercise> felt = outlook.of(all, restBetween, prescription.strengthOn(day), into);
    for (int i = 0; i < felt.size(); i++) {
      PlannedExercise exercise = felt.get(i);
      if (exercise.hard() && !all.get(i).hard()) {
        hands.notForced(exercise.setup(), exercise.path()).ifPresent(into::add);
      }
    }
    return felt;
  }

  /**
   * Returns the warm-up exercises of a test on a day, which are not eased.
   *
   * @param dated the test on its day
   * @param session the greatest load-time of a session of the week, in kg s
   */
  List<PlannedExercise> warmUps(
      WeekContext week, PlannedTest test, DatedRetest dated, double session, FindingList into) {
    LocalDate day = dated.date();
    ModelPath place = dated.path();
    List<PlannedExercise> all = new ArrayList<>();
    int number = 0;
    for (Exercise exercise : test.exercises()) {
      number++;
      for (Exercise side : exercise.sides()) {
        lines
            .beforeTest(
                new LineExpansion.Before(
                    week.notEased(), dated, side, place.then("exercise", number), all.size()),
                into)
            .ifPresent(all::add);
      }
    }
    List<PlannedExercise> felt = felt(all, frame.restBetween(), day, into);
    return WarmUpLines.ofTest(felt, session).mark(felt, into);
  }

  /** Returns the load of a test to failure on a day, if it is known. */
  Optional<Load> loadOf(WeekContext week, Setup setup, Level level, DatedRetest test) {
    return prescription.loadOf(
        setup,
        level,
        new Prescription.Place(
            test.date(), 1, test.path(), week.standing().rise(), true, test.place()));
  }

  /** Returns the lines that are not trained, see {@link LineExpansion#unloaded}. */
  List<DatedSession> unloaded() {
    return lines.unloaded();
  }

  /** Returns the scheme after checking its size, because progression may have added sets. */
  Scheme within(Scheme scheme) {
    return lines.within(scheme);
  }
}
