package gripwright.finding;

import java.util.Map;

/**
 * A sentence that somebody wrote: a coach in a plan, or the catalogue. A bundle may have what the
 * catalogue says in other words; anything else stands as it was written.
 *
 * @param text as it was written
 */
public record WrittenText(String text) implements Message {

  @Override
  public String key() {
    return "common.written";
  }

  @Override
  public Map<String, Object> arguments() {
    return Map.of("text", text);
  }

  /** Returns the text. */
  @Override
  public String toString() {
    return text;
  }
}
