package gripwright.quantity;

/**
 * What kind of thing a number measures, as exponents over independent base dimensions.
 *
 * <p>Multiplying and dividing quantities adds and subtracts exponents; adding and comparing needs
 * equal dimensions. Percentages and counts are pure numbers. Immutable.
 *
 * @param angle exponent of plane angle
 * @param length exponent of length
 * @param mass exponent of mass, which is also how a load on the hands is measured
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

  /** Returns the word a coach would use, such as {@code a time} or {@code a mass}. */
  public String inWords() {
    if (equals(NUMBER)) {
      return "a number";
    }
    if (equals(ANGLE)) {
      return "an angle";
    }
    if (equals(LENGTH)) {
      return "a length";
    }
    if (equals(MASS)) {
      return "a mass";
    }
    if (equals(FORCE)) {
      return "a force";
    }
    if (equals(TIME)) {
      return "a time";
    }
    if (equals(LOAD_TIME)) {
      return "a load times a time";
    }
    if (equals(IMPULSE)) {
      return "an impulse";
    }
    StringBuilder words = new StringBuilder("a quantity in");
    append(words, "deg", angle);
    append(words, "mm", length);
    append(words, "kg", mass);
    append(words, "N", force);
    append(words, "s", time);
    return words.toString();
  }

  private static void append(StringBuilder words, String unit, int exponent) {
    if (exponent != 0) {
      words.append(' ').append(unit);
      if (exponent != 1) {
        words.append('^').append(exponent);
      }
    }
  }
}
