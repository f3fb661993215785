package gripwright.tools.command;

import gripwright.quantity.Numbers;
import java.util.Map;

/** The units that a starter project is written in. */
enum StarterUnits {
  /** Kilograms, millimetres and French grades. */
  METRIC("kg") {
    @Override
    String mass(double kilograms) {
      return Math.round(kilograms) + " kg";
    }

    @Override
    String handLength(int millimetres) {
      return millimetres + " mm";
    }

    @Override
    String ability(String french, String yds) {
      return "french " + french;
    }

    @Override
    Map<String, String> equipment() {
      return Map.of(
          "added", "1.25 kg steps to 60 kg",
          "assist", "1 kg steps to 60 kg",
          "other-length", "Inches are known too, as in `0.75 inch`.");
    }
  },
  /** Pounds, inches for the hand, millimetres for edges as on most boards, and YDS grades. */
  POUNDS("lb") {
    @Override
    String mass(double kilograms) {
      return Math.round(kilograms / KILOGRAMS_PER_POUND) + " lb";
    }

    @Override
    String handLength(int millimetres) {
      return Numbers.plain(millimetres / MILLIMETRES_PER_INCH, 1) + " inch";
    }

    @Override
    String ability(String french, String yds) {
      return "yds " + yds;
    }

    @Override
    Map<String, String> equipment() {
      return Map.of(
          "added", "2.5 lb steps to 130 lb",
          "assist", "2.5 lb steps to 130 lb",
          "other-length", "Inches are known too, as in `0.75 inch`.");
    }
  };

  private static final double KILOGRAMS_PER_POUND = 0.45359237;
  private static final double MILLIMETRES_PER_INCH = 25.4;

  private final String option;

  StarterUnits(String option) {
    this.option = option;
  }

  /**
   * Returns the units of an option.
   *
   * @throws UsageException if there are none of this name
   */
  static StarterUnits of(String option) throws UsageException {
    for (StarterUnits units : values()) {
      if (units.option.equals(option)) {
        return units;
      }
    }
    throw new UsageException("--units is kg or lb, not `" + option + "`");
  }

  /** Returns a mass in whole units. */
  abstract String mass(double kilograms);

  abstract String handLength(int millimetres);

  abstract String ability(String french, String yds);

  /** Returns the values of the templates for equipment. */
  abstract Map<String, String> equipment();
}
