package gripwright.compare;

import gripwright.finding.WrittenReason;
import gripwright.quantity.Range;
import java.util.Objects;
import java.util.Optional;

/**
 * How a quantity is distributed among the persons of a cohort. Immutable.
 *
 * @param median half of the persons are below; above 0, in the base unit of the quantity
 * @param deviation standard deviation: as a share of the median where relative, otherwise in the
 *     unit of the median; 0 if all persons have the median
 * @param relative true for a lognormal distribution with this coefficient of variation, false for a
 *     normal one
 * @param source where the numbers come from, and how they are known; empty if nobody says
 */
public record Spread(double median, double deviation, boolean relative, Optional<String> source) {

  /** A deviation in the unit of the median is at most this share of it. */
  private static final double GREATEST = 1.0 / 3;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the median is not above 0, a relative deviation is outside
   *     0 to 100 %, or another one is below 0 or above a third of the median, where a normal
   *     distribution would reach 0
   */
  public Spread {
    Objects.requireNonNull(source, "source");
    source.ifPresent(text -> WrittenReason.check(text, "a source"));
    if (!(median > 0 && Double.isFinite(median))) {
      throw new IllegalArgumentException("median " + median + " is outside above 0");
    }
    if (relative) {
      Range.SPREAD.check(deviation);
    } else if (!possible(median, deviation)) {
      throw new IllegalArgumentException(
          "standard deviation " + deviation + " is outside 0 to a third of " + median);
    }
  }

  /** Returns whether a normal distribution has this standard deviation and no values below 0. */
  public static boolean possible(double median, double deviation) {
    return deviation >= 0 && deviation <= GREATEST * median;
  }

  /** Returns a lognormal distribution with a coefficient of variation, such as 0.15 for 15 %. */
  public static Spread relative(double median, double coefficient, String source) {
    return new Spread(median, coefficient, true, Optional.of(source));
  }

  /** Returns a normal distribution with a standard deviation in the unit of the median. */
  public static Spread absolute(double median, double deviation, String source) {
    return new Spread(median, deviation, false, Optional.of(source));
  }

  /**
   * Returns the value of a person.
   *
   * @param deviate how many standard deviations the person is above the median
   * @return above 0 where relative; at least a tenth of the median otherwise
   */
  public double at(double deviate) {
    return relative
        ? median * Math.exp(deviate * Math.sqrt(Math.log1p(deviation * deviation)))
        : Math.max(0.1 * median, median + deviate * deviation);
  }
}
