package gripwright.hand;

import gripwright.finding.Message;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** Which hands hold. */
public enum Hands implements Message {
  /** Both hands together; the load is the total on the two. */
  BOTH(Side.LEFT, Side.RIGHT),
  /** The left hand alone; the load is all on it. */
  LEFT(Side.LEFT),
  /** The right hand alone; the load is all on it. */
  RIGHT(Side.RIGHT);

  private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final List<Side> sides;

  Hands(Side... sides) {
    this.sides = List.of(sides);
  }

  /** Returns the sides that hold, left first. */
  public List<Side> sides() {
    return sides;
  }

  /** Returns the word written in a plan. */
  public String word() {
    return word;
  }

  /** Finds what a word stands for. */
  public static Optional<Hands> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Hands value : values()) {
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
    return this == BOTH ? "common.either-hand" : "common." + word + "-hand";
  }
}
