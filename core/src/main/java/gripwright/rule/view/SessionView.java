package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.HoldChain;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A session, retest or day of hard climbing, as read by rules. */
public final class SessionView implements Named, Subject {

  /** The kind of a session. */
  enum What {
    /** A session of the plan. */
    TRAINING,
    /** A retest. */
    RETEST,
    /** A day of hard climbing. */
    CLIMBING;

    private final String word = name().toLowerCase(Locale.ROOT);

    @Override
    public String toString() {
      return word;
    }
  }

  final What what;
  public final LocalDate date;

  /** Days since 1970-01-01. */
  final long day;

  public final String name;
  final PlanView plan;
  final @Nullable WeekView week;
  public final ModelPath path;

  final boolean hard;
  final boolean eased;
  final double minutes;
  final double bodyMass;

  /** Name of the place; empty if there is none. */
  final String placeName;

  /** Seconds from midnight to its start; NaN if that isn't known. */
  final double startSecond;

  private final AthleteView athlete;
  final List<ExerciseView> exercises = new ArrayList<>();

  /** The tests of a retest, kept apart from the exercises because they add to no sum. */
  final List<ExerciseView> tests = new ArrayList<>();

  /** The planned exercises of a past session; otherwise empty. */
  final List<PlannedExercise> planned;

  double load;
  double timeUnderLoad;
  private @Nullable List<FingerView> atWork;

  /** The fingers used, one bit each; see {@link FingerSet#bits()}. */
  int fingerBits;

  /** The fingers worked hard, one bit each. */
  int hardFingerBits;

  /** The data of a session; minutes and body mass are NaN if there are none. */
  private record Facts(
      What what,
      LocalDate date,
      String name,
      ModelPath path,
      boolean hard,
      boolean eased,
      double minutes,
      double bodyMass,
      Optional<LocalTime> time,
      String place) {
    /** Returns the data of a test or of climbing. */
    static Facts unplanned(What what, LocalDate date, ModelPath path) {
      return new Facts(
          what,
          date,
          what.toString(),
          path,
          true,
          false,
          Double.NaN,
          Double.NaN,
          Optional.empty(),
          "");
    }
  }

  private SessionView(
      Facts facts, List<PlannedExercise> planned, PlanView plan, @Nullable WeekView week) {
    this.planned = planned;
    what = facts.what();
    date = facts.date();
    day = date.toEpochDay();
    name = facts.name();
    path = facts.path();
    hard = facts.hard();
    eased = facts.eased();
    minutes = facts.minutes();
    bodyMass = facts.bodyMass();
    placeName = facts.place();
    startSecond = facts.time().map(time -> (double) time.toSecondOfDay()).orElse(Double.NaN);
    this.plan = plan;
    this.week = week;
    athlete = plan.athleteOn(date);
  }

  static SessionView of(DatedSession dated, PlanView plan, @Nullable WeekView week) {
    SessionView session =
        new SessionView(
            new Facts(
                What.TRAINING,
                dated.date(),
                dated.name(),
                dated.path(),
                dated.hard(),
                dated.eased(),
                dated.minutes(),
                dated.bodyMass().kilograms(),
                dated.time(),
                dated.place().orElse("")),
            dated
                .happened()
                .flatMap(Happened::planned)
                .map(DatedSession::exercises)
                .orElse(List.of()),
            plan,
            week);
    for (PlannedExercise planned : dated.exercises()) {
      ExerciseView exercise = new ExerciseView(planned, session);
      session.exercises.add(exercise);
      session.load += exercise.load;
      session.timeUnderLoad += exercise.timeUnderLoad;
      session.fingerBits |= exercise.fingers().bits();
      session.hardFingerBits |= planned.hard() ? exercise.fingers().bits() : 0;
    }
    session.joinHolds();
    return session;
  }

  /** Joins the holds of consecutive exercises of a hand that have almost no rest between them. */
  private void joinHolds() {
    BlockView block = block();
    double between = block == null ? Double.NaN : block.restBetween(name);
    if (Double.isNaN(between) || HoldChain.parts(between)) {
      return;
    }
    for (Side side : Side.values()) {
      HoldChain held = new HoldChain();
      for (ExerciseView exercise : exercises) {
        if (exercise.handsAtWork().sides().contains(side)) {
          exercise.follow(held);
        } else {
          held.rest(exercise.timeUnderLoad);
        }
      }
    }
  }

  static SessionView of(DatedRetest retest, PlanView plan, @Nullable WeekView week) {
    SessionView session =
        new SessionView(
            Facts.unplanned(What.RETEST, retest.date(), retest.path()), List.of(), plan, week);
    for (Setup setup : retest.setups()) {
      session.tests.add(new ExerciseView(retest, setup, session));
      session.fingerBits |= setup.grip().fingers().bits();
    }
    session.hardFingerBits = session.fingerBits;
    for (PlannedExercise planned : retest.exercises()) {
      ExerciseView exercise = new ExerciseView(planned, session);
      session.exercises.add(exercise);
      session.load += exercise.load;
      session.timeUnderLoad += exercise.timeUnderLoad;
      session.fingerBits |= exercise.fingers().bits();
      session.hardFingerBits |= planned.hard() ? exercise.fingers().bits() : 0;
    }
    return session;
  }

  static SessionView climbing(LocalDate day, PlanView plan, @Nullable WeekView week) {
    ModelPath path = (week == null ? plan.path : week.path()).then("date", day.toString());
    SessionView session =
        new SessionView(Facts.unplanned(What.CLIMBING, day, path), List.of(), plan, week);
    session.fingerBits = FingerSet.FOUR.bits();
    session.hardFingerBits = session.fingerBits;
    return session;
  }

  /** Returns the exercises, each as done or as planned, whichever is more. */
  List<ExerciseView> atLeastPlanned() {
    List<ExerciseView> left = new ArrayList<>(exercises);
    List<ExerciseView> all = new ArrayList<>();
    for (PlannedExercise each : planned) {
      plan.evaluation.take(1 + left.size());
      ExerciseView plannedView = new ExerciseView(each, this);
      Optional<ExerciseView> done = left.stream().filter(plannedView::isSameWork).findFirst();
      done.ifPresent(left::remove);
      all.add(
          done.filter(d -> d.load > plannedView.load / plannedView.returnShare())
              .orElse(plannedView));
    }
    all.addAll(left);
    return all;
  }

  /** Returns a day with a logged test. */
  static SessionView tested(LocalDate day, int fingerBits, PlanView plan) {
    SessionView session =
        new SessionView(
            Facts.unplanned(What.RETEST, day, plan.path.then("date", day.toString())),
            List.of(),
            plan,
            null);
    session.fingerBits = fingerBits;
    session.hardFingerBits = fingerBits;
    return session;
  }

  /** Returns whether this is planned training or a planned test, not climbing. */
  boolean isPlanned() {
    return what != What.CLIMBING;
  }

  /**
   * Returns the warm-up before the first hold at 80 % of the maximum, in seconds: the written
   * warm-up, work below 60 % and the climbing of that day. NaN if no hold is that hard or if no
   * warm-up is known, as for unplanned sessions.
   */
  double warmUp() {
    double seconds = plan.athleteDays().climbing(date).toSeconds() + writtenWarmUp();
    for (ExerciseView exercise : exercises) {
      // Of alternating hands the right one works in the rests of the left.
      seconds += exercise.isSecondOfTurns() ? 0 : exercise.work().lightBefore80();
      if (exercise.work().reaches(HeldWork.HARD)) {
        return seconds;
      }
    }
    return Double.NaN;
  }

  private double writtenWarmUp() {
    BlockView block = block();
    return block == null ? Double.NaN : block.warmUp(name);
  }

  AthleteView athlete() {
    return athlete;
  }

  @Nullable BlockView block() {
    return week == null ? null : week.block;
  }

  /** Returns the number of holds of the hand with more of them. */
  double mostHolds() {
    return ofOneHand(e -> e.sets * e.repetitions);
  }

  /** Returns the time of all holds of the hand with the longer time, in seconds. */
  double mostTimeUnderLoad() {
    return ofOneHand(e -> e.timeUnderLoad);
  }

  private double ofOneHand(ToDoubleFunction<ExerciseView> of) {
    return Stream.of(Side.values())
        .mapToDouble(
            side ->
                exercises.stream()
                    .filter(e -> e.handsAtWork().sides().contains(side))
                    .mapToDouble(of)
                    .sum())
        .max()
        .orElse(0);
  }

  /** Returns the fingers that hold, computed on first use. */
  List<FingerView> fingers() {
    List<FingerView> known = atWork;
    if (known == null) {
      known =
          FingerView.of(
              FingerView.together(exercises.stream().map(ExerciseView::fingersAtWork).toList()));
      atWork = known;
    }
    return known;
  }

  @Override
  public Message called() {
    return new Clause("breach.session-on", Map.of("name", name, "date", date));
  }

  @Override
  public ModelPath path() {
    return path;
  }

  @Override
  public LocalDate date() {
    return date;
  }
}
