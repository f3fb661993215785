package gripwright.compare;

import java.util.Locale;
import java.util.Optional;

/** Measures by which protocols are compared. */
public enum Measure {
  /** Time under tension: the sum of all holds. */
  TIME_UNDER_LOAD,
  /** Force times time under tension. */
  IMPULSE,
  /** Load-time: total load times hold time. */
  LOAD_INDEX,
  /** Greatest estimated load on an A2 pulley. */
  PEAK_A2_LOAD,
  /** Greatest estimated load on an A4 pulley. */
  PEAK_A4_LOAD,
  /** Predicted capacity left at the end. */
  END_RESERVE,
  /** The sum of holds and rests. */
  DURATION,
  /** Time under tension over duration. */
  DENSITY;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the measure for a word. */
  public static Optional<Measure> parse(String word) {
    for (Measure value : values()) {
      if (value.word().equals(word)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  /** Returns the word. */
  @Override
  public String toString() {
    return word();
  }
}
