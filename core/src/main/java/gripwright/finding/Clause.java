package gripwright.finding;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A message that needs no type of its own, such as a part of a longer one.
 *
 * @param key key of its sentence
 * @param arguments facts by name
 */
public record Clause(String key, Map<String, Object> arguments) implements Message {

  /** Copies the facts, in an order that is always the same. */
  public Clause {
    arguments = Collections.unmodifiableMap(new TreeMap<>(arguments));
  }

  /** Returns a message without facts. */
  public static Clause of(String key) {
    return new Clause(key, Map.of());
  }

  /** Returns a message with one fact. */
  public static Clause of(String key, String name, Object fact) {
    return new Clause(key, Map.of(name, fact));
  }
}
