package gripwright.tissue;

import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Side;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Calculates what fingers do in held grips. Each fitted grip is estimated once, however many
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
   * Returns the work of each finger that holds, the left hand first. What a grip that the hand does
   * not take would ask of a finger is not known: NaN.
   *
   * @param fits the fit of each hand that holds
   * @param seconds how long they hold
   * @param impulse on the hands together, in N s
   */
  public List<FingerWork> of(Map<Side, GripFit> fits, double seconds, double impulse) {
    double ofOneHand = impulse / fits.size();
    List<FingerWork> work = new ArrayList<>();
    for (Map.Entry<Side, GripFit> hand : fits.entrySet()) {
      double known = hand.getValue().reachable() ? ofOneHand : Double.NaN;
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

  /** Forces go in proportion to the load, so that those of 1 N serve every load. */
  private TissueLoad ofOneNewton(GripFit fit) {
    return known.computeIfAbsent(fit, f -> TissueLoad.of(f, 1, model));
  }
}
