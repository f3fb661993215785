package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.PropertyReaders;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** The readers of every property of the catalogue from views of a schedule. */
public final class Readers implements PropertyReaders {

  /** The readers of all properties. */
  public static final Readers ALL = new Readers();

  private final Map<Kind, Map<String, Access>> byKind = new EnumMap<>(Kind.class);

  private Readers() {
    ExerciseReaders.addTo(this);
    SessionReaders.addTo(this);
    SpanReaders.addTo(this);
    AthleteReaders.addTo(this);
    FingerReaders.addTo(this);
  }

  /**
   * Returns the reader of a property.
   *
   * @throws IllegalArgumentException if nothing reads it
   */
  @Override
  public Access of(Property property) {
    Access access = byKind.getOrDefault(property.owner(), Map.of()).get(property.name());
    if (access == null) {
      throw new IllegalArgumentException(
          "nothing reads " + property.name() + " of " + property.owner().word());
    }
    return access;
  }

  /** Returns the names of the readable properties of a kind. */
  Set<String> names(Kind kind) {
    return Set.copyOf(byKind.getOrDefault(kind, Map.of()).keySet());
  }

  <V> Of<V> of(Kind kind) {
    return new Of<>(byKind.computeIfAbsent(kind, k -> new HashMap<>()));
  }

  /** Collects the readers of one kind, whose views all have the same class. */
  @SuppressWarnings("unchecked") // expressions are typed before anything is read
  static final class Of<V> {

    private final Map<String, Access> readers;

    private Of(Map<String, Access> readers) {
      this.readers = readers;
    }

    Of<V> number(String name, ToDoubleFunction<V> read) {
      return add(name, new NumberAccess((ToDoubleFunction<Object>) read));
    }

    Of<V> truth(String name, Predicate<V> read) {
      return add(name, new TruthAccess((Predicate<Object>) read));
    }

    Of<V> object(String name, Function<V, ? extends @Nullable Object> read) {
      return add(name, new ObjectAccess((Function<Object, @Nullable Object>) read));
    }

    private Of<V> add(String name, Access access) {
      if (readers.put(name, access) != null) {
        throw new IllegalStateException("two readers of " + name);
      }
      return this;
    }
  }
}
