package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

  private SessionView(Facts facts, PlanView plan, @Nullable WeekView week) {
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
    return session;
  }

  static SessionView of(DatedRetest retest, PlanView plan, @Nullable WeekView week) {
    SessionView session =
        new SessionView(Facts.unplanned(What.RETEST, retest.date(), retest.path()), plan, week);
    retest.setups().forEach(setup -> session.fingerBits |= setup.grip().fingers().bits());
    session.hardFingerBits = session.fingerBits;
    return session;
  }

  static SessionView climbing(LocalDate day, PlanView plan, @Nullable WeekView week) {
    ModelPath path = (week == null ? plan.path : week.path()).then("date", day.toString());
    SessionView session = new SessionView(Facts.unplanned(What.CLIMBING, day, path), plan, week);
    session.fingerBits = FingerSet.FOUR.bits();
    session.hardFingerBits = session.fingerBits;
    return session;
  }

  AthleteView athlete() {
    return athlete;
  }

  @Nullable BlockView block() {
    return week == null ? null : week.block;
  }

  /** Returns the fingers that hold, reckoned when they are first asked for. */
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
