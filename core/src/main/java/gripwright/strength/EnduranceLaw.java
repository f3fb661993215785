package gripwright.strength;

/**
 * A published law for how long a share of maximal voluntary force can be held without a rest.
 *
 * <p>The laws disagree: at 80 % one gives 23 s and the other 48 s. Both describe populations, not
 * climbers' fingers. Each is valid for a range of times and throws outside it instead of
 * extrapolating.
 */
public enum EnduranceLaw {
  /**
   * Endurance in seconds {@code -90 + 126/f - 36/f^2 + 6/f^3} at a share {@code f}: Rohmert W 1960,
   * Int Z angew Physiol 18:123-164, in the polynomial form tabulated by El Ahrache K et al. 2006,
   * Int J Ind Ergon 36:1-14 (from memory). Valid from 2 s to 10 min. It gives 6 s at full force, so
   * that shorter holds allow no more than full force; at and below 15 % endurance counts as
   * unlimited. It gives the shorter times of the two, and plans use it.
   */
  ROHMERT(ForceTime.SHORTEST_SECONDS, 1) {
    @Override
    double lasting(double share) {
      return share <= UNLIMITED_SHARE ? Double.POSITIVE_INFINITY : rohmert(share);
    }

    @Override
    double allowing(double seconds) {
      if (seconds <= rohmert(1)) {
        return 1;
      }
      // With v = 1/f - 2 the polynomial is 6 v^3 + 54 v + 66; its only root follows from hyperbolic
      // sines.
      double scale = 2 * Math.sqrt(3);
      double sine = (seconds - 66) / (18 * scale);
      double v = scale * Math.sinh(Math.log(sine + Math.sqrt(sine * sine + 1)) / 3);
      return 1 / (v + 2);
    }
  },
  /**
   * Endurance in seconds {@code 33.55 f^-1.61} for hand and grip at a share {@code f}: Frey Law LA,
   * Avin KG 2010, Ergonomics 53(1):109-129, 194 publications (coefficients from memory). It gives
   * 34 s at full force, so it is valid at 80 % and below only: from 48 s to 10 min.
   */
  FREY_LAW_AVIN(EnduranceLaw.POWER_SECONDS * Math.pow(0.8, EnduranceLaw.POWER_EXPONENT), 0.8) {
    @Override
    double lasting(double share) {
      return POWER_SECONDS * Math.pow(share, POWER_EXPONENT);
    }

    @Override
    double allowing(double seconds) {
      return Math.pow(seconds / POWER_SECONDS, 1 / POWER_EXPONENT);
    }
  };

  /** The share at and below which endurance counts as unlimited in Rohmert's law. */
  public static final double UNLIMITED_SHARE = 0.15;

  private static final double POWER_SECONDS = 33.55;
  private static final double POWER_EXPONENT = -1.61;
  private static final double ACCURACY = 1e-12;

  private final double shortest;
  private final double greatestShare;

  EnduranceLaw(double shortest, double greatestShare) {
    this.shortest = shortest;
    this.greatestShare = greatestShare;
  }

  abstract double lasting(double share);

  abstract double allowing(double seconds);

  private static double rohmert(double share) {
    return -90 + 126 / share - 36 / (share * share) + 6 / (share * share * share);
  }

  /** Returns the shortest valid time in seconds. */
  public double shortestSeconds() {
    return shortest;
  }

  /** Returns the longest valid time in seconds. */
  public double longestSeconds() {
    return ForceTime.LONGEST_SECONDS;
  }

  /** Returns the greatest valid share of maximal voluntary force, at most 1. */
  public double greatestShare() {
    return greatestShare;
  }

  /** Returns whether the law is valid for a time in seconds. */
  public boolean isValidFor(double seconds) {
    return seconds >= shortest && seconds <= longestSeconds();
  }

  /**
   * Returns how long a share of maximal voluntary force can be held.
   *
   * @param share above 0 and at most {@link #greatestShare()}
   * @return seconds; infinite beyond 10 min, where the law no longer distinguishes times
   * @throws IllegalArgumentException if the share is out of range
   */
  public double seconds(double share) {
    if (!(share > 0 && share <= greatestShare)) {
      throw new IllegalArgumentException("not a share up to " + greatestShare + ": " + share);
    }
    double seconds = lasting(share);
    return seconds > longestSeconds() + ACCURACY ? Double.POSITIVE_INFINITY : seconds;
  }

  /**
   * Returns the greatest share of maximal voluntary force that can be held for a time.
   *
   * @param seconds a time for which the law is valid
   * @return above 0.15 and at most {@link #greatestShare()}; non-increasing in time
   * @throws IllegalArgumentException if the time is out of range
   */
  public double share(double seconds) {
    if (!isValidFor(seconds)) {
      throw new IllegalArgumentException(
          "not a time from " + shortest + " s to 10 min: " + seconds + " s");
    }
    return Math.min(greatestShare, allowing(seconds));
  }
}
