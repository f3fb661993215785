package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.ReportedFinding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Merging of logs, with lines in any order. */
class LogMergeProperties {

  private static final String CLUB =
      """
      language 1
      athlete eir {
        born 1994-03-02
        body-mass 61 kg
        trained 60 months
        ability french 7c
        hand { length 185 mm }
        available tue 90 min
        equipment { edges 20 mm }
      }
      protocol ones { hold 10 s at 70 % max }
      """;

  @Provide
  Arbitrary<List<String>> lines() {
    Arbitrary<String> day = Arbitraries.integers().between(1, 4).map(d -> "2027-01-0" + d + " ");
    Arbitrary<String> what =
        Arbitraries.of(
            "test half-crimp edge 20 mm hold 7 s load 80 kg",
            "test half-crimp edge 20 mm hold 7 s load 81 kg",
            "session s { ones on half-crimp edge 20 mm: sets 4, effort 7 }",
            "session s { ones on half-crimp edge 20 mm: sets 3, effort 8 }",
            "climbing hard 120 min effort 8",
            "skipped s",
            "body-mass 100 kg",
            "body-mass 61 kg",
            "body-mass 60 kg",
            "pain ring a2 left 3",
            "pain ring a2 left 4 sharp");
    return day.flatMap(d -> what.map(w -> d + w)).list().ofMaxSize(12);
  }

  private static Reading read(List<List<String>> blocks) {
    StringBuilder text = new StringBuilder(CLUB);
    for (List<String> block : blocks) {
      text.append("log eir {\n").append(String.join("\n", block)).append("\n}\n");
    }
    return Gripwright.read("club.grip", text.toString());
  }

  private static Log log(Reading reading) {
    return reading.logs().getOrDefault("eir", Log.empty("eir"));
  }

  @Property
  void blocksAndOrderDoNotMatter(@ForAll("lines") List<String> lines, @ForAll Random random) {
    List<String> shuffled = new ArrayList<>(lines);
    Collections.shuffle(shuffled, random);
    int cut = shuffled.isEmpty() ? 0 : random.nextInt(shuffled.size());
    Reading one = read(List.of(lines));
    Reading other = read(List.of(shuffled.subList(cut, shuffled.size()), shuffled.subList(0, cut)));
    assertEquals(log(one), log(other));
    assertEquals(codes(one), codes(other));
    assertEquals(
        lines.stream().distinct().count(), log(one).entries().size(), "nothing else is left out");
  }

  private static List<String> codes(Reading reading) {
    return reading.findings().stream().map(ReportedFinding::code).sorted().toList();
  }

  @Example
  void theSecondOfTwoSaysWhereTheFirstIs() {
    Reading reading =
        read(List.of(List.of("2027-01-01 body-mass 61 kg"), List.of("2027-01-01 body-mass 60 kg")));
    assertEquals(List.of("log.conflict"), codes(reading));
    assertEquals(16, reading.findings().get(0).line());
    assertEquals("first-written-here", reading.located().get(0).related().get(0).key());
    assertEquals(
        60, log(reading).bodyMassOn(java.time.LocalDate.of(2027, 1, 2)).orElseThrow().kilograms());
    assertEquals(2, log(reading).of(LogEntry.BodyMass.class).size());
  }

  @Example
  void anUnknownExerciseLosesItselfAndNothingElse() {
    Reading reading =
        read(
            List.of(
                List.of(
                    "2027-01-01 session s {",
                    "  ones on half-crimp edge 20 mm: sets 4",
                    "  twos on half-crimp edge 20 mm: sets 4",
                    "  ones on half-crmp edge 20 mm: sets 4",
                    "}",
                    "2027-01-02 skipped s")));
    assertEquals(List.of("name.unknown", "name.unknown"), codes(reading));
    assertEquals(2, log(reading).entries().size());
    assertEquals(1, ((LogEntry.Trained) log(reading).entries().get(0)).done().size());
  }
}
