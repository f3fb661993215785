package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Collection;
import java.util.Optional;

/**
 * The greatest load that an athlete can hold in one setup, by hold time, with intervals.
 *
 * <p>It is valid for times from 2 s to 10 min at most, depending on its form; outside its range it
 * throws instead of extrapolating. Best estimate, low and high end never rise with time. Immutable.
 */
public sealed interface ForceTime permits FadingForce, CriticalHold {

  /** The shortest valid hold of any form, in seconds. */
  double SHORTEST_SECONDS = 2;

  /** The longest valid hold of any form, in seconds. */
  double LONGEST_SECONDS = 600;

  /** The hold time of a reference maximum, in seconds. */
  double REFERENCE_SECONDS = 7;

  /** The published law behind the shape of a curve. */
  enum Form {
    /** {@link EnduranceLaw#ROHMERT}; from 2 s to 10 min. Used by plans. */
    ROHMERT,
    /** {@link EnduranceLaw#FREY_LAW_AVIN}; from 48 s to 10 min. */
    POWER_LAW,
    /** Critical force and the impulse above it, see {@link CriticalForce}; from 30 s to 10 min. */
    CRITICAL_FORCE
  }

  /**
   * Fits a curve to efforts in one setup.
   *
   * <p>Rohmert and power law: one effort scales the population's curve. Several efforts also
   * determine how steeply this athlete fades relative to the population, the exponent of the law's
   * share; it is shrunk towards 1 by a prior of spread {@link StrengthMap#FADE_SPREAD}, which two
   * or three efforts at clearly different times outweigh. Critical force: two or more efforts with
   * times that differ by a factor of at least {@value CriticalForce#TIMES_APART}; no population
   * value is published, so nothing is shrunk. Efforts outside the form's valid times are left out.
   * The time since an effort widens the interval and gives newer efforts more weight.
   *
   * @param form the law
   * @param efforts greatest loads by time, in any order
   * @return the curve, or empty if the efforts don't determine it
   */
  static Optional<ForceTime> fit(Form form, Collection<Effort> efforts) {
    return switch (form) {
      case ROHMERT -> FadingForce.fit(EnduranceLaw.ROHMERT, efforts);
      case POWER_LAW -> FadingForce.fit(EnduranceLaw.FREY_LAW_AVIN, efforts);
      case CRITICAL_FORCE -> CriticalHold.fit(efforts).map(hold -> hold);
    };
  }

  /** Returns whether a time in seconds lies between 2 s and 10 min. */
  static boolean inRange(double seconds) {
    return seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS;
  }

  /**
   * Returns the greatest load held for 7 s that corresponds to a maximal voluntary force by
   * Rohmert's law: slightly less.
   */
  static Load referenceOf(Load maximal) {
    return maximal.times(EnduranceLaw.ROHMERT.share(REFERENCE_SECONDS));
  }

  /** Returns the maximal voluntary force that corresponds to a greatest load held for 7 s. */
  static Load maximalOf(Load reference) {
    return reference.times(1 / EnduranceLaw.ROHMERT.share(REFERENCE_SECONDS));
  }

  /** Returns the law behind the curve. */
  Form form();

  /** Returns the shortest valid time, in seconds. */
  double shortestSeconds();

  /** Returns the longest valid time, in seconds. */
  double longestSeconds();

  /** Returns whether the curve is valid for a time in seconds. */
  default boolean isValidFor(double seconds) {
    return seconds >= shortestSeconds() && seconds <= longestSeconds();
  }

  /**
   * Returns the greatest load for a time.
   *
   * @param seconds a valid time
   * @throws IllegalArgumentException if the curve is not valid for the time
   */
  LoadEstimate load(double seconds);

  /**
   * Returns how long a load can be held by the estimate and both ends of the interval.
   *
   * @param load total load, above 0 kg
   * @throws IllegalArgumentException if the load is not above 0 kg
   */
  HoldTime time(Load load);

  /**
   * How long a load can be held, in seconds: 0 if the load is above that of the shortest valid
   * time, infinite if it can be held beyond the longest.
   *
   * @param low by the low end of the curve
   * @param best by the best estimate
   * @param high by the high end
   */
  record HoldTime(double low, double best, double high) {

    /**
     * Returns the remaining time in seconds after a hold, by the low end; negative if the hold is
     * too long.
     */
    public double reserveSeconds(double hold) {
      return low - hold;
    }
  }
}
