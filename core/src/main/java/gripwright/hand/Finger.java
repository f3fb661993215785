package gripwright.hand;

import gripwright.finding.Message;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A finger, from the thumb side; the thumb itself takes no part in the grips here. */
public enum Finger implements Message {
  /** The index finger. */
  INDEX,
  /** The middle finger. */
  MIDDLE,
  /** The ring finger. */
  RING,
  /** The little finger. */
  LITTLE;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Finger> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Finger value : values()) {
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

  @Override
  public String key() {
    return "common.finger-" + word();
  }
}
