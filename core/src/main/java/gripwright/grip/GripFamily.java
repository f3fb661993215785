package gripwright.grip;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How grips are grouped for people. Built-in rules don't go by it: {@link GripStructure} says what
 * a grip is.
 */
public enum GripFamily {
  /** All four fingers, bent: the crimps. */
  FOUR,
  /** Three or four fingers, nearly straight. */
  OPEN,
  /** Two or three fingers side by side, the others off the hold. */
  SPLIT,
  /** One finger. */
  SINGLE;

  private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** Returns whether a grip of this family may use so many fingers. */
  public boolean allows(int fingers) {
    return switch (this) {
      case FOUR -> fingers == 4;
      case OPEN -> fingers >= 3;
      case SPLIT -> fingers == 2 || fingers == 3;
      case SINGLE -> fingers == 1;
    };
  }

  /** Returns the word written in a plan. */
  public String word() {
    return word;
  }

  /** Finds what a word stands for. */
  public static Optional<GripFamily> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (GripFamily value : values()) {
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
