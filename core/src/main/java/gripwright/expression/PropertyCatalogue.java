package gripwright.expression;

import gripwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All properties that an expression can name, by kind and name, with their types and meaning. */
final class PropertyCatalogue {

  private static final Map<Kind, Map<String, Property>> PROPERTIES = properties();

  private PropertyCatalogue() {}

  static List<Property> of(Kind kind) {
    return List.copyOf(named(kind).values());
  }

  static Optional<Property> find(Kind kind, String name) {
    return Optional.ofNullable(named(kind).get(name));
  }

  private static Map<String, Property> named(Kind kind) {
    return PROPERTIES.getOrDefault(kind, Map.of());
  }

  private static Map<Kind, Map<String, Property>> properties() {
    List<Property> all = new ArrayList<>();
    ExerciseProperties.addTo(all);
    SessionProperties.addTo(all);
    SpanProperties.addTo(all);
    AthleteProperties.addTo(all);
    FingerProperties.addTo(all);
    Map<Kind, Map<String, Property>> byKind = new EnumMap<>(Kind.class);
    for (Property property : all) {
      Property before =
          byKind
              .computeIfAbsent(property.owner(), k -> new LinkedHashMap<>())
              .put(property.name(), property);
      if (before != null) {
        throw new IllegalStateException(property.owner() + " has two " + property.name());
      }
    }
    return byKind;
  }

  /** Collects the properties of one kind. */
  static final class Of {

    private final Kind kind;
    private final List<Property> properties;

    Of(Kind kind, List<Property> properties) {
      this.kind = kind;
      this.properties = properties;
    }

    Of quantity(String name, Dimension dimension, String doc) {
      return number(name, new Type.Quantity(dimension), doc);
    }

    Of time(String name, String doc) {
      return quantity(name, Dimension.TIME, doc);
    }

    Of count(String name, String doc) {
      return quantity(name, Dimension.NUMBER, doc);
    }

    Of number(String name, Type type, String doc) {
      return add(name, type, doc);
    }

    Of truth(String name, String doc) {
      return add(name, Type.Plain.TRUTH, doc);
    }

    Of word(String name, Vocabulary vocabulary, String doc) {
      return add(name, new Type.Word(vocabulary), doc);
    }

    Of one(String name, Kind other, String doc) {
      return add(name, new Type.One(other), doc);
    }

    Of many(String name, Kind other, String doc) {
      return add(name, new Type.Many(other), doc);
    }

    private Of add(String name, Type type, String doc) {
      properties.add(new Property(kind, name, type, doc));
      return this;
    }
  }
}
