package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The instant one finger leaves the hold: what the others take over.
 *
 * <p>Total force is kept. The change has the least sum of squared change over capacity, a finger's
 * capacity being its share of a whole, equally bent hand, and no finger pulls the wrong way.
 * Statics only: what a jerk adds is outside.
 *
 * @param view what is assumed of the arm
 * @param leaving the finger that leaves
 * @param before force by finger, in N, the leaving one included
 * @param after force by remaining finger, in N; sums to as much as before
 * @param momentKept true if the moment about the wrist is as before; always false of {@link
 *     View#ARM_SWINGS}
 */
public record Slip(
    View view,
    Finger leaving,
    Map<Finger, Double> before,
    Map<Finger, Double> after,
    boolean momentKept) {

  /** What is assumed of the arm in the instant a finger leaves. No source was found for either. */
  public enum View {
    /**
     * The force keeps its moment about the wrist, towards thumb and little finger: the arm stays
     * where it is. Where the remaining fingers can't keep the moment, the one nearest to doing so
     * takes all the force.
     */
    MOMENT_KEPT,
    /**
     * The arm is free to swing under the new centre of force, so the moment is given up and the
     * fingers that are left share the load by capacity.
     */
    ARM_SWINGS
  }

  private static final double EPSILON = 1e-9;

  /** Copies the forces. */
  public Slip {
    before = Collections.unmodifiableMap(new EnumMap<>(before));
    after = Collections.unmodifiableMap(new EnumMap<>(after));
  }

  /**
   * Works out what the others take over.
   *
   * @param view what is assumed of the arm
   * @param shape the hand, for the places of the fingers
   * @param forces by finger that holds, in N, each 0 or more
   * @param capacity what each finger can do beside the others, above 0, as of {@link
   *     FingerShares#ofWholeHand}
   * @param leaving one of those that hold
   * @throws IllegalArgumentException if the finger does not hold, no other one does, or a force is
   *     negative or no number
   */
  public static Slip of(
      View view,
      HandShape shape,
      Map<Finger, Double> forces,
      Map<Finger, Double> capacity,
      Finger leaving) {
    if (!forces.containsKey(leaving) || forces.size() < 2) {
      throw new IllegalArgumentException(
          "no slip of " + leaving + " with " + forces.keySet() + " on the hold");
    }
    double total = 0;
    double moment = 0;
    for (Map.Entry<Finger, Double> force : forces.entrySet()) {
      if (!(force.getValue() >= 0 && Double.isFinite(force.getValue()))) {
        throw new IllegalArgumentException("not a force: " + force.getValue() + " N");
      }
      total += force.getValue();
      moment += force.getValue() * shape.knuckleAcross(force.getKey());
    }
    List<Part> parts = new ArrayList<>();
    for (Map.Entry<Finger, Double> force : new EnumMap<>(forces).entrySet()) {
      Finger finger = force.getKey();
      if (finger != leaving) {
        parts.add(
            new Part(
                finger,
                force.getValue(),
                shape.knuckleAcross(finger),
                capacity.getOrDefault(finger, 0.0)));
      }
    }
    if (view == View.ARM_SWINGS) {
      return new Slip(view, leaving, forces, byCapacity(parts, total), false);
    }
    double[] loads = best(parts, total, moment);
    boolean kept = loads.length > 0;
    Map<Finger, Double> after = new EnumMap<>(Finger.class);
    Part outermost = nearest(parts, total == 0 ? 0 : moment / total);
    for (int i = 0; i < parts.size(); i++) {
      double all = parts.get(i).equals(outermost) ? total : 0;
      after.put(parts.get(i).finger(), kept ? loads[i] : all);
    }
    return new Slip(view, leaving, forces, after, kept);
  }

  /** The least change that keeps only the total: every finger takes over by its capacity. */
  private static Map<Finger, Double> byCapacity(List<Part> parts, double total) {
    double capacity = parts.stream().mapToDouble(Part::capacity).sum();
    double lost = total - parts.stream().mapToDouble(Part::load).sum();
    Map<Finger, Double> after = new EnumMap<>(Finger.class);
    for (Part part : parts) {
      after.put(part.finger(), part.load() + lost * part.capacity() / capacity);
    }
    return after;
  }

  /** A remaining finger: load before, place across the hand in mm, capacity. */
  private record Part(Finger finger, double load, double across, double capacity) {}

  private static Part nearest(List<Part> parts, double place) {
    Part nearest = parts.get(0);
    for (Part part : parts) {
      if (Math.abs(part.across() - place) < Math.abs(nearest.across() - place)) {
        nearest = part;
      }
    }
    return nearest;
  }

  /**
   * Tries every set of fingers that go to zero. The optimum of a convex problem is the best among
   * the feasible optima on the faces, and with three fingers there are few.
   */
  private static double[] best(List<Part> parts, double total, double moment) {
    double[] best = {};
    double bestCost = Double.POSITIVE_INFINITY;
    for (int held = 1; held < 1 << parts.size(); held++) {
      double[] loads = onFace(parts, held, total, moment);
      double cost = cost(parts, loads);
      if (cost < bestCost) {
        bestCost = cost;
        best = loads;
      }
    }
    return best;
  }

  private static double cost(List<Part> parts, double[] loads) {
    if (loads.length == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double cost = 0;
    for (int i = 0; i < loads.length; i++) {
      double change = loads[i] - parts.get(i).load();
      cost += change * change / parts.get(i).capacity();
    }
    return cost;
  }

  /** Loads with only some fingers holding; empty if they can't keep force and moment. */
  private static double[] onFace(List<Part> parts, int held, double total, double moment) {
    double c = 0;
    double cx = 0;
    double cxx = 0;
    double force = total;
    double turn = moment;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      if ((held & 1 << i) != 0) {
        c += part.capacity();
        cx += part.capacity() * part.across();
        cxx += part.capacity() * part.across() * part.across();
        force -= part.load();
        turn -= part.load() * part.across();
      }
    }
    double determinant = c * cxx - cx * cx;
    boolean single = Integer.bitCount(held) == 1;
    double lambda = single ? force / c : (force * cxx - turn * cx) / determinant;
    double mu = single ? 0 : (turn * c - force * cx) / determinant;
    double[] loads = new double[parts.size()];
    double left = moment;
    double tolerance = EPSILON * Math.max(1, total);
    for (int i = 0; i < loads.length; i++) {
      Part part = parts.get(i);
      if ((held & 1 << i) != 0) {
        loads[i] = part.load() + part.capacity() * (lambda + mu * part.across());
        if (!(loads[i] >= -tolerance)) {
          return new double[0];
        }
        loads[i] = Math.max(0, loads[i]);
        left -= loads[i] * part.across();
      }
    }
    return Math.abs(left) <= tolerance * 1000 ? loads : new double[0];
  }

  /** Returns whether the remaining fingers can't keep a moment that the view has them keep. */
  public boolean tilts() {
    return view == View.MOMENT_KEPT && !momentKept;
  }

  /** Returns a remaining finger's load after by its load before: the slip ratio. */
  public double ratio(Finger finger) {
    Double later = after.get(finger);
    Double earlier = before.get(finger);
    if (later == null || earlier == null) {
      throw new IllegalArgumentException(finger + " does not remain on the hold");
    }
    return earlier == 0 ? (later == 0 ? 1 : Double.POSITIVE_INFINITY) : later / earlier;
  }

  /** Returns the remaining finger whose load rises most, in N. */
  public Finger mostRaised() {
    Finger most = after.keySet().iterator().next();
    for (Finger finger : after.keySet()) {
      if (rise(finger) > rise(most)) {
        most = finger;
      }
    }
    return most;
  }

  private double rise(Finger finger) {
    return after.getOrDefault(finger, 0.0) - before.getOrDefault(finger, 0.0);
  }
}
