package gripwright.expression;

import java.util.List;
import java.util.Optional;

/**
 * A property that a rule can read. All properties of all kinds are listed by {@link #of(Kind)}.
 *
 * <p>Names and their explanations are documentation of the language that only its reference shows,
 * so they are in English and not in the message bundles.
 *
 * @param owner the kind of thing with this property
 * @param name the word written in a rule
 * @param type type of its value
 * @param doc one sentence on its meaning
 */
public record Property(Kind owner, String name, Type type, String doc) {

  /** Returns the properties of a kind, in the order a reference lists them. */
  public static List<Property> of(Kind kind) {
    return PropertyCatalogue.of(kind);
  }

  /** Finds a property by its name. */
  public static Optional<Property> find(Kind kind, String name) {
    return PropertyCatalogue.find(kind, name);
  }
}
