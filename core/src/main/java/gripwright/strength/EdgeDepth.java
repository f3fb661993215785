package gripwright.strength;

import gripwright.athlete.Equipment;
import gripwright.quantity.Length;
import java.util.Objects;

/**
 * The effect of edge depth on the greatest load.
 *
 * <p>Load is proportional to a power of depth: {@link #FLATTEST} with the middle joints at 90 deg
 * or more, {@link #STEEPEST} at 45 deg or less, linear in between. Beyond 40 mm it no longer rises.
 * The powers are the library's own choice. Published data limit them: over 10 to 40 mm and three
 * grips the means rise with depth by at most 575.7 / 350.8, a power of 0.36, and the shape depends
 * on the grip (Amca AM et al. 2012, J Sports Sci 30(7):669-677); open hand is slightly stronger
 * than half crimp on 23 mm (Current Issues in Sport Science 2025, 85 climbers). Below 10 mm the
 * power is extrapolated, with a spread that grows towards shallower edges. At or below 4.3 mm
 * nothing is estimated from another edge, because force there does not correlate with that on 12.5
 * mm (Bourne R et al. 2011, J Appl Biomech 27(1):40-50).
 */
public final class EdgeDepth {

  /** Edges at or below this depth, in millimetres, are not estimated from others. */
  public static final double SHALLOWEST_ESTIMATED = 4.3;

  /** The power with the middle joints at 90 deg or more. */
  public static final double FLATTEST = 0.20;

  /** The power with the middle joints at 45 deg or less. */
  public static final double STEEPEST = 0.30;

  /** The depth at which the curves of all postures meet. */
  static final Length PIVOT = Length.ofMillimetres(20);

  /** Depth in millimetres below which no load is published. */
  public static final double SHALLOWEST_PUBLISHED = 10;

  /**
   * Spread of the power of depth below 10 mm: as large as the power itself. The library's own
   * choice, since nothing is published there.
   */
  public static final double SHALLOW_SPREAD = 0.25;

  private static final double DEEPEST = 40;
  private static final double OPEN_FLEXION = 45;
  private static final double BENT_FLEXION = 90;
  private static final double NOTHING = 0.005;

  private EdgeDepth() {}

  /** Returns whether two edges count as one: {@link Equipment#isSameEdge at most 0.2 mm} apart. */
  public static boolean same(Length one, Length other) {
    return Equipment.isSameEdge(one, other);
  }

  /** Returns whether the load on one edge can be estimated from another. */
  public static boolean canEstimate(Length from, Length to) {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    return Math.abs(from.millimetres() - to.millimetres()) < NOTHING
        || Math.min(from.millimetres(), to.millimetres()) > SHALLOWEST_ESTIMATED;
  }

  /**
   * Returns the power of depth.
   *
   * @param posture posture of the fingers on an edge of 20 mm
   */
  public static double power(Posture posture) {
    double bent = (posture.meanFlexion() - OPEN_FLEXION) / (BENT_FLEXION - OPEN_FLEXION);
    return STEEPEST - (STEEPEST - FLATTEST) * Math.max(0, Math.min(1, bent));
  }

  /**
   * Returns the factor that converts a load on one edge to another.
   *
   * @param from depth of the edge of the known load
   * @param to depth of the other edge
   * @param posture posture of the fingers on an edge of 20 mm
   * @return above 0; non-decreasing in the depth of the other edge
   * @throws IllegalArgumentException if one can't be estimated from the other
   */
  public static double factor(Length from, Length to, Posture posture) {
    if (!canEstimate(from, to)) {
      throw new IllegalArgumentException(
          "edges at or below " + SHALLOWEST_ESTIMATED + " mm are not estimated from others");
    }
    double power = power(posture);
    return Math.exp(logFactor(to, power) - logFactor(from, power));
  }

  /** Returns the spread that a shallow edge adds to the logarithm of load; 0 from 10 mm on. */
  static double doubt(Length edge) {
    return SHALLOW_SPREAD * Math.max(0, Math.log(SHALLOWEST_PUBLISHED / edge.millimetres()));
  }

  /** Returns the logarithm of the load on an edge relative to one of 20 mm. */
  static double logFactor(Length edge, double power) {
    return power * Math.log(Math.min(edge.millimetres(), DEEPEST) / PIVOT.millimetres());
  }
}
