package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The draws that a fitted grip's intervals rest on: of the model's parameters, and with each of
 * them one of the hands that the fit's own spread draws, over and over.
 */
final class Draws {

  /** The least part of a whole hand that a finger is drawn with. */
  private static final double LEAST_PART = 0.01;

  private final Variation[] variations;
  private final List<HandPose> poses;
  private final List<Map<Finger, Double>> capacities = new ArrayList<>();
  private final List<Map<Finger, Double>> shares = new ArrayList<>();

  Draws(GripFit fit, TissueModel model) {
    variations = Variation.draws(model.stream());
    poses = fit.spread().poses();
    for (int i = 0; i < variations.length; i++) {
      Variation variation = variations[i];
      Map<Finger, Double> capacity =
          new EnumMap<>(FingerShares.ofWholeHand(poses.get(i % poses.size())));
      capacity.replaceAll((finger, part) -> Math.max(LEAST_PART, part + variation.share(finger)));
      capacities.add(capacity);
      shares.add(shares(fit.grip().fingers().fingers(), capacity));
    }
  }

  private static Map<Finger, Double> shares(List<Finger> holding, Map<Finger, Double> capacity) {
    double sum = 0;
    for (Finger finger : holding) {
      sum += capacity.getOrDefault(finger, 0.0);
    }
    Map<Finger, Double> shares = new EnumMap<>(Finger.class);
    for (Finger finger : holding) {
      shares.put(finger, capacity.getOrDefault(finger, 0.0) / sum);
    }
    return shares;
  }

  Variation[] variations() {
    return variations;
  }

  HandShape shape(int draw) {
    return poses.get(draw % poses.size()).shape();
  }

  /** Returns what each of the four fingers can do beside the others. */
  Map<Finger, Double> capacity(int draw) {
    return capacities.get(draw);
  }

  /** Returns the shares of the fingers that hold; they sum to 1. */
  Map<Finger, Double> shares(int draw) {
    return shares.get(draw);
  }

  /** Returns a finger's share in every draw. */
  double[] shares(Finger finger) {
    return shares.stream().mapToDouble(each -> each.getOrDefault(finger, 0.0)).toArray();
  }

  /** Returns the middle joints' flexions in degrees. */
  Map<Finger, Double> flexions(int draw) {
    Map<Finger, Double> flexions = new EnumMap<>(Finger.class);
    for (FingerPose finger : poses.get(draw % poses.size()).fingers()) {
      flexions.put(finger.finger(), finger.pip().degrees());
    }
    return flexions;
  }

  /** Returns a finger in the pose of each hand drawn. */
  FingerPulleys[] pulleys(Finger finger, TissueModel model) {
    return poses.stream()
        .flatMap(
            pose ->
                pose.finger(finger).stream()
                    .map(found -> new FingerPulleys(pose.shape(), found, model)))
        .toArray(FingerPulleys[]::new);
  }
}
