package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Comparator;
import java.util.Objects;

/**
 * The greatest load held for a time, which is also the longest time that the load was held.
 *
 * @param seconds how long, above 0
 * @param load total load, above 0 kg
 * @param drift the possible change in strength since, as a standard deviation of the load's
 *     logarithm, 0 or more; it is the same for all efforts of one day
 */
public record Effort(double seconds, Load load, double drift) {

  /** The order of efforts in calculations, so that their input order does not matter. */
  static final Comparator<Effort> ORDER =
      Comparator.comparingDouble(Effort::seconds)
          .thenComparingDouble(effort -> effort.load().kilograms())
          .thenComparingDouble(Effort::drift);

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if time or load is not above 0 or drift is below 0
   */
  public Effort {
    Objects.requireNonNull(load, "load");
    if (!(seconds > 0
        && Double.isFinite(seconds)
        && load.kilograms() > 0
        && drift >= 0
        && Double.isFinite(drift))) {
      throw new IllegalArgumentException("not an effort: " + load + " for " + seconds + " s");
    }
  }

  /**
   * Creates an effort of today.
   *
   * @param seconds how long, above 0
   * @param load total load, above 0 kg
   * @throws IllegalArgumentException if time or load is not above 0
   */
  public Effort(double seconds, Load load) {
    this(seconds, load, 0);
  }

  /**
   * Returns this effort as it counts on a later day.
   *
   * @param since see {@link StrengthMap#drift}
   */
  public Effort aged(double since) {
    return new Effort(seconds, load, since);
  }

  /** Returns the variance that two efforts share through the time since: that of the newer one. */
  double driftSharedWith(Effort other) {
    double shared = Math.min(drift, other.drift);
    return shared * shared;
  }
}
