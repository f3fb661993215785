package gripwright.plan;

import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Side;
import gripwright.tissue.Pulley;
import gripwright.tissue.TissueLoad;
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
  private final IdentityHashMap<GripFit, TissueLoad> known = new IdentityHashMap<>();

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
      TissueLoad newton = ofOneNewton(hand.getValue());
      for (FingerPose pose : hand.getValue().pose().fingers()) {
        Finger finger = pose.finger();
        work.add(
            new FingerWork(
                hand.getKey(),
                finger,
                seconds,
                newton.fingertip(finger) * known,
                newton.force(finger, Pulley.A2) * known,
                newton.force(finger, Pulley.A4) * known));
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

  /** Forces go in proportion to the load, so that those of 1 N serve every load. */
  private TissueLoad ofOneNewton(GripFit fit) {
    return known.computeIfAbsent(fit, f -> TissueLoad.of(f, 1, model));
  }
}
