package gripwright.strength;

import java.time.LocalDate;
import java.util.Objects;
import org.hipparchus.special.Erf;

/**
 * How much stronger an athlete became in a setup between two days, by all tests: a normal
 * distribution of the change in the logarithm of load.
 *
 * @param from the earlier day
 * @param to the later day
 * @param mean best estimate of the change, in the logarithm of load
 * @param spread its standard deviation, above 0
 */
public record StrengthChange(LocalDate from, LocalDate to, double mean, double spread) {

  /**
   * From this probability on a change is called real: a rise is then reported without one in fewer
   * than 5 of 100 cases. Common practice.
   */
  public static final double LIKELY = 0.95;

  /** Distance of the 95th percentile above the mean of a standard normal distribution. */
  private static final double HIGH_DEVIATE = 1.6448536269514722;

  private static final double PER_CENT = 100;

  /** What a change means. */
  public enum Verdict {
    /** The athlete became stronger, with a probability of at least {@link #LIKELY}. */
    HIGHER,
    /** Neither is that likely. */
    OPEN,
    /** The athlete became weaker, with a probability of at least {@link #LIKELY}. */
    LOWER
  }

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if the days are not in order or the spread is not above 0
   */
  public StrengthChange {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (!(from.isBefore(to) && Double.isFinite(mean) && spread > 0 && Double.isFinite(spread))) {
      throw new IllegalArgumentException(
          "not a change: " + from + " to " + to + ", " + mean + ", spread " + spread);
    }
  }

  /** Returns the best estimate in per cent of the earlier strength. */
  public double percent() {
    return percent(mean);
  }

  /** Returns the 5th percentile in per cent. */
  public double lowPercent() {
    return percent(mean - HIGH_DEVIATE * spread);
  }

  /** Returns the 95th percentile in per cent. */
  public double highPercent() {
    return percent(mean + HIGH_DEVIATE * spread);
  }

  private static double percent(double logarithm) {
    return PER_CENT * Math.expm1(logarithm);
  }

  /** Returns the probability that the athlete became stronger. */
  public double probabilityOfRise() {
    return Erf.erfc(-mean / spread / Math.sqrt(2)) / 2;
  }

  /** Returns the probability that the change has the direction of the best estimate. */
  public double probability() {
    return Math.max(probabilityOfRise(), 1 - probabilityOfRise());
  }

  /** Returns what the change means. */
  public Verdict verdict() {
    if (probability() < LIKELY) {
      return Verdict.OPEN;
    }
    return mean > 0 ? Verdict.HIGHER : Verdict.LOWER;
  }
}
