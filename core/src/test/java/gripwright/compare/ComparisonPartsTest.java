package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.compare.ComparisonParts.Kind;
import gripwright.compare.ComparisonParts.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ComparisonPartsTest {

  private static Comparison comparison(String name, int persons, int draws) {
    return Comparison.builder(name, Studies.cohort(persons).build())
        .arm(Arm.of("a", Studies.p1()))
        .arm(Arm.of("b", Studies.p2()))
        .arm(Arm.withoutTraining("none"))
        .draws(draws)
        .measures(List.of(Measure.IMPULSE_ABOVE_CF, Measure.END_RESERVE, Measure.FIRST_FAILURE))
        .build();
  }

  private static ComparisonRun run(Comparison comparison) {
    return ComparisonRun.of(comparison, List.of(), List.of(), List.of());
  }

  /** Evaluates each part by itself, as if on a machine of its own, in some order. */
  private static Map<Part, byte[]> evaluated(Comparison comparison, long order) {
    List<Part> parts = new ArrayList<>(run(comparison).parts().all());
    Collections.shuffle(parts, new Random(order));
    Map<Part, byte[]> evaluated = new HashMap<>();
    for (Part part : parts) {
      evaluated.put(part, run(comparison).parts().evaluate(part));
    }
    return evaluated;
  }

  @Property(tries = 5)
  void partsGiveTheResultOfOneMachine(
      @ForAll @IntRange(min = 2, max = 6_000) int persons,
      @ForAll @IntRange(min = 1_000, max = 10_000) int draws,
      @ForAll long order) {
    Comparison comparison = comparison("two", persons, draws);
    Map<Part, byte[]> evaluated = evaluated(comparison, order);
    assertEquals(
        run(comparison).run(RunOptions.standard()),
        run(comparison).parts().result(RunOptions.standard().threads(3), evaluated::get));
  }

  @Test
  void partsCoverEveryDrawAndPersonOnce() {
    List<Part> parts = run(comparison("two", 5_000, 9_000)).parts().all();
    assertEquals(
        List.of(
            new Part(0, Kind.DRAWS, 0, 4096),
            new Part(0, Kind.DRAWS, 4096, 8192),
            new Part(0, Kind.DRAWS, 8192, 9000),
            new Part(0, Kind.PERSONS, 0, 4096),
            new Part(0, Kind.PERSONS, 4096, 5000)),
        parts);
  }

  private static void assertRefused(Comparison comparison, Map<Part, byte[]> evaluated) {
    ComparisonParts parts = run(comparison).parts();
    assertThrows(
        IllegalArgumentException.class, () -> parts.result(RunOptions.standard(), evaluated::get));
  }

  @Test
  void whatBelongsElsewhereOrIsDamagedIsRefused() {
    Comparison comparison = comparison("two", 10, 5_000);
    Map<Part, byte[]> whole = evaluated(comparison, 1);
    Part first = new Part(0, Kind.DRAWS, 0, 4096);
    Part second = new Part(0, Kind.DRAWS, 4096, 5000);
    byte[] good = whole.get(first);
    List<byte[]> wrong =
        List.of(
            new byte[0],
            whole.get(second),
            Arrays.copyOf(good, good.length - 1),
            Arrays.copyOf(good, good.length + 1),
            evaluated(comparison("others", 10, 5_000), 1).get(first));
    for (byte[] each : wrong) {
      Map<Part, byte[]> spoilt = new HashMap<>(whole);
      spoilt.put(first, each);
      assertRefused(comparison, spoilt);
    }
    whole.remove(second);
    assertRefused(comparison, whole);
    ComparisonParts parts = run(comparison).parts();
    assertThrows(
        IllegalArgumentException.class, () -> parts.evaluate(new Part(0, Kind.DRAWS, 0, 100)));
    assertThrows(IllegalArgumentException.class, () -> new Part(0, Kind.DRAWS, 100, 100));
  }

  @Test
  void aComparisonWithErrorsHasNoParts() {
    Comparison comparison =
        comparison("two", 10, 1_000).toBuilder()
            .match(
                new Comparison.Match(Measure.IMPULSE, "a", "b", "sets", OptionalDouble.of(0.001)))
            .build();
    ComparisonResult result = run(comparison).run(RunOptions.standard());
    ComparisonParts parts = run(comparison).parts();
    assertEquals(result, parts.result(RunOptions.standard(), part -> null));
    assertFalse(result.usable());
    assertEquals(List.of(), parts.all());
  }
}
