package gripwright.strength;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How long a share of the greatest force can be held, and the share that a time allows.
 *
 * <p>The curve is Rohmert's: endurance time in seconds {@code -90 + 126/f - 36/f^2 + 6/f^3} for a
 * share {@code f} of maximal voluntary force. Source: Rohmert W 1960, Int Z angew Physiol
 * 18:123-164, in the polynomial form tabulated by El Ahrache K et al. 2006, Int J Ind Ergon 36:1-14
 * (from memory). It serves from 2 s to 10 min; outside that range the methods throw rather than
 * extrapolate. The curve reaches 6 s at full force, so shorter holds allow no more than full force.
 */
public final class ForceTime {

  /** The shortest hold the curve serves, in seconds. */
  public static final double SHORTEST_SECONDS = 2;

  /** The longest hold the curve serves, in seconds. */
  public static final double LONGEST_SECONDS = 600;

  /** The time that a reference maximum is held for, in seconds. */
  public static final double REFERENCE_SECONDS = 7;

  /** The share of maximal force at and below which endurance is taken as unlimited. */
  public static final double UNLIMITED_SHARE = 0.15;

  private static final double ACCURACY = 1e-12;

  /** Solved once: every prescribed hold asks for it. */
  private static final double REFERENCE_SHARE = solved(REFERENCE_SECONDS);

  private ForceTime() {}

  /** Tells whether a time in seconds lies in the range the curve serves. */
  public static boolean serves(double seconds) {
    return seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS;
  }

  /**
   * Returns the endurance time at a share of maximal voluntary force.
   *
   * @param share above 0 and at most 1
   * @return seconds, 6 or more; infinite at and below {@link #UNLIMITED_SHARE}
   * @throws IllegalArgumentException if the share is out of range
   */
  public static double enduranceSeconds(double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("not a share of the maximum: " + share);
    }
    return share <= UNLIMITED_SHARE ? Double.POSITIVE_INFINITY : rohmert(share);
  }

  private static double rohmert(double share) {
    return -90 + 126 / share - 36 / (share * share) + 6 / (share * share * share);
  }

  /**
   * Returns the greatest share of maximal voluntary force that can be held for a time.
   *
   * @param seconds from 2 s to 10 min
   * @return above 0.15 and at most 1; non-increasing in time
   * @throws IllegalArgumentException if the time is out of range
   */
  public static double share(double seconds) {
    if (!serves(seconds)) {
      throw new IllegalArgumentException("not a time between 2 s and 10 min: " + seconds + " s");
    }
    return seconds == REFERENCE_SECONDS ? REFERENCE_SHARE : solved(seconds);
  }

  private static double solved(double seconds) {
    if (seconds <= rohmert(1)) {
      return 1;
    }
    UnivariateFunction difference = share -> rohmert(share) - seconds;
    return new BracketingNthOrderBrentSolver(ACCURACY, 5)
        .solve(200, difference, UNLIMITED_SHARE, 1);
  }

  /**
   * Returns what a maximum held for 7 s is multiplied by for another time.
   *
   * @param seconds from 2 s to 10 min
   * @return 1 at 7 s; non-increasing in time
   * @throws IllegalArgumentException if the time is out of range
   */
  public static double ofReference(double seconds) {
    return share(seconds) / REFERENCE_SHARE;
  }

  /**
   * Returns how long a share of the 7 s maximum can be held.
   *
   * @param ofReference above 0; 1 gives 7 s
   * @return seconds; infinite for light loads; 0 where the load is above maximal force
   */
  public static double secondsAt(double ofReference) {
    double share = ofReference * REFERENCE_SHARE;
    return share > 1 + ACCURACY ? 0 : enduranceSeconds(Math.min(1, share));
  }
}
