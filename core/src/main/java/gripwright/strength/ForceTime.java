package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Collection;
import java.util.Optional;

/**
 * The greatest load that an athlete holds in one setup by how long it is held, with intervals.
 *
 * <p>It serves times from 2 s to 10 min at most, by its form; outside its range it throws rather
 * than extrapolate. Best estimate, low and high end never rise with time. Immutable.
 */
public sealed interface ForceTime permits FadingForce, CriticalHold {

  /** The shortest hold any form serves, in seconds. */
  double SHORTEST_SECONDS = 2;

  /** The longest hold any form serves, in seconds. */
  double LONGEST_SECONDS = 600;

  /** The time that a reference maximum is held for, in seconds. */
  double REFERENCE_SECONDS = 7;

  /** Which published law gives the curve its shape. */
  enum Form {
    /** {@link EnduranceLaw#ROHMERT}; from 2 s to 10 min. What plans use. */
    ROHMERT,
    /** {@link EnduranceLaw#FREY_LAW_AVIN}; from 48 s to 10 min. */
    POWER_LAW,
    /** Critical force and the impulse above it, see {@link CriticalForce}; from 30 s to 10 min. */
    CRITICAL_FORCE
  }

  /**
   * Fits a curve to efforts in one setup.
   *
   * <p>Rohmert and power law: one effort scales the population's curve. More of them also tell how
   * steeply this athlete fades beside the population, the exponent of the law's share; it is shrunk
   * towards 1 by a prior of spread {@link StrengthMap#FADE_SPREAD}, which two or three efforts at
   * times well apart outweigh. Critical force: two efforts or more at times at least {@value
   * CriticalForce#TIMES_APART} times apart; no value of a population is published, so nothing is
   * shrunk. Efforts at times that the form does not serve are left out. The time since an effort
   * widens the interval and lets newer efforts count for more.
   *
   * @param form the law
   * @param efforts greatest loads by time, in any order
   * @return the curve, or empty if the efforts do not tell it
   */
  static Optional<ForceTime> fit(Form form, Collection<Effort> efforts) {
    return switch (form) {
      case ROHMERT -> FadingForce.fit(EnduranceLaw.ROHMERT, efforts);
      case POWER_LAW -> FadingForce.fit(EnduranceLaw.FREY_LAW_AVIN, efforts);
      case CRITICAL_FORCE -> CriticalHold.fit(efforts).map(hold -> hold);
    };
  }

  /** Tells whether a time in seconds lies between 2 s and 10 min. */
  static boolean inRange(double seconds) {
    return seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS;
  }

  /**
   * Returns the greatest load held for 7 s that goes with a maximal voluntary force, by Rohmert's
   * law: a little less than it.
   */
  static Load referenceOf(Load maximal) {
    return maximal.times(EnduranceLaw.ROHMERT.share(REFERENCE_SECONDS));
  }

  /** Returns the maximal voluntary force that goes with a greatest load held for 7 s. */
  static Load maximalOf(Load reference) {
    return reference.times(1 / EnduranceLaw.ROHMERT.share(REFERENCE_SECONDS));
  }

  /** Returns the law behind the curve. */
  Form form();

  /** Returns the shortest time it serves, in seconds. */
  double shortestSeconds();

  /** Returns the longest time it serves, in seconds. */
  double longestSeconds();

  /** Tells whether it serves a time. */
  default boolean serves(double seconds) {
    return seconds >= shortestSeconds() && seconds <= longestSeconds();
  }

  /**
   * Returns the greatest load for a time.
   *
   * @param seconds a time it serves
   * @throws IllegalArgumentException if it does not serve the time
   */
  LoadEstimate load(double seconds);

  /**
   * Returns how long a load can be held: where each of the three curves meets it.
   *
   * @param load total load, above 0 kg
   * @throws IllegalArgumentException if the load is not above 0 kg
   */
  HoldTime time(Load load);

  /**
   * How long a load can be held, in seconds: 0 if the load is more than the shortest time served
   * allows, infinite if it can be held beyond the longest.
   *
   * @param low by the low end of the curve
   * @param best by the best estimate
   * @param high by the high end
   */
  record HoldTime(double low, double best, double high) {

    /** Returns what is left after a hold, by the low end; negative if it falls short. */
    public double reserveSeconds(double hold) {
      return low - hold;
    }
  }
}
