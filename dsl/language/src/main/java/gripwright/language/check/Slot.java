package gripwright.language.check;

import gripwright.quantity.Dimension;
import gripwright.quantity.Numbers;
import gripwright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A place in a file where an amount stands: what it is called, what it measures and between which
 * bounds it can be. The bounds are wide: they catch a slip of the pen or of the unit, and say
 * nothing about what is sensible.
 */
enum Slot {
  HOLD("a hold", Unit.SECOND, 0, true, 3_600),
  REST("a rest", Unit.SECOND, 0, false, 86_400),
  RESERVE("a reserve", Unit.SECOND, 0, false, 600),
  FAILURE("a time to failure", Unit.SECOND, 0, true, 7_200),
  WARM_UP("a warm-up", Unit.MINUTE, 0, false, 14_400),
  REST_BETWEEN("a rest between exercises", Unit.MINUTE, 0, false, 14_400),
  AVAILABLE("an available time", Unit.MINUTE, 0, true, 86_400),
  CLIMBING("a time of climbing", Unit.MINUTE, 0, true, 86_400),
  GAP("a gap between sessions", Unit.HOUR, 0, false, 31 * 86_400.0),
  BLOCK("the length of a block", Unit.WEEK, 0, true, 520 * 604_800.0),
  EVERY("the time between two steps", Unit.WEEK, 0, true, 520 * 604_800.0),
  RETEST("the time between two retests", Unit.WEEK, 0, true, 520 * 604_800.0),
  TAPER("the length of a taper", Unit.WEEK, 0, true, 8 * 604_800.0),
  RAMP("the length of a ramp", Unit.WEEK, 0, true, 520 * 604_800.0),
  COMPARISON("the length of a comparison", Unit.WEEK, 0, true, 520 * 604_800.0),
  TRAINED("time in training", Unit.MONTH, 0, false, 1_200 * 2_629_800.0),
  FAMILIAR("time with a grip", Unit.MONTH, 0, false, 1_200 * 2_629_800.0),

  BODY_MASS("body mass", Unit.KILOGRAM, 10, false, 300),
  LOAD("a load", Unit.KILOGRAM, 0, true, 1_000),
  LOAD_STEP("a load step", Unit.KILOGRAM, 0, true, 200),
  LOAD_LIMIT("the most that can be made up", Unit.KILOGRAM, 0, true, 1_000),

  EDGE("the depth of an edge", Unit.MILLIMETRE, 1, false, 200),
  EDGE_STEP("a step of depth", Unit.MILLIMETRE, 0, true, 100),
  HAND_LENGTH("a hand length", Unit.MILLIMETRE, 100, false, 280),
  HAND_BREADTH("a hand breadth", Unit.MILLIMETRE, 40, false, 140),
  BONE("a finger bone", Unit.MILLIMETRE, 5, false, 80),
  KNUCKLE("a knuckle's distance", Unit.MILLIMETRE, 0, false, 60),

  ANGLE("a joint angle", Unit.DEGREE, -180, false, 180),
  ANGLE_WITHIN("the room to either side", Unit.DEGREE, 0, false, 90),

  SHARE("a share", Unit.PERCENT, 0, false, 1),
  EASE("an eased share of sets", Unit.PERCENT, 0, true, 0.99),
  LOAD_PERCENT("a rise of load", Unit.PERCENT, 0, true, 1),
  WEEKLY_RISE("a weekly rise", Unit.PERCENT, 0, false, 1),

  REPEATS("a number of repeats", null, 1, false, 1_000),
  SETS("a number of sets", null, 0, false, 1_000),
  SETS_LIMIT("a number of sets", null, 1, false, 100),
  PER_WEEK("a number of sessions per week", null, 1, false, 7),
  WEEK("the number of a week", null, 1, false, 520),
  EXERCISE("the number of an exercise", null, 1, false, 1_000),
  REPETITIONS("a number of holds", null, 1, false, 200),
  EFFORT("an effort", null, 0, false, 10),
  LEVEL_EFFORT("an effort to train at", null, 0, true, 10),
  PAIN("a pain score", null, 0, false, 10);

  private final String words;
  private final @Nullable Unit unit;
  private final double low;
  private final boolean above;
  private final double high;

  Slot(String words, @Nullable Unit unit, double low, boolean above, double high) {
    this.words = words;
    this.unit = unit;
    this.low = low;
    this.above = above;
    this.high = high;
  }

  /** Returns the dimension, that of a number for counts, scores and shares. */
  Dimension dimension() {
    return unit == null ? Dimension.NUMBER : unit.dimension();
  }

  /** Returns the unit a coach would write here; null for counts and scores. */
  @Nullable Unit unit() {
    return unit;
  }

  /** Returns what belongs here, such as {@code a time}. */
  String expected() {
    if (unit == Unit.PERCENT) {
      return "a percentage";
    }
    return unit == null ? "a number without a unit" : unit.dimension().inWords();
  }

  /** Tells whether a value in the base unit lies within the bounds. */
  boolean allows(double base) {
    return (above ? base > low : base >= low) && base <= high;
  }

  /** Returns the code of a value outside the bounds. */
  String code() {
    if (unit == null) {
      return this == EFFORT || this == PAIN || this == LEVEL_EFFORT ? "value.score" : "value.count";
    }
    return unit == Unit.PERCENT
        ? "value.percent"
        : switch (unit) {
          case DEGREE -> "value.angle";
          case MILLIMETRE, CENTIMETRE, INCH -> "value.length";
          case KILOGRAM, POUND, NEWTON -> "value.mass";
          default -> "value.time";
        };
  }

  /** Returns the name of the lower bound among a finding's arguments. */
  String lowName() {
    return above ? "above" : "low";
  }

  /** Returns the lower bound as it would be written. */
  String low() {
    return written(low);
  }

  /** Returns the upper bound as it would be written. */
  String high() {
    return written(high);
  }

  private String written(double base) {
    return unit == null
        ? Numbers.plain(base, 2)
        : Numbers.plain(unit.fromBase(base), 2) + " " + unit.symbol();
  }

  /** Returns what stands here in words, such as {@code a rest}. */
  @Override
  public String toString() {
    return words;
  }
}
