package gripwright.quantity;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * The range of a value; this is the only table of ranges. Constructors refuse a value outside its
 * range, and the language reports it as a finding.
 *
 * <p>Ranges are wide: they catch typing mistakes and wrong units, and don't define what is
 * sensible. A number that is not finite is outside every range.
 */
public enum Range {
  /** Time of a hold. */
  HOLD("hold", Unit.SECOND, 0, true, 3_600),
  /** A rest within an exercise. */
  REST("rest", Unit.SECOND, 0, false, 86_400),
  /** Predicted time to failure less the hold. */
  RESERVE("reserve", Unit.SECOND, 0, false, 600),
  /** Time to failure of a load. */
  FAILURE("time to failure", Unit.SECOND, 0, true, 7_200),
  /** Duration of a warm-up. */
  WARM_UP("warm-up", Unit.MINUTE, 0, false, 14_400),
  /** The rest between two exercises. */
  REST_BETWEEN("rest between exercises", Unit.MINUTE, 0, false, 14_400),
  /** Time to train on a weekday. */
  AVAILABLE("available time", Unit.MINUTE, 0, true, 86_400),
  /** Climbing time on a day. */
  CLIMBING("time of climbing", Unit.MINUTE, 0, true, 57_600),
  /** The least time between two sessions. */
  GAP("gap between sessions", Unit.HOUR, 0, false, 31 * 86_400.0),
  /** The least time between two sessions of a day, from the end of one to the start of the next. */
  DAY_GAP("hours between two sessions of a day", Unit.HOUR, 4 * 3600.0, false, 86_400),
  /** Weeks after which a time to train recurs. */
  RECURRENCE("weeks after which a time recurs", Unit.WEEK, 0, true, 52 * 604_800.0),
  /** Length of a block. */
  BLOCK("length of a block", Unit.WEEK, 0, true, 520 * 604_800.0),
  /** Weeks between two steps. */
  EVERY("time between two steps", Unit.WEEK, 0, true, 520 * 604_800.0),
  /** Weeks between two retests. */
  RETEST("time between two retests", Unit.WEEK, 0, true, 520 * 604_800.0),
  /** Attempts of a planned test. */
  ATTEMPTS("number of attempts", null, 1, false, 20),
  /** Time without hard work before a planned test. */
  RESTED("time rested before a test", Unit.HOUR, 48 * 3600.0, false, 14 * 86_400.0),
  /** Length of a taper. */
  TAPER("length of a taper", Unit.WEEK, 0, true, 8 * 604_800.0),
  /** Length of the ramp of an introduced grip. */
  RAMP("length of a ramp", Unit.WEEK, 0, true, 520 * 604_800.0),
  /** Length of a comparison of protocols. */
  COMPARISON("length of a comparison", Unit.WEEK, 0, true, 520 * 604_800.0),
  /** Structured finger training so far. */
  TRAINED("time in training", Unit.MONTH, 0, false, 1_200 * 2_629_800.0),
  /** Training with a grip so far. */
  FAMILIAR("time with a grip", Unit.MONTH, 0, false, 1_200 * 2_629_800.0),

  /** An athlete's body mass. */
  BODY_MASS("body mass", Unit.KILOGRAM, 15, false, 300),
  /** The total load of a hold or of a test. */
  LOAD("load", Unit.KILOGRAM, 0, true, 1_000),
  /** The force of a test, as a sensor showed it: that of the greatest load. */
  FORCE("force", Unit.NEWTON, 0, true, 1_000 * Unit.NEWTONS_PER_KILOGRAM),
  /** Load added to body mass; below 0 if it is removed. */
  ADDED("load added to body mass", Unit.KILOGRAM, -1_000, false, 1_000),
  /** A step of load, of equipment or of progress. */
  LOAD_STEP("load step", Unit.KILOGRAM, 0, true, 200),
  /** The most load that equipment adds or removes. */
  LOAD_LIMIT("limit of load steps", Unit.KILOGRAM, 0, true, 1_000),

  /** Depth of an edge. */
  EDGE("depth of an edge", Unit.MILLIMETRE, 1, false, 200),
  /** A step of depth. */
  EDGE_STEP("step of depth", Unit.MILLIMETRE, 0, true, 100),
  /** Wrist crease to the tip of the middle finger. */
  HAND_LENGTH(
      "hand length",
      Unit.MILLIMETRE,
      100,
      false,
      280,
      "our own: well below a child of ten, well above the tallest adults"),
  /** Across the knuckles. */
  HAND_BREADTH("hand breadth", Unit.MILLIMETRE, 40, false, 140),
  /** A bone of a finger, from joint centre to joint centre. */
  BONE("finger bone", Unit.MILLIMETRE, 5, false, 80),
  /** Distance of a knuckle from the middle finger's, towards the wrist. */
  KNUCKLE("knuckle's distance", Unit.MILLIMETRE, 0, false, 60),

  /** A joint angle. */
  ANGLE("joint angle", Unit.DEGREE, -180, false, 180, Basis.DEFINITION),
  /** The room to either side of a joint angle. */
  ANGLE_WITHIN("room to either side", Unit.DEGREE, 0, false, 90),
  /** The middle of a range of the knuckle's flexion. */
  MCP_CENTRE("middle of the MCP joint's range", Unit.DEGREE, -60, false, 120),
  /** The middle of a range of the middle joint's flexion. */
  PIP_CENTRE("middle of the PIP joint's range", Unit.DEGREE, -20, false, 120),
  /** The middle of a range of the end joint's flexion. */
  DIP_CENTRE("middle of the DIP joint's range", Unit.DEGREE, -60, false, 110),
  /** The greater end of a grip's band at the middle joint. */
  PIP_HIGH("greater end of a band of the PIP joint", Unit.DEGREE, 0, false, 180),

  /** A share of a whole. */
  SHARE("share", Unit.PERCENT, 0, false, 1, Basis.DEFINITION),
  /** The share of the maximum that a hold or a ramp's start has. */
  OF_MAX("share of the maximum", Unit.PERCENT, 0, true, 1, Basis.DEFINITION),
  /** The share of the latest test that a hold has. */
  OF_TEST("share of the test", Unit.PERCENT, 0, true, 1, Basis.DEFINITION),
  /** Standard deviation of a quantity among persons, as a share of its median. */
  SPREAD("spread", Unit.PERCENT, 0, false, 1),
  /** Critical force as a share of the maximum. */
  CRITICAL_FORCE("critical force", Unit.PERCENT, 0, true, 0.95),
  /** The difference that is left after a match, as a share of what was to be reached. */
  WITHIN("tolerance of a match", Unit.PERCENT, 0, true, 1),
  /** The share of its sets that an eased (deload) week keeps. */
  EASE("eased share of sets", Unit.PERCENT, 0, true, 0.99),
  /** A step of load, as a share of itself. */
  LOAD_PERCENT("rise of load", Unit.PERCENT, 0, true, 1),
  /** The greatest rise of a week's load. */
  WEEKLY_RISE("weekly rise", Unit.PERCENT, 0, false, 0.3),

  /** Number of repeats of steps. */
  REPEATS("number of repeats", null, 1, false, 1_000),
  /** Sets that were done. */
  SETS("number of sets done", null, 0, false, 1_000),
  /** The limit and step of sets in an advance. */
  SETS_LIMIT("number of sets", null, 1, false, 100),
  /** Sessions of a kind in a week. */
  PER_WEEK("number of sessions per week", null, 1, false, 7, Basis.DEFINITION),
  /** Sessions in a row that earn a step. */
  IN_A_ROW("number of sessions in a row", null, 1, false, 2),
  /** A week of a block. */
  WEEK("number of a week", null, 1, false, 520),
  /** An exercise of a session. */
  EXERCISE("number of an exercise", null, 1, false, 1_000),
  /** Holds of a test. */
  REPETITIONS("number of holds", null, 1, false, 200),
  /** Perceived effort. */
  EFFORT("effort", null, 0, false, 10, Basis.SCALE),
  /** Planned effort of a hold. */
  LEVEL_EFFORT("effort to train at", null, 0, true, 10, Basis.SCALE),
  /** Pain score. */
  PAIN("pain score", null, 0, false, 10, Basis.SCALE),

  /** Holds and rests of an exercise, written out. */
  STEPS("number of holds and rests of an exercise", null, 1, false, 10_000),
  /** Exercises of a session. */
  EXERCISES("number of exercises of a session", null, 1, false, 100),
  /** Grips that a line may choose among. */
  GRIPS("number of grips to choose from", null, 2, false, 30),
  /** Weeks of a plan, all blocks together. */
  PLAN_WEEKS("number of weeks of a plan", null, 1, false, 520),
  /** Athletes of a plan. */
  ATHLETES("number of athletes of a plan", null, 1, false, 1_000),
  /** Athletes of a cohort. */
  COHORT("number of athletes of a cohort", null, 2, false, 10_000_000),
  /** Draws of a model's parameters. */
  DRAWS("number of draws", null, 100, false, 10_000_000),
  /** The stream of random numbers. */
  STREAM("stream", null, 0, false, 999_999_999_999.0),
  /** Correlation of two quantities among persons. */
  CORRELATION("correlation", null, -0.99, false, 0.99),
  /** The year of a date. */
  YEAR("year", null, 1_900, false, 2_199),
  /** The year in which an athlete was born. */
  BIRTH("year of birth", null, 1_920, false, 2_199);

  private static final int DECIMALS = 6;

  private final String what;
  private final @Nullable Unit unit;
  private final double low;
  private final boolean above;
  private final double high;
  private final String source;

  Range(String what, @Nullable Unit unit, double low, boolean above, double high) {
    this(what, unit, low, above, high, Basis.OWN);
  }

  Range(String what, @Nullable Unit unit, double low, boolean above, double high, String source) {
    this.what = what;
    this.unit = unit;
    this.low = low;
    this.above = above;
    this.high = high;
    this.source = source;
  }

  /** The source of bounds. */
  private static final class Basis {
    static final String OWN = "our own";
    static final String DEFINITION = "by definition";
    static final String SCALE = "a scale of 0 to 10";
  }

  /** Returns the name of the value, such as {@code body mass}. */
  public String what() {
    return what;
  }

  /** Returns the usual written unit; empty for counts, scores and years. */
  public Optional<Unit> unit() {
    return Optional.ofNullable(unit);
  }

  /** Returns the lower bound in the base unit; a percentage as a fraction. */
  public double low() {
    return low;
  }

  /** Returns whether the lower bound itself is outside. */
  public boolean excludesLow() {
    return above;
  }

  /** Returns the upper bound in the base unit, which is inside. */
  public double high() {
    return high;
  }

  /** Returns the source of the bounds; {@code our own} if they are not published. */
  public String source() {
    return source;
  }

  /** Returns whether a value in the base unit is inside; a number that is not finite never is. */
  public boolean contains(double base) {
    return (above ? base > low : base >= low) && base <= high;
  }

  /**
   * Returns a value in the base unit of its dimension, a percentage as a fraction.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public double check(double base) {
    if (!contains(base)) {
      throw outside(written(base));
    }
    return base;
  }

  /**
   * Returns a count or a score.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public long check(long count) {
    check((double) count);
    return count;
  }

  /**
   * Returns a time.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public Duration check(Duration time) {
    // Compares without overflow for any duration.
    check(time.getSeconds() + time.getNano() / 1e9);
    return time;
  }

  /**
   * Returns a load or a mass.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public Load check(Load load) {
    check(load.kilograms());
    return load;
  }

  /**
   * Returns a length.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public Length check(Length length) {
    check(length.millimetres());
    return length;
  }

  /**
   * Returns a number that may be missing.
   *
   * @throws IllegalArgumentException if it is present and outside
   */
  public OptionalDouble check(OptionalDouble base) {
    base.ifPresent(this::check);
    return base;
  }

  /**
   * Returns a count that may be missing.
   *
   * @throws IllegalArgumentException if it is present and outside
   */
  public OptionalInt check(OptionalInt count) {
    count.ifPresent(this::check);
    return count;
  }

  /**
   * Checks a value in a unit.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public void checkIn(Unit of, double value) {
    check(of.toBase(value));
  }

  /**
   * Returns a date whose year is inside.
   *
   * @throws IllegalArgumentException if its year is outside
   */
  public LocalDate check(LocalDate date) {
    if (!contains(date.getYear())) {
      throw outside(date.getYear() + " of " + date);
    }
    return date;
  }

  private IllegalArgumentException outside(String value) {
    return new IllegalArgumentException(what + " " + value + " is outside " + inWords());
  }

  /** Returns the bounds with their unit, such as {@code 10 kg to 300 kg}. */
  public String inWords() {
    return (above ? "above " : "") + bound(low) + (above ? " up to " : " to ") + bound(high);
  }

  /** Returns a bound as written, with the usual unit. */
  public String bound(double base) {
    return unit == null
        ? Numbers.plain(base, 2)
        : Numbers.plain(unit.fromBase(base), 2) + " " + unit.symbol();
  }

  /** Returns a value as text, with enough decimals to show that it is outside. */
  private String written(double base) {
    double value = unit == null ? base : unit.fromBase(base);
    String symbol = unit == null ? "" : " " + unit.symbol();
    if (!Double.isFinite(value) || Math.abs(value) > 1e15) {
      return value + symbol;
    }
    String plain = Numbers.plain(value, DECIMALS);
    boolean exact = Double.parseDouble(plain) == value;
    return (exact || !(plain + symbol).equals(bound(base < low ? low : high)) ? plain : "" + value)
        + symbol;
  }

  /** Returns the name of the value and its bounds, such as {@code effort: 0 to 10}. */
  @Override
  public String toString() {
    return what + ": " + inWords();
  }
}
