package gripwright.rule.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.PropertyReaders;
import gripwright.expression.Type;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The catalogue of properties and their readers, which are written apart from each other. */
class ReadersTest {

  @ParameterizedTest
  @EnumSource
  void everyPropertyHasAReaderAndEveryReaderAProperty(Kind kind) {
    Set<String> properties = new TreeSet<>();
    Property.of(kind).forEach(property -> properties.add(property.name()));
    assertEquals(properties, new TreeSet<>(Readers.ALL.names(kind)));
  }

  @ParameterizedTest
  @EnumSource
  void readerReturnsTheTypeOfItsProperty(Kind kind) {
    for (Property property : Property.of(kind)) {
      assertEquals(
          expected(property.type()), Readers.ALL.of(property).getClass(), property.toString());
    }
  }

  private static Class<?> expected(Type type) {
    if (type == Type.Plain.TRUTH) {
      return PropertyReaders.TruthAccess.class;
    }
    return type.ordered() ? PropertyReaders.NumberAccess.class : PropertyReaders.ObjectAccess.class;
  }

  @Test
  void unknownPropertyIsRefused() {
    Property unknown = new Property(Kind.WEEK, "colour", Type.Plain.TRUTH, "Not there.");
    assertThrows(IllegalArgumentException.class, () -> Readers.ALL.of(unknown));
  }
}
