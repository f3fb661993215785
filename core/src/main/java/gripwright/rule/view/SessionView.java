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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A session as rules see it; a retest and a day of hard climbing count as one. */
public final class SessionView implements Named, Subject {

  /** What a session is. */
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
  private final AthleteView athlete;
  final List<ExerciseView> exercises = new ArrayList<>();

  /** What is tested, of a retest; not among the exercises, since it adds to no sum. */
  final List<ExerciseView> tests = new ArrayList<>();

  /** What a session of the past was to be, before it was trained; else nothing. */
  final List<PlannedExercise> planned;

  double load;
  double timeUnderLoad;
  private @Nullable List<FingerView> atWork;

  /** The fingers used, one bit each; see {@link FingerSet#bits()}. */
  int fingerBits;

  /** The fingers worked hard, one bit each. */
  int hardFingerBits;

  /** What a session is by itself; minutes and body mass are not numbers where there are none. */
  private record Facts(
      What what,
      LocalDate date,
      String name,
      ModelPath path,
      boolean hard,
      boolean eased,
      double minutes,
      double bodyMass) {
    /** Returns those of a test or of climbing. */
    static Facts unplanned(What what, LocalDate date, ModelPath path) {
      return new Facts(what, date, what.toString(), path, true, false, Double.NaN, Double.NaN);
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
                dated.bodyMass().kilograms()),
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

  /** Exercises of a hand that follow each other with hardly a rest go on with its hold. */
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

  /**
   * Returns its exercises, each at least as it was planned: what was done less of, or not at all,
   * as it was to be. What was done more of counts as it was done.
   */
  List<ExerciseView> atLeastPlanned() {
    List<ExerciseView> left = new ArrayList<>(exercises);
    List<ExerciseView> all = new ArrayList<>();
    for (PlannedExercise each : planned) {
      plan.evaluation.take(1 + left.size());
      ExerciseView asked = new ExerciseView(each, this);
      Optional<ExerciseView> done = left.stream().filter(asked::isSameWork).findFirst();
      done.ifPresent(left::remove);
      all.add(done.filter(d -> d.load > asked.load / asked.returnShare()).orElse(asked));
    }
    all.addAll(left);
    return all;
  }

  /** Returns a day on which something was tested, as the log tells. */
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

  /** Tells whether it is of the plan: training or a test, not climbing. */
  boolean isPlanned() {
    return what != What.CLIMBING;
  }

  /**
   * Returns what comes before the first hold at 80 % of the maximum, in seconds: the written
   * warm-up, work below 60 % and climbing of that day. Not a number where nothing is that hard, or
   * where nothing is written of the warm-up, as of a session that was not planned.
   */
  double warmUp() {
    double seconds = plan.athleteDays().climbing(date).toSeconds() + writtenWarmUp();
    for (ExerciseView exercise : exercises) {
      seconds += exercise.work().lightBefore80();
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

  /** Returns how many holds the hand has that has more of them. */
  double mostHolds() {
    return ofOneHand(e -> e.sets * e.repetitions);
  }

  /** Returns the time of all holds of the hand that holds longer, in seconds. */
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

  /** Returns the fingers at work; computed on first use. */
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
