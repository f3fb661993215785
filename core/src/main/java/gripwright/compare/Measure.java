package gripwright.compare;

import java.util.Locale;
import java.util.Optional;

/** What protocols are compared by. */
public enum Measure {
  /** All holds together. */
  TIME_UNDER_LOAD,
  /** Force times time under load. */
  IMPULSE,
  /** Total load times hold time. */
  LOAD_INDEX,
  /** Greatest estimated load on an A2 pulley. */
  PEAK_A2_LOAD,
  /** Greatest estimated load on an A4 pulley. */
  PEAK_A4_LOAD,
  /** Predicted capacity left at the end. */
  END_RESERVE,
  /** Holds and rests together. */
  DURATION,
  /** Time under load over duration. */
  DENSITY;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
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
