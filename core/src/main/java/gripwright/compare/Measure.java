package gripwright.compare;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Measures by which protocols are compared. */
public enum Measure {
  /** Time under tension of all sessions: the sum of all holds, in s. */
  TIME_UNDER_LOAD(Difference.RATIO),
  /** Load-time of all sessions: total load times hold time, in kg s. */
  LOAD_TIME(Difference.RATIO),
  /** Impulse of all sessions: force times time, in N s. */
  IMPULSE(Difference.RATIO),
  /** Impulse above critical force, in N s. */
  IMPULSE_ABOVE_CF(Difference.RATIO),
  /** Time of all sessions, rests included, in min. */
  MINUTES(Difference.RATIO),
  /** Time under tension divided by the time of the sessions, 0 to 1. */
  DENSITY(Difference.RATIO),
  /** Least predicted capacity left at the end of a session, 0 to 1. */
  END_RESERVE(Difference.PLAIN),
  /** 1 less {@link #END_RESERVE}. */
  FATIGUE(Difference.PLAIN),
  /** Share of the planned holds that are predicted to be held to their end, 0 to 1. */
  COMPLETED(Difference.PLAIN),
  /** Number of the first hold of a session that is predicted to fail, from 1. */
  FIRST_FAILURE(Difference.CENSORED),
  /** Greatest rise of a week's load-time over the three before, as a fraction. */
  WEEKLY_RISE(Difference.PLAIN),
  /** Load-time of the A2 pulley that has most of it, in seconds of the own hang. */
  A2_EXPOSURE(Difference.RATIO),
  /** Load-time of the A4 pulley that has most of it, in seconds of the own hang. */
  A4_EXPOSURE(Difference.RATIO),
  /** Greatest estimated load on an A2 pulley, in times the own hang. */
  PEAK_A2_LOAD(Difference.RATIO),
  /** Greatest estimated load on an A4 pulley, in times the own hang. */
  PEAK_A4_LOAD(Difference.RATIO);

  /** How two values of a measure are compared. */
  public enum Difference {
    /** By the logarithm of their ratio. */
    RATIO,
    /** By their difference. */
    PLAIN,
    /** By which comes later; a session without a failure counts as its last hold and more. */
    CENSORED
  }

  private static final Map<String, Measure> OLDER =
      Map.of("load-index", LOAD_TIME, "duration", MINUTES);

  private final Difference difference;

  Measure(Difference difference) {
    this.difference = difference;
  }

  /** Returns how two values are compared. */
  public Difference difference() {
    return difference;
  }

  /** Returns whether protocols can be made equal by it. */
  public boolean matches() {
    return switch (this) {
      case TIME_UNDER_LOAD, LOAD_TIME, IMPULSE, MINUTES, FATIGUE -> true;
      default -> false;
    };
  }

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the measure for a word, one of the older words included. */
  public static Optional<Measure> parse(String word) {
    for (Measure value : values()) {
      if (value.word().equals(word)) {
        return Optional.of(value);
      }
    }
    return Optional.ofNullable(OLDER.get(word));
  }

  /** Returns the word. */
  @Override
  public String toString() {
    return word();
  }
}
