package gripwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.Type;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The numbers behind a broken rule. */
class BreachWordsTest {

  /** A name such as {@code since-test} is one of the language and not of a coach's sentence. */
  @Test
  void whatARuleComparesHasAPhraseWhereItsNameIsNoWord() {
    Set<String> names =
        Arrays.stream(Kind.values())
            .flatMap(kind -> Property.of(kind).stream())
            .filter(BreachWordsTest::isCompared)
            .map(Property::name)
            .filter(name -> name.contains("-"))
            .collect(Collectors.toCollection(TreeSet::new));
    names.removeIf(name -> Wording.english().messages().find("breach.called-" + name).isPresent());
    assertEquals(Set.of(), names);
  }

  private static boolean isCompared(Property property) {
    return property.type() instanceof Type.Quantity
        || property.type() == Type.Plain.LEVEL
        || property.type() == Type.Plain.GRADE;
  }
}
