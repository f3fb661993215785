package gripwright.finding;

import java.util.Map;

/**
 * Something that can be put into words: a key, by which wording finds the sentence, and the facts
 * in it. Core says what it has to say as data; no logic reads a sentence.
 */
public interface Message {

  /** Returns the key of the sentence in a bundle, such as {@code cause.pain}. */
  String key();

  /**
   * Returns the facts by the names that the sentence has for them. A fact may be a message itself,
   * or a collection of facts. None unless a message has some.
   */
  default Map<String, Object> arguments() {
    return Map.of();
  }
}
