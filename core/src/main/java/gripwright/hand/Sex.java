package gripwright.hand;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** Sex as published norms report it. */
public enum Sex {
  /** Female. */
  FEMALE,
  /** Male. */
  MALE;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Sex> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Sex value : values()) {
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
