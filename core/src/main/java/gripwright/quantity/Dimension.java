package gripwright.quantity;

import java.util.Optional;

/**
 * The dimension of a number, as exponents of independent base dimensions.
 *
 * <p>Multiplying and dividing quantities adds and subtracts exponents; adding and comparing needs
 * equal dimensions. Percentages and counts are pure numbers. Immutable.
 *
 * @param angle exponent of plane angle
 * @param length exponent of length
 * @param mass exponent of mass, also used for a load on the hands
 * @param force exponent of force; never interchangeable with mass
 * @param time exponent of time
 */
public record Dimension(int angle, int length, int mass, int force, int time) {

  /** A count, a ratio or a percentage. */
  public static final Dimension NUMBER = new Dimension(0, 0, 0, 0, 0);

  /** Plane angle; base unit the degree. */
  public static final Dimension ANGLE = new Dimension(1, 0, 0, 0, 0);

  /** Length; base unit the millimetre. */
  public static final Dimension LENGTH = new Dimension(0, 1, 0, 0, 0);

  /** Mass or load; base unit the kilogram. */
  public static final Dimension MASS = new Dimension(0, 0, 1, 0, 0);

  /** Force; base unit the newton. */
  public static final Dimension FORCE = new Dimension(0, 0, 0, 1, 0);

  /** Time; base unit the second. */
  public static final Dimension TIME = new Dimension(0, 0, 0, 0, 1);

  /** Load held for a time; base unit the kilogram second. */
  public static final Dimension LOAD_TIME = MASS.times(TIME);

  /** Impulse; base unit the newton second. */
  public static final Dimension IMPULSE = FORCE.times(TIME);

  /** Returns the dimension of a product. */
  public Dimension times(Dimension other) {
    return new Dimension(
        angle + other.angle,
        length + other.length,
        mass + other.mass,
        force + other.force,
        time + other.time);
  }

  /** Returns the dimension of a quotient. */
  public Dimension dividedBy(Dimension other) {
    return new Dimension(
        angle - other.angle,
        length - other.length,
        mass - other.mass,
        force - other.force,
        time - other.time);
  }

  /** Returns the word for the dimension, such as {@code load-time}; empty if it has none. */
  public Optional<String> word() {
    String word = plainWord();
    return word.isEmpty() ? Optional.empty() : Optional.of(word);
  }

  private String plainWord() {
    if (equals(NUMBER)) {
      return "number";
    }
    if (equals(ANGLE)) {
      return "angle";
    }
    if (equals(LENGTH)) {
      return "length";
    }
    if (equals(MASS)) {
      return "mass";
    }
    if (equals(FORCE)) {
      return "force";
    }
    if (equals(TIME)) {
      return "time";
    }
    if (equals(LOAD_TIME)) {
      return "load-time";
    }
    return equals(IMPULSE) ? "impulse" : "";
  }

  /** Returns the base unit, such as {@code kg s}; empty for a number. */
  public String unit() {
    StringBuilder unit = new StringBuilder();
    append(unit, "deg", angle);
    append(unit, "mm", length);
    append(unit, "kg", mass);
    append(unit, "N", force);
    append(unit, "s", time);
    return unit.toString().strip();
  }

  private static void append(StringBuilder unit, String symbol, int exponent) {
    if (exponent != 0) {
      unit.append(' ').append(symbol);
      if (exponent != 1) {
        unit.append('^').append(exponent);
      }
    }
  }

  /** Returns the word for the dimension, such as {@code load-time}, or else its base unit. */
  @Override
  public String toString() {
    return word().orElseGet(this::unit);
  }
}
