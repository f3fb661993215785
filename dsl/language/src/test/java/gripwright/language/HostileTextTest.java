package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Texts made to cost time or memory are told off in moderate time. The limits are generous, since a
 * build machine is busy: what is looked for is growth with the square of the text.
 */
class HostileTextTest {

  private static final Duration MODERATE = Duration.ofSeconds(20);

  private static List<String> codes(String text) {
    return assertTimeout(
        MODERATE,
        () ->
            Gripwright.read("x.grip", "language 1\n" + text).compile().findings().stream()
                .map(finding -> finding.code())
                .distinct()
                .toList());
  }

  private static String times(int count, String text) {
    return IntStream.range(0, count)
        .mapToObj(i -> text.replace("%", Integer.toString(i)))
        .collect(Collectors.joining());
  }

  @Test
  void manyUnknownNamesAmongManyKnownOnes() {
    String known = times(12_000, "grip g% {\n fingers index\n family single\n}\n");
    String unknown =
        times(
            8_000, "grip h% {\n fingers index\n family single\n needs familiar gg%x 3 months\n}\n");
    assertEquals(
        List.of("name.unknown", "syntax.more"), codes(known + unknown).stream().sorted().toList());
  }

  @Test
  void manyAthletesEachWithLinesOfTheirOwn() {
    String athletes =
        times(
            1_000,
            """
            athlete a% {
              born 1990-01-01
              body-mass 70 kg
              trained 60 months
              ability french 8a
              hand { length 190 mm }
              available mon 90 min, wed 90 min, fri 90 min
              equipment { edges 20 mm  added 1 kg steps to 60 kg }
            }
            """);
    String names = times(1_000, ", a%").substring(2);
    String session =
        " session s% 1 per week {\n"
            + "  do max-holds on half-crimp edge 20 mm\n".repeat(20)
            + " }\n";
    String plan =
        "plan p {\n for "
            + names
            + "\n from 2027-01-11\n block a 4 weeks {\n"
            + times(20, session)
            + times(1_000, " only for a% { advance load 2 pc weekly }\n").replace("pc", "%")
            + " }\n}\n";
    assertEquals(List.of("value.too-many"), codes(athletes + plan));
  }

  @Test
  void repeatsOfRepeats() {
    String deep =
        "protocol p {\n"
            + "repeat 1000 resting 1 s {".repeat(150)
            + "hold 7 s at 50 % max"
            + "}".repeat(150)
            + "\n}\n";
    assertEquals(List.of("value.too-many"), codes(deep));
  }

  @Test
  void hugeNumbers() {
    String nines = "9".repeat(300);
    List<String> codes =
        codes(
            "protocol p {\n repeat "
                + nines
                + " resting "
                + nines
                + " s {\n  hold "
                + nines
                + " s at "
                + nines
                + " % max\n }\n}\n");
    assertTrue(codes.contains("value.level"), codes.toString());
    assertTrue(codes.contains("value.count"), codes.toString());
  }
}
