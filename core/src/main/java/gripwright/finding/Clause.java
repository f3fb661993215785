package gripwright.finding;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A message that needs no type of its own, such as a part of a longer one.
 *
 * @param key key of its sentence
 * @param arguments arguments by name
 */
public record Clause(String key, Map<String, Object> arguments) implements Message {

  /** Copies the arguments, in a fixed order. */
  public Clause {
    arguments = Collections.unmodifiableMap(new TreeMap<>(arguments));
  }

  /** Returns a message without arguments. */
  public static Clause of(String key) {
    return new Clause(key, Map.of());
  }

  /** Returns a message with one argument. */
  public static Clause of(String key, String name, Object fact) {
    return new Clause(key, Map.of(name, fact));
  }

  /** Returns this message with one more argument, or with a new value for it. */
  public Clause with(String name, Object fact) {
    Map<String, Object> more = new TreeMap<>(arguments);
    more.put(name, fact);
    return new Clause(key, more);
  }
}
