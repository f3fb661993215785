package gripwright.finding;

import java.util.Map;

/**
 * Something that can be put into words: a key of the sentence in a bundle, and its arguments. Core
 * reports everything as data; no logic reads a sentence.
 */
public interface Message {

  /** Returns the key of the sentence in a bundle, such as {@code cause.pain}. */
  String key();

  /**
   * Returns the arguments by their names in the sentence. An argument may be a message itself, or a
   * collection of arguments. By default there are none.
   */
  default Map<String, Object> arguments() {
    return Map.of();
  }
}
