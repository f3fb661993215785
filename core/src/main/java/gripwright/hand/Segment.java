package gripwright.hand;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A bone of a finger, from the palm outwards. */
public enum Segment {
  /** Proximal phalanx. */
  PROXIMAL,
  /** Middle phalanx. */
  MIDDLE,
  /** Distal phalanx. */
  DISTAL;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Segment> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Segment value : values()) {
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
