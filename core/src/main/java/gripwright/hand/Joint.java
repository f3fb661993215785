package gripwright.hand;

import java.util.Locale;
import java.util.Optional;

/** A finger joint, from the palm outwards. */
public enum Joint {
  /** Metacarpophalangeal joint, the knuckle. */
  MCP,
  /** Proximal interphalangeal joint. */
  PIP,
  /** Distal interphalangeal joint. */
  DIP;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Joint> parse(String word) {
    for (Joint value : values()) {
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
