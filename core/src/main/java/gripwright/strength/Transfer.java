package gripwright.strength;

import java.util.Objects;

/**
 * How much work in one posture counts for another, from 0 to 1.
 *
 * <p>A sum over the fingers that both use, each weighted by its share of a whole-hand grip, times
 * the part of a gain that remains at their difference in angle. No study of the fingers was found:
 * this is extrapolated from studies of other joints, whose disagreement gives the range. Symmetric;
 * 1 for the same fingers in the same posture; non-increasing in every angle; 0 without a common
 * finger.
 *
 * <ul>
 *   <li>The value: normal in the angle with a spread of {@link #SPREAD_DEGREES}, after knee
 *       extensors trained at 65 deg, which gained 12 % there, 11 and 7 % at 15 deg to either side
 *       and 5 % at 30 deg (Lanza MB, Balshaw TG, Folland JP 2019, Eur J Appl Physiol
 *       119(11-12):2465-2476). It meets the mean at 15 deg and lies below the one value at 30.
 *   <li>The low end: nothing beyond 10 deg. Plantar flexors gained at the trained angle and at 5
 *       deg to either side only (Kitai TA, Sale DG 1989, Eur J Appl Physiol 58(7):744-748).
 *   <li>The high end: the full gain up to 20 deg, then as the value. Elbow extensors showed no
 *       difference up to 20 deg (Knapik JJ, Mawdsley RH, Ramos MU 1983, J Orthop Sports Phys Ther
 *       5(2):58-65).
 * </ul>
 *
 * @param share best estimate
 * @param low by the study with the narrowest window
 * @param high by the study with the widest
 */
public record Transfer(double share, double low, double high) {

  /** Spread of the normal curve in degrees; fitted by eye to the means at 15 deg. */
  public static final double SPREAD_DEGREES = 20;

  private static final double NARROW_FULL = 5;
  private static final double NARROW_NONE = 10;
  private static final double WIDE_FULL = 20;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless 0, low, share, high and 1 follow each other
   */
  public Transfer {
    if (!(0 <= low && low <= share && share <= high && high <= 1)) {
      throw new IllegalArgumentException(
          "not a transfer: " + share + " from " + low + " to " + high);
    }
  }

  /** Returns what work in one posture counts for another. */
  public static Transfer between(Posture trained, Posture asked) {
    Objects.requireNonNull(trained, "trained");
    Objects.requireNonNull(asked, "asked");
    return new Transfer(
        trained.likeness(asked, Transfer::left),
        trained.likeness(asked, Transfer::leftAtLeast),
        trained.likeness(asked, Transfer::leftAtMost));
  }

  /**
   * Returns whether it is extrapolated from studies of other joints: always, except from a posture
   * to itself.
   */
  public boolean extrapolated() {
    return low < 1;
  }

  private static double left(double degrees) {
    double deviate = degrees / SPREAD_DEGREES;
    return Math.exp(-deviate * deviate / 2);
  }

  private static double leftAtLeast(double degrees) {
    double ramp = (NARROW_NONE - degrees) / (NARROW_NONE - NARROW_FULL);
    return Math.min(left(degrees), Math.max(0, ramp));
  }

  private static double leftAtMost(double degrees) {
    return left(Math.max(0, degrees - WIDE_FULL));
  }
}
