package gripwright.hand;

import gripwright.finding.Message;
import gripwright.quantity.Range;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A finger joint, from the palm outwards. */
public enum Joint {
  /** Metacarpophalangeal joint, the knuckle. */
  MCP,
  /** Proximal interphalangeal joint. */
  PIP,
  /** Distal interphalangeal joint. */
  DIP;

  /**
   * Returns what the middle of a range of flexion can be, in a grip as in a hand. Wide on purpose:
   * our own.
   */
  public Range middleOfRange() {
    return switch (this) {
      case MCP -> Range.MCP_CENTRE;
      case PIP -> Range.PIP_CENTRE;
      case DIP -> Range.DIP_CENTRE;
    };
  }

  /**
   * Returns what the greater end of a grip's band can be: a middle joint that is only bent back
   * holds nothing. How far the other two bend back, {@link #middleOfRange} says. Our own.
   */
  public Range greaterEndOfBand() {
    return this == PIP ? Range.PIP_HIGH : Range.ANGLE;
  }

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Joint> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Joint value : values()) {
      if (value.word().equals(word)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  /**
   * A joint as coaches name it, for sentences.
   *
   * @param joint which
   */
  public record Name(Joint joint) implements Message {

    /** Refuses null. */
    public Name {
      Objects.requireNonNull(joint, "joint");
    }

    @Override
    public String key() {
      return switch (joint) {
        case MCP -> "common.knuckle";
        case PIP -> "common.middle-joint";
        case DIP -> "common.end-joint";
      };
    }
  }

  /** Returns the word. */
  @Override
  public String toString() {
    return word();
  }
}
