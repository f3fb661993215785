package gripwright.ability;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A published scale of climbing grades. */
public enum GradeScale {
  /** French sport grades, such as {@code 7c+}. */
  FRENCH,
  /** Fontainebleau boulder grades, such as {@code 7a}. */
  FONT,
  /** V boulder grades, written as the number after the V. */
  V,
  /** Yosemite decimal system, such as {@code 5.12d}. */
  YDS,
  /** UIAA grades in arabic figures, such as {@code 8+}. */
  UIAA,
  /** The numeric comparison scale of the International Rock Climbing Research Association. */
  IRCRA;

  /** Returns the word written in a plan, such as {@code french}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the scale for a word. */
  public static Optional<GradeScale> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (GradeScale scale : values()) {
      if (scale.word().equals(word)) {
        return Optional.of(scale);
      }
    }
    return Optional.empty();
  }
}
