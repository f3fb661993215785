package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.quantity.Dimension;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A place in a file for an amount, with its own words and its range, which is that of the
 * constructor that takes the amount.
 */
enum Slot implements Message {
  HOLD(Range.HOLD),
  REST(Range.REST),
  RESERVE(Range.RESERVE),
  FAILURE(Range.FAILURE),
  WARM_UP(Range.WARM_UP),
  REST_BETWEEN(Range.REST_BETWEEN),
  AVAILABLE(Range.AVAILABLE),
  CLIMBING(Range.CLIMBING),
  GAP(Range.GAP),
  DAY_GAP(Range.DAY_GAP),
  RECURRENCE(Range.RECURRENCE),
  BLOCK(Range.BLOCK),
  EVERY(Range.EVERY),
  RETEST(Range.RETEST),
  ATTEMPTS(Range.ATTEMPTS),
  RESTED(Range.RESTED),
  TAPER(Range.TAPER),
  RAMP(Range.RAMP),
  COMPARISON(Range.COMPARISON),
  TRAINED(Range.TRAINED),
  FAMILIAR(Range.FAMILIAR),
  BODY_MASS(Range.BODY_MASS),
  LOAD(Range.LOAD),
  FORCE(Range.FORCE),
  LOAD_STEP(Range.LOAD_STEP),
  LOAD_LIMIT(Range.LOAD_LIMIT),
  EDGE(Range.EDGE),
  EDGE_STEP(Range.EDGE_STEP),
  HAND_LENGTH(Range.HAND_LENGTH),
  HAND_BREADTH(Range.HAND_BREADTH),
  BONE(Range.BONE),
  KNUCKLE(Range.KNUCKLE),
  ANGLE(Range.ANGLE),
  ANGLE_WITHIN(Range.ANGLE_WITHIN),
  SHARE(Range.SHARE),
  EASE(Range.EASE),
  LOAD_PERCENT(Range.LOAD_PERCENT),
  WEEKLY_RISE(Range.WEEKLY_RISE),
  REPEATS(Range.REPEATS),
  SETS(Range.SETS),
  SETS_LIMIT(Range.SETS_LIMIT),
  PER_WEEK(Range.PER_WEEK),
  WEEK(Range.WEEK),
  EXERCISE(Range.EXERCISE),
  REPETITIONS(Range.REPETITIONS),
  EFFORT(Range.EFFORT),
  LEVEL_EFFORT(Range.LEVEL_EFFORT),
  PAIN(Range.PAIN),
  COHORT(Range.COHORT),
  DRAWS(Range.DRAWS),
  STREAM(Range.STREAM),
  SPREAD(Range.SPREAD),
  CRITICAL_FORCE(Range.CRITICAL_FORCE),
  CORRELATION(Range.CORRELATION),
  WITHIN(Range.WITHIN);

  private final Range range;

  Slot(Range range) {
    this.range = range;
  }

  /** Returns the dimension; counts, scores and shares have that of a number. */
  Dimension dimension() {
    return range.unit().map(Unit::dimension).orElse(Dimension.NUMBER);
  }

  /** Returns the unit a coach would write here; null for counts and scores. */
  @Nullable Unit unit() {
    return range.unit().orElse(null);
  }

  /** Returns the description of the expected value, such as {@code a time}. */
  Message expected() {
    return Terms.measured(unit());
  }

  /** Returns an amount as a coach might write it here, such as {@code 10 s}. */
  String example() {
    Unit unit = unit();
    if (unit == null) {
      return switch (this) {
        case COHORT, DRAWS -> "10000";
        case CORRELATION -> "0.6";
        default -> "3";
      };
    }
    return usual(unit) + " " + unit.symbol();
  }

  /** Returns a usual number in a unit, which is within the bounds. */
  private int usual(Unit unit) {
    return switch (this) {
      case HAND_LENGTH -> 180;
      case HAND_BREADTH -> 80;
      case BONE -> 40;
      case KNUCKLE -> 5;
      case CRITICAL_FORCE -> 40;
      case WITHIN -> 5;
      case EDGE_STEP, LOAD_STEP, LOAD_PERCENT -> 2;
      case EASE -> 50;
      case RAMP -> 3;
      case RESTED -> 72;
      case DAY_GAP -> 6;
      case RECURRENCE -> 2;
      case TAPER -> 1;
      case REST_BETWEEN -> 5;
      case ANGLE_WITHIN -> 10;
      case WARM_UP -> 15;
      default ->
          switch (unit) {
            case MINUTE, KILOGRAM -> 60;
            case HOUR -> 48;
            case WEEK -> 4;
            case MONTH -> 12;
            case MILLIMETRE -> 20;
            case DEGREE -> 90;
            default -> 10;
          };
    };
  }

  /** Returns whether a value in the base unit is within the bounds. */
  boolean allows(double base) {
    return range.contains(base);
  }

  /** Returns the code of a value outside the bounds. */
  String code() {
    Unit unit = unit();
    if (unit == null) {
      return switch (this) {
        case EFFORT, PAIN, LEVEL_EFFORT, CORRELATION -> "value.score";
        default -> "value.count";
      };
    }
    if (this == DAY_GAP) {
      return "value.gap";
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

  @Override
  public String key() {
    return "term.slot-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
