package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.schedule.PlannedExercise;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Doubtful tests make loads lower and never higher. */
class DoubtfulTestsTest {

  private static final String TEXT =
      """
      language 1
      athlete stig {
        born 1995-04-02  body-mass 60 kg  trained 40 months  ability french 7b
        hand { length 186 mm }
        available mon 70 min, wed 70 min, fri 70 min
        equipment { edges 20 mm  added 0.5 kg steps to 200 kg  assist 0.5 kg steps to 40 kg }
      }
      protocol own {
        repeat 3 resting 3 min {
          hold 10 s at 70 % max
        }
      }
      log stig {
      LINES
      }
      plan winter {
        for stig
        from 2027-01-11
        block a 1 weeks {
          session s 1 per week {
            do own on half-crimp edge 20 mmHANDS
          }
        }
      }
      """;

  private static Compilation compiled(String hands, String... lines) {
    String text =
        TEXT.replace("LINES", String.join("\n", lines))
            .replace("HANDS", hands.isEmpty() ? "" : " " + hands);
    return Gripwright.read("doubtful.grip", text).compile();
  }

  private static String test(String date, String hands, String result) {
    return date + " test half-crimp edge 20 mm " + hands + " " + result;
  }

  private static Optional<Double> load(String hands, String... lines) {
    return compiled(hands, lines).plans().get(0).sessions().stream()
        .flatMap(session -> session.exercises().stream())
        .map(PlannedExercise::totalLoad)
        .map(load -> load.kilograms())
        .findFirst();
  }

  private static List<String> codes(String hands, String... lines) {
    return compiled(hands, lines).findings().stream().map(ReportedFinding::code).toList();
  }

  @Test
  void aSingleTestCountsAtMostAsThePlausibleLimit() {
    String likely = test("2027-01-04", "left hand", "hold 7 s load 78 kg");
    for (String load : List.of("79 kg", "120 kg", "155 kg", "300 kg", "784 kg")) {
      String lone = test("2027-01-04", "left hand", "hold 7 s load " + load);
      assertEquals(load("left hand", likely), load("left hand", lone), load);
      assertTrue(codes("left hand", lone).get(0).startsWith("log.test-"), load);
    }
    assertEquals(List.of(), codes("left hand", likely));
  }

  @Test
  void aSecondTestConfirmsTheFirst() {
    String first = test("2027-01-02", "", "hold 7 s load 140 kg");
    String second = test("2027-01-04", "", "hold 7 s load 138 kg");
    assertTrue(load("", first, second).orElseThrow() > load("", first).orElseThrow() + 2);
    assertEquals(List.of(), codes("", first, second));
  }

  @Test
  void aTestTooShortForTheModelGivesNoLoad() {
    assertEquals(Optional.empty(), load("", test("2027-01-04", "", "hold 1 s load 100 kg")));
  }

  @Test
  void anOldTestGivesLowerLoadsAndAVeryOldOneNone() {
    double fresh = load("", test("2027-01-10", "", "hold 7 s load 90 kg")).orElseThrow();
    double half = load("", test("2026-07-01", "", "hold 7 s load 90 kg")).orElseThrow();
    double old = load("", test("2025-01-11", "", "hold 7 s load 90 kg")).orElseThrow();
    assertTrue(half < fresh - 2, half + " and " + fresh);
    assertTrue(old < half - 2, old + " and " + half);
    assertEquals(Optional.empty(), load("", test("2025-01-10", "", "hold 7 s load 90 kg")));
    assertEquals(List.of("log.test-old"), codes("", test("2025-01-11", "", "hold 7 s load 90 kg")));
  }

  @Test
  void factsAreCheckedWithoutAPlanToo() {
    String text =
        TEXT.substring(0, TEXT.indexOf("plan winter"))
            .replace("LINES", test("2027-01-04", "", "hold 7 s load 300 kg"));
    List<String> codes =
        Gripwright.read("facts.grip", text).compile().findings().stream()
            .map(ReportedFinding::code)
            .toList();
    assertEquals(List.of("log.test-impossible"), codes);
  }
}
