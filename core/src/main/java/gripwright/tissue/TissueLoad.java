package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Estimate of what a fitted grip asks of tendons and pulleys at a load. Immutable.
 *
 * <p>Intervals hold 90 % of {@value Variation#DRAWS} seeded draws over the spread of the parameters
 * (sampling, not first order); the same fit, load and model give the same numbers. Valid for a hand
 * that hangs still with the pads flat on one edge; jumps, pockets that pinch and a thumb on top are
 * outside.
 */
public final class TissueLoad {

  private final GripFit fit;
  private final double newtons;
  private final TissueModel model;
  private final List<FingerLoad> fingers;

  private TissueLoad(GripFit fit, double newtons, TissueModel model, List<FingerLoad> fingers) {
    this.fit = fit;
    this.newtons = newtons;
    this.model = model;
    this.fingers = List.copyOf(fingers);
  }

  /** Estimates with {@link TissueModel#STANDARD}. */
  public static TissueLoad of(GripFit fit, double newtons) {
    return of(fit, newtons, TissueModel.STANDARD);
  }

  /**
   * Estimates the load on tissue.
   *
   * @param fit a fitted grip; one that the hand does not take is estimated in its nearest pose
   * @param newtons what this one hand holds, in N, 0 or more
   * @param model named parameters
   * @throws IllegalArgumentException if the load is negative or not finite
   */
  public static TissueLoad of(GripFit fit, double newtons, TissueModel model) {
    if (!(newtons >= 0 && Double.isFinite(newtons))) {
      throw new IllegalArgumentException("not a load on a hand: " + newtons + " N");
    }
    Variation[] draws = Variation.draws(model.seed());
    Map<Finger, Double> shares = FingerShares.of(fit);
    Map<Finger, double[]> drawnShares = drawnShares(shares, draws);
    List<FingerLoad> loads = new ArrayList<>();
    for (FingerPose pose : fit.pose().fingers()) {
      FingerStatics statics = new FingerStatics(fit.pose().shape(), pose, model);
      loads.add(
          FingerLoad.of(
              statics,
              shares.getOrDefault(pose.finger(), 0.0),
              newtons,
              drawnShares.getOrDefault(pose.finger(), new double[draws.length]),
              draws));
    }
    return new TissueLoad(fit, newtons, model, loads);
  }

  private static Map<Finger, double[]> drawnShares(Map<Finger, Double> shares, Variation[] draws) {
    Map<Finger, double[]> drawn = new EnumMap<>(Finger.class);
    shares.keySet().forEach(finger -> drawn.put(finger, new double[draws.length]));
    for (int i = 0; i < draws.length; i++) {
      double sum = 0;
      for (Map.Entry<Finger, Double> share : shares.entrySet()) {
        double value =
            shares.size() == 1
                ? 1
                : Math.max(0.01, share.getValue() + draws[i].share(share.getKey()));
        drawn.getOrDefault(share.getKey(), new double[draws.length])[i] = value;
        sum += value;
      }
      for (double[] values : drawn.values()) {
        values[i] /= sum;
      }
    }
    return drawn;
  }

  /** Returns the fitted grip. */
  public GripFit fit() {
    return fit;
  }

  /** Returns what this hand holds, in N. */
  public double newtons() {
    return newtons;
  }

  /** Returns the parameters. */
  public TissueModel model() {
    return model;
  }

  /** Returns the estimate of each finger that holds, in the order of the hand. */
  public List<FingerLoad> fingers() {
    return fingers;
  }

  /** Returns the estimate of a finger; empty if it does not hold. */
  public Optional<FingerLoad> finger(Finger finger) {
    return fingers.stream().filter(load -> load.finger() == finger).findFirst();
  }

  /**
   * Returns what happens in the instant a finger leaves the hold.
   *
   * @throws IllegalArgumentException if the finger does not hold, or no other one does
   */
  public Slip slip(Finger leaving) {
    Map<Finger, Double> forces = new EnumMap<>(Finger.class);
    fingers.forEach(load -> forces.put(load.finger(), load.fingertip().value()));
    return Slip.of(fit.pose().shape(), forces, leaving);
  }

  /** Returns a slip for every finger that holds; none for a single finger. */
  public List<Slip> slips() {
    return fingers.size() == 1
        ? List.of()
        : fingers.stream().map(load -> slip(load.finger())).toList();
  }

  /**
   * Returns the estimate of every remaining finger and its pulleys in the instant one has left, the
   * pose being as before.
   */
  public List<FingerLoad> after(Slip slip) {
    return fingers.stream()
        .filter(load -> load.finger() != slip.leaving())
        .map(load -> load.times(slip.ratio(load.finger())))
        .toList();
  }
}
