package gripwright.rule;

import gripwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** All properties by kind and name, and how each is read. */
final class PropertyTable {

  /** How a property is read. */
  sealed interface Access {}

  /** Reads a number, level, grade or date; NaN where it is missing. */
  record NumberAccess(ToDoubleFunction<Object> read) implements Access {}

  /** Reads a truth. */
  record TruthAccess(Predicate<Object> read) implements Access {}

  /** Reads a word, a thing or a list of things; null where it is missing. */
  record ObjectAccess(Function<Object, @Nullable Object> read) implements Access {}

  /** A property and how it is read. */
  record Entry(Property property, Access access) {}

  private static final Map<Kind, Map<String, Entry>> ENTRIES = entries();

  private PropertyTable() {}

  static List<Property> of(Kind kind) {
    return table(kind).values().stream().map(Entry::property).toList();
  }

  static Optional<Entry> find(Kind kind, String name) {
    return Optional.ofNullable(table(kind).get(name));
  }

  private static Map<String, Entry> table(Kind kind) {
    return ENTRIES.getOrDefault(kind, Map.of());
  }

  private static Map<Kind, Map<String, Entry>> entries() {
    List<Entry> all = new ArrayList<>();
    ExerciseProperties.addTo(all);
    SessionProperties.addTo(all);
    SpanProperties.addTo(all);
    AthleteProperties.addTo(all);
    FingerProperties.addTo(all);
    Map<Kind, Map<String, Entry>> byKind = new EnumMap<>(Kind.class);
    for (Entry entry : all) {
      Property property = entry.property();
      Entry before =
          byKind
              .computeIfAbsent(property.owner(), k -> new LinkedHashMap<>())
              .put(property.name(), entry);
      if (before != null) {
        throw new IllegalStateException(property.owner() + " has two " + property.name());
      }
    }
    return byKind;
  }

  /** Collects the properties of one kind, whose things are of one class. */
  @SuppressWarnings("unchecked")
  static final class Of<V> {
    private final Kind kind;
    private final List<Entry> entries;

    /** The class says what the things are; types are checked before anything is read. */
    @SuppressWarnings("unused")
    Of(Kind kind, Class<V> view, List<Entry> entries) {
      this.kind = kind;
      this.entries = entries;
    }

    Of<V> quantity(String name, Dimension dimension, String doc, ToDoubleFunction<V> read) {
      return number(name, new Type.Quantity(dimension), doc, read);
    }

    Of<V> time(String name, String doc, ToDoubleFunction<V> seconds) {
      return quantity(name, Dimension.TIME, doc, seconds);
    }

    Of<V> count(String name, String doc, ToDoubleFunction<V> read) {
      return quantity(name, Dimension.NUMBER, doc, read);
    }

    Of<V> number(String name, Type type, String doc, ToDoubleFunction<V> read) {
      return add(name, type, doc, new NumberAccess((ToDoubleFunction<Object>) read));
    }

    Of<V> truth(String name, String doc, Predicate<V> read) {
      return add(name, Type.Plain.TRUTH, doc, new TruthAccess((Predicate<Object>) read));
    }

    Of<V> word(String name, Vocabulary vocabulary, String doc, Function<V, @Nullable String> read) {
      return object(name, new Type.Word(vocabulary), doc, read);
    }

    Of<V> one(String name, Kind other, String doc, Function<V, @Nullable Object> read) {
      return object(name, new Type.One(other), doc, read);
    }

    Of<V> many(String name, Kind other, String doc, Function<V, List<?>> read) {
      return object(name, new Type.Many(other), doc, read);
    }

    private Of<V> object(
        String name, Type type, String doc, Function<V, ? extends @Nullable Object> read) {
      return add(name, type, doc, new ObjectAccess((Function<Object, @Nullable Object>) read));
    }

    private Of<V> add(String name, Type type, String doc, Access access) {
      entries.add(new Entry(new Property(kind, name, type, doc), access));
      return this;
    }
  }
}
