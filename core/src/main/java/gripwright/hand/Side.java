package gripwright.hand;

import gripwright.finding.Message;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A side of the body. */
public enum Side implements Message {
  /** Left. */
  LEFT,
  /** Right. */
  RIGHT;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Side> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Side value : values()) {
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
    return "common.side-" + word();
  }
}
