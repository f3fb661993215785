package gripwright.finding;

import java.util.Map;

/**
 * A sentence written by a coach in a plan, or in the catalogue. A bundle may translate sentences of
 * the catalogue; others are shown as written.
 *
 * @param text as written
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
