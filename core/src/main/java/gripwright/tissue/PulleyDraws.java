package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a fitted grip asks of the A2 and A4 pulleys for 1 N on the hand, by draws of the model's
 * parameters, which are the same for every grip and hand of a draw. Hands are not drawn here: the
 * pose is that of the fit. Not thread-safe.
 */
public final class PulleyDraws {

  /** Places of the result: A2 and A4 of each finger, in the order of the hand. */
  public static final int PLACES = 2 * Finger.values().length;

  /** The least part of a whole hand that a finger is drawn with. */
  private static final double LEAST_PART = 0.01;

  private final List<FingerPulleys> pulleys = new ArrayList<>();
  private final Map<Finger, Double> capacities;

  /**
   * Prepares the draws of a fit.
   *
   * @param fit a fitted grip; one that the hand does not take is estimated in its nearest pose
   * @param model its fixed parameters; the pose is solved anew where its tendons are not those of
   *     the fit
   */
  public PulleyDraws(GripFit fit, TissueModel model) {
    HandPose pose = fit.under(model.tendons()).pose();
    capacities = FingerShares.ofWholeHand(pose);
    for (FingerPose finger : pose.fingers()) {
      pulleys.add(new FingerPulleys(pose.shape(), finger, model));
    }
  }

  /** Returns how many parameters a draw has. */
  public static int parameters() {
    return Variation.parameters();
  }

  /** Returns the names of the parameters, such as {@code dip-arm}. */
  public static List<String> names() {
    return Variation.names();
  }

  /** Returns the place of a pulley in the result. */
  public static int place(Finger finger, Pulley pulley) {
    return 2 * finger.ordinal() + pulley.ordinal();
  }

  /**
   * Returns the force on each pulley in N for 1 N on the hand; 0 for fingers that don't hold.
   *
   * @param deviates standard normal deviates, one for each parameter; all 0 gives the best estimate
   */
  public double[] forces(double[] deviates) {
    Variation draw = Variation.of(deviates);
    double[] forces = new double[PLACES];
    double sum = 0;
    for (FingerPulleys finger : pulleys) {
      sum += part(finger.finger(), draw);
    }
    for (FingerPulleys each : pulleys) {
      double share = part(each.finger(), draw) / sum;
      FingerPulleys.Forces on = each.forces(draw);
      forces[place(each.finger(), Pulley.A2)] = share * on.a2();
      forces[place(each.finger(), Pulley.A4)] = share * on.a4();
    }
    return forces;
  }

  private double part(Finger finger, Variation draw) {
    return Math.max(LEAST_PART, capacities.getOrDefault(finger, 0.0) + draw.share(finger));
  }
}
