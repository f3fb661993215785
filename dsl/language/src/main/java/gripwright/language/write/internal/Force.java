package gripwright.language.write.internal;

import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Forces in N that read back as the same loads. */
final class Force {

  /** Places after the point that are tried, fewest first; forces up to 9,807 N have four before. */
  private static final int MOST_PLACES = 13;

  private Force() {}

  /** Returns whether there is such a force. */
  static boolean isExact(Load load) {
    return load.kilograms() > 0 && readsBack(shortest(load), load);
  }

  /** Returns the force with the fewest digits that reads back as a load. */
  static String newtons(Load load) {
    return Written.number(shortest(load));
  }

  private static double shortest(Load load) {
    BigDecimal exact = BigDecimal.valueOf(load.newtons());
    for (int places = 0; places < MOST_PLACES; places++) {
      double rounded = exact.setScale(places, RoundingMode.HALF_EVEN).doubleValue();
      if (readsBack(rounded, load)) {
        return rounded;
      }
    }
    return load.newtons();
  }

  private static boolean readsBack(double newtons, Load load) {
    return newtons / Unit.NEWTONS_PER_KILOGRAM == load.kilograms();
  }
}
