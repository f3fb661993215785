package gripwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestTest {

  private static final List<String> GRIPS =
      List.of("half-crimp", "full-crimp", "open-four", "front-three", "front-two", "back-three");

  @Test
  void aTypingMistakeFindsItsName() {
    assertEquals(Optional.of("half-crimp"), Nearest.to("half-crmp", GRIPS));
    assertEquals(Optional.of("half-crimp"), Nearest.to("Half-Crimp", GRIPS));
    assertEquals(Optional.of("open-four"), Nearest.to("opne-four", GRIPS));
    assertEquals(Optional.of("front-three"), Nearest.to("front-tree", GRIPS));
  }

  @Test
  void somethingElseFindsNothing() {
    assertEquals(Optional.empty(), Nearest.to("pinch", GRIPS));
    assertEquals(Optional.empty(), Nearest.to("", GRIPS));
    assertEquals(Optional.empty(), Nearest.to("x", List.of("y")));
    assertEquals(Optional.empty(), Nearest.to("a".repeat(10_000), GRIPS));
  }

  @Test
  void atMostFourAreSuggestedNearestFirst() {
    assertEquals(
        List.of("step", "stem", "steps", "stew"),
        Nearest.all("step", List.of("steps", "stew", "stop", "step", "stem", "strep")));
  }

  @Test
  void distancesAreThoseOfTheTextbook() {
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(1, Nearest.distance("ab", "ba"));
    assertEquals(3, Nearest.distance("ca", "abc")); // optimal string alignment, not full Damerau
  }

  @Property(tries = 300)
  void distanceIsSymmetricAndZeroOnlyForEqual(
      @ForAll @AlphaChars @StringLength(max = 8) String a,
      @ForAll @AlphaChars @StringLength(max = 8) String b) {
    int distance = Nearest.distance(a, b);
    assertEquals(distance, Nearest.distance(b, a));
    assertEquals(a.equals(b), distance == 0);
  }
}
