package gripwright.quantity;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A unit that a plan may be written in.
 *
 * <p>Conversion factors are exact by definition: inch and pound by the international yard and pound
 * agreement of 1959 (25.4 mm, 0.45359237 kg). A month is a twelfth of 365.25 days and is used only
 * to compare periods such as years of training; dates are always calculated on the calendar.
 */
public enum Unit {
  /** Degree of angle. */
  DEGREE("deg", Dimension.ANGLE, 1),
  /** Millimetre. */
  MILLIMETRE("mm", Dimension.LENGTH, 1),
  /** Centimetre. */
  CENTIMETRE("cm", Dimension.LENGTH, 10),
  /** Inch, 25.4 mm. */
  INCH("inch", Dimension.LENGTH, 25.4),
  /** Kilogram. */
  KILOGRAM("kg", Dimension.MASS, 1),
  /** Pound, 0.45359237 kg. */
  POUND("lb", Dimension.MASS, 0.45359237),
  /** Newton. */
  NEWTON("N", Dimension.FORCE, 1),
  /** Second. */
  SECOND("s", Dimension.TIME, 1),
  /** Minute. */
  MINUTE("min", Dimension.TIME, 60),
  /** Hour. */
  HOUR("h", Dimension.TIME, 3600),
  /** Day of 24 hours. */
  DAY("days", Dimension.TIME, 86_400),
  /** Week of seven days. */
  WEEK("weeks", Dimension.TIME, 604_800),
  /** Twelfth of a year of 365.25 days. */
  MONTH("months", Dimension.TIME, 2_629_800),
  /** Per cent, a hundredth. */
  PERCENT("%", Dimension.NUMBER, 0.01);

  /** Standard acceleration of gravity in m/s^2: the newtons in a kilogram of load (ISO 80000-3). */
  public static final double NEWTONS_PER_KILOGRAM = 9.80665;

  private final String symbol;
  private final Dimension dimension;
  private final double factor;

  Unit(String symbol, Dimension dimension, double factor) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = factor;
  }

  /** Returns the word written in a plan, such as {@code kg} or {@code weeks}. */
  public String symbol() {
    return symbol;
  }

  /** Returns what the unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Converts a value in this unit to the base unit of its dimension. */
  public double toBase(double value) {
    return this == PERCENT ? value / 100 : value * factor; // 70 % is 0.7, which 70 x 0.01 is not
  }

  /** Converts a value in the base unit of this unit's dimension to this unit. */
  public double fromBase(double base) {
    return this == PERCENT ? base * 100 : base / factor;
  }

  /** Returns the units of a dimension, smallest first; empty if a plan has no unit for it. */
  public static List<Unit> of(Dimension dimension) {
    Objects.requireNonNull(dimension, "dimension");
    return List.of(values()).stream().filter(u -> u.dimension.equals(dimension)).toList();
  }

  /**
   * Returns the unit for a word. The singular forms {@code day}, {@code week} and {@code month} are
   * accepted; case matters: {@code N} is the newton, and {@code n} is not a unit.
   */
  public static Optional<Unit> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Unit unit : values()) {
      if (unit.symbol.equals(word)
          || (unit.symbol.endsWith("s")
              && unit.symbol.length() > 1
              && unit.symbol.substring(0, unit.symbol.length() - 1).equals(word))) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
