package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.WrittenText;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An exercise as rules see it. */
public final class ExerciseView implements Named, Subject {

  final PlannedExercise planned;
  public final SessionView session;
  final double load;
  final double timeUnderLoad;
  final double totalLoad;
  final double level;
  final double added;
  final double longestHold;
  final double edge;
  final String hands;
  final boolean hard;
  final int sets;
  final double rest;
  final double setRest;
  private @Nullable List<FingerView> atWork;

  ExerciseView(PlannedExercise planned, SessionView session) {
    this.planned = planned;
    this.session = session;
    load = planned.loadIndex();
    timeUnderLoad = planned.timeUnderLoadSeconds();
    totalLoad = planned.totalLoad().kilograms();
    level = level(planned, totalLoad);
    added = totalLoad - planned.bodyMass().kilograms();
    longestHold = longestHold(planned);
    edge = planned.setup().edge().millimetres();
    hands = planned.setup().hands().word();
    hard = planned.hard();
    sets = planned.scheme().sets();
    rest = planned.scheme().restBetweenHolds().toNanos() / 1e9;
    setRest = planned.scheme().restBetweenSets().toNanos() / 1e9;
  }

  /**
   * Returns the greater of the written level and the share of the maximum that the greatest load
   * is, so that neither rounding down to the equipment nor writing kilograms hides a level.
   */
  private static double level(PlannedExercise planned, double totalLoad) {
    double written =
        planned.percentOfMax().isPresent()
            ? planned.percentOfMax().getAsDouble() / 100
            : planned.scheme().written().stream()
                .map(Scheme.Hold::level)
                .mapToDouble(l -> l instanceof Level.OfMax share ? share.fraction() : Double.NaN)
                .filter(f -> !Double.isNaN(f))
                .max()
                .orElse(Double.NaN);
    double lifted =
        planned
            .maximum()
            .map(m -> m.used().kilograms())
            .filter(m -> m > 0)
            .map(m -> totalLoad / m)
            .orElse(Double.NaN);
    return Double.isNaN(written)
        ? lifted
        : Double.isNaN(lifted) ? written : Math.max(written, lifted);
  }

  @Override
  public ModelPath path() {
    return planned.path();
  }

  public Grip grip() {
    return planned.setup().grip();
  }

  FingerSet fingers() {
    return grip().fingers();
  }

  /** Returns the fingers that hold, reckoned when they are first asked for. */
  List<FingerView> fingersAtWork() {
    List<FingerView> known = atWork;
    if (known == null) {
      known = FingerView.of(plan().ledger.of(planned.fits(), timeUnderLoad, planned.impulse()));
      atWork = known;
    }
    return known;
  }

  PlanView plan() {
    return session.plan;
  }

  AthleteView athlete() {
    return session.athlete();
  }

  @Nullable WeekView week() {
    return session.week;
  }

  double endReserve() {
    return planned.endReserve().map(PlannedExercise.EndReserve::mean).orElse(Double.NaN);
  }

  private static double longestHold(PlannedExercise planned) {
    double longest = Double.NaN;
    for (PlannedExercise.LoadedStep step : planned.steps()) {
      if (step.isHold()) {
        longest = Double.isNaN(longest) ? step.seconds() : Math.max(longest, step.seconds());
      }
    }
    return longest;
  }

  @Override
  public Message called() {
    return new WrittenText(grip().name());
  }

  @Override
  public LocalDate date() {
    return session.date;
  }
}
