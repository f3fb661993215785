package gripwright.plan;

import gripwright.grip.GripFit;
import gripwright.hand.Side;
import gripwright.tissue.FingerForces;
import gripwright.tissue.TissueModel;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reckons what fingers do in planned exercises. Each fitted grip is estimated once, however many
 * exercises use it. Not thread-safe.
 */
public final class FingerLedger {

  private final TissueModel model;
  private final IdentityHashMap<GripFit, List<FingerForces>> known = new IdentityHashMap<>();

  /** Starts a ledger with {@link TissueModel#STANDARD}. */
  public FingerLedger() {
    this(TissueModel.STANDARD);
  }

  /** Starts a ledger with another tissue model. */
  public FingerLedger(TissueModel model) {
    this.model = model;
  }

  /**
   * Returns the work of each finger that holds in an exercise, the left hand first. What a grip
   * that the hand does not take would ask of a finger is not known: NaN.
   */
  public List<FingerWork> of(PlannedExercise exercise) {
    double seconds = exercise.timeUnderLoadSeconds();
    double impulse = exercise.impulse() / exercise.fits().size();
    List<FingerWork> work = new ArrayList<>();
    for (Map.Entry<Side, GripFit> hand : exercise.fits().entrySet()) {
      double known = hand.getValue().reachable() ? impulse : Double.NaN;
      for (FingerForces forces : forces(hand.getValue())) {
        work.add(
            new FingerWork(
                hand.getKey(),
                forces.finger(),
                seconds,
                forces.fingertip() * known,
                forces.a2() * known,
                forces.a4() * known));
      }
    }
    return work;
  }

  /** Returns the work of each finger in some sessions together, the left hand first. */
  public List<FingerWork> of(List<DatedSession> sessions) {
    List<FingerWork> parts = new ArrayList<>();
    for (DatedSession session : sessions) {
      session.exercises().forEach(exercise -> parts.addAll(of(exercise)));
    }
    return FingerWork.together(parts);
  }

  private List<FingerForces> forces(GripFit fit) {
    return known.computeIfAbsent(fit, f -> FingerForces.of(f, model));
  }
}
