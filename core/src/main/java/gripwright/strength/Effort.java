package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Comparator;

/**
 * The greatest load held for a time, which is also the longest time that the load was held.
 *
 * @param seconds how long, above 0
 * @param load total load, above 0 kg
 */
public record Effort(double seconds, Load load) {

  /** The order in which efforts are reckoned, so that the order they come in does not matter. */
  static final Comparator<Effort> ORDER =
      Comparator.comparingDouble(Effort::seconds)
          .thenComparingDouble(effort -> effort.load().kilograms());

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if time or load is not above 0
   */
  public Effort {
    if (!(seconds > 0 && Double.isFinite(seconds) && load.kilograms() > 0)) {
      throw new IllegalArgumentException("not an effort: " + load + " for " + seconds + " s");
    }
  }
}
