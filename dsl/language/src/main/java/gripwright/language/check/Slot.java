package gripwright.language.check;

import gripwright.quantity.Dimension;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A place in a file where an amount stands: what a coach calls it and its range, which is that of
 * the constructor that takes the amount.
 */
enum Slot {
  HOLD("a hold", Range.HOLD),
  REST("a rest", Range.REST),
  RESERVE("a reserve", Range.RESERVE),
  FAILURE("a time to failure", Range.FAILURE),
  WARM_UP("a warm-up", Range.WARM_UP),
  REST_BETWEEN("a rest between exercises", Range.REST_BETWEEN),
  AVAILABLE("an available time", Range.AVAILABLE),
  CLIMBING("a time of climbing", Range.CLIMBING),
  GAP("a gap between sessions", Range.GAP),
  BLOCK("the length of a block", Range.BLOCK),
  EVERY("the time between two steps", Range.EVERY),
  RETEST("the time between two retests", Range.RETEST),
  TAPER("the length of a taper", Range.TAPER),
  RAMP("the length of a ramp", Range.RAMP),
  COMPARISON("the length of a comparison", Range.COMPARISON),
  TRAINED("time in training", Range.TRAINED),
  FAMILIAR("time with a grip", Range.FAMILIAR),
  BODY_MASS("body mass", Range.BODY_MASS),
  LOAD("a load", Range.LOAD),
  LOAD_STEP("a load step", Range.LOAD_STEP),
  LOAD_LIMIT("the most that can be made up", Range.LOAD_LIMIT),
  EDGE("the depth of an edge", Range.EDGE),
  EDGE_STEP("a step of depth", Range.EDGE_STEP),
  HAND_LENGTH("a hand length", Range.HAND_LENGTH),
  HAND_BREADTH("a hand breadth", Range.HAND_BREADTH),
  BONE("a finger bone", Range.BONE),
  KNUCKLE("a knuckle's distance", Range.KNUCKLE),
  ANGLE("a joint angle", Range.ANGLE),
  ANGLE_WITHIN("the room to either side", Range.ANGLE_WITHIN),
  SHARE("a share", Range.SHARE),
  EASE("an eased share of sets", Range.EASE),
  LOAD_PERCENT("a rise of load", Range.LOAD_PERCENT),
  WEEKLY_RISE("a weekly rise", Range.WEEKLY_RISE),
  REPEATS("a number of repeats", Range.REPEATS),
  SETS("a number of sets", Range.SETS),
  SETS_LIMIT("a number of sets", Range.SETS_LIMIT),
  PER_WEEK("a number of sessions per week", Range.PER_WEEK),
  WEEK("the number of a week", Range.WEEK),
  EXERCISE("the number of an exercise", Range.EXERCISE),
  REPETITIONS("a number of holds", Range.REPETITIONS),
  EFFORT("an effort", Range.EFFORT),
  LEVEL_EFFORT("an effort to train at", Range.LEVEL_EFFORT),
  PAIN("a pain score", Range.PAIN);

  private final String words;
  private final Range range;

  Slot(String words, Range range) {
    this.words = words;
    this.range = range;
  }

  /** Returns the dimension, that of a number for counts, scores and shares. */
  Dimension dimension() {
    return range.unit().map(Unit::dimension).orElse(Dimension.NUMBER);
  }

  /** Returns the unit a coach would write here; null for counts and scores. */
  @Nullable Unit unit() {
    return range.unit().orElse(null);
  }

  /** Returns what belongs here, such as {@code a time}. */
  String expected() {
    Unit unit = unit();
    if (unit == Unit.PERCENT) {
      return "a percentage";
    }
    return unit == null ? "a number without a unit" : unit.dimension().inWords();
  }

  /** Tells whether a value in the base unit lies within the bounds. */
  boolean allows(double base) {
    return range.contains(base);
  }

  /** Returns the code of a value outside the bounds. */
  String code() {
    Unit unit = unit();
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
    return range.excludesLow() ? "above" : "low";
  }

  /** Returns the lower bound as it would be written. */
  String low() {
    return range.bound(range.low());
  }

  /** Returns the upper bound as it would be written. */
  String high() {
    return range.bound(range.high());
  }

  /** Returns what stands here in words, such as {@code a rest}. */
  @Override
  public String toString() {
    return words;
  }
}
