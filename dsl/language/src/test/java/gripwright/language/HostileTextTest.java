package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.finding.ReportedFinding;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Texts made to cost time or memory are refused after moderate work, which is counted in steps, to
 * detect quadratic growth.
 */
@CountedWork
class HostileTextTest {

  /** Constant number of steps for a text, and steps for each of its characters. */
  private static final long MOST_STEPS = 10_000_000;

  private static final long MOST_STEPS_A_CHARACTER = 500;

  private static List<ReportedFinding> findings(String text) {
    return Work.atMost(
        MOST_STEPS + MOST_STEPS_A_CHARACTER * text.length(),
        () -> Gripwright.read("x.grip", "language 1\n" + text).compile().findings());
  }

  private static List<String> codes(String text) {
    return findings(text).stream().map(finding -> finding.code()).distinct().toList();
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

  private static String athletes(int count) {
    return times(
        count,
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
  }

  private static String plan(String name, int athletes, String weeks, String header, String lines) {
    return "plan "
        + name
        + " {\n for "
        + times(athletes, ", a%").substring(2)
        + "\n from 2027-01-11\n"
        + header
        + " block base "
        + weeks
        + " weeks {\n session s 2 per week {\n"
        + lines
        + " }\n }\n}\n";
  }

  private static final String LINE = "  do max-holds on half-crimp edge 20 mm\n";

  @Test
  void aPlanOfTenThousandWeeks() {
    assertEquals(List.of("value.time"), codes(athletes(1) + plan("p", 1, "10000", "", LINE)));
    assertEquals(
        List.of("value.too-many"),
        codes(
            athletes(1)
                + plan("p", 1, "5", "", "")
                    .replace(
                        " block base 5 weeks {\n session s 2 per week {\n }\n }\n",
                        times(
                            600,
                            " block b% 1 weeks {\n session s 2 per week {\n"
                                + LINE
                                + " }\n }\n"))));
  }

  @Test
  void tenThousandAthletes() {
    assertEquals(List.of(), codes(athletes(10_000)));
    assertEquals(
        List.of("value.too-many"), codes(athletes(10_000) + plan("p", 10_000, "4", "", LINE)));
  }

  @Test
  void manyPlansForManyAthletesAreOneMistake() {
    StringBuilder plans = new StringBuilder(athletes(200));
    for (int i = 0; i < 500; i++) {
      plans.append(plan("p" + i, 200, "20", "", LINE));
    }
    List<ReportedFinding> findings = findings(plans.toString());
    assertEquals(List.of("value.too-many"), findings.stream().map(f -> f.code()).toList());
    assertTrue(findings.get(0).message().contains("of all plans together"));
  }

  @Test
  void aSquadForTenYearsWithSevenSessionsAWeek() {
    String sessions = times(7, " session s% 1 per week {\n" + LINE + " }\n");
    String squad = plan("p", 109, "520", "", "").replace(" session s 2 per week {\n }\n", sessions);
    assertEquals(List.of("value.too-many"), codes(athletes(109) + squad));
  }

  @Test
  void manyWaivers() {
    String waivers = times(20_000, " waive hard-days-apart in base week 1 because \"w%\"\n");
    assertEquals(
        List.of("plan.waiver-unused", "syntax.more"),
        codes(athletes(1) + plan("p", 1, "1", waivers, LINE)).stream()
            .filter(code -> !code.equals("plan.no-test"))
            .sorted()
            .toList());
  }

  @Test
  void aRuleThatComparesAllWithAllForEach() {
    String rules =
        """
        rules club {
          rule all-with-all {
            severity warning
            for session
            require every(plan.days: count(plan.exercises where
              time-under-load <= minutes and total-load <= body-mass * 10) >= 0)
            message "all with all"
          }
        }
        log a0 {
          2026-12-20 test half-crimp edge 20 mm hold 7 s load 140 kg
        }
        """;
    String text = athletes(1) + rules + plan("p", 1, "260", " rules club\n", LINE);
    List<ReportedFinding> findings =
        Work.atMost(
            200_000_000,
            () ->
                Gripwright.read(
                        "x.grip",
                        "language 1\n" + text,
                        ReadOptions.standard()
                            .withBudget(Budget.standard().with(Limit.WORK, 1_000_000)))
                    .compile()
                    .findings());
    assertEquals(List.of("budget.work"), findings.stream().map(f -> f.code()).toList());
    assertTrue(findings.get(0).message().contains("`all-with-all`"), findings.get(0).message());
  }

  @Test
  void manyTests() {
    String tests = " retest half-crimp edge 20 mm hold 7 s every 1 weeks\n".repeat(2_000);
    assertEquals(List.of("value.too-many"), codes(athletes(1) + plan("p", 1, "500", tests, LINE)));
  }

  @Test
  void manyGripsToChooseFrom() {
    String grips = times(3_000, "grip g% {\n fingers index\n family single\n}\n");
    String best =
        "  do max-holds on best of " + times(3_000, ", g%").substring(2) + " edge 20 mm\n";
    assertEquals(
        List.of("value.too-many"), codes(athletes(1) + grips + plan("p", 1, "4", "", best)));
  }

  @Test
  void manyPlacesOfOneMistakeAreCounted() {
    ReportedFinding finding = findings(athletes(100) + plan("p", 100, "4", "", LINE)).get(0);
    String hint = String.valueOf(finding.hint());
    assertTrue(hint.contains("and 88 more") && hint.length() < 1_000, hint);
  }

  @Test
  void aNumberAndANameOfManyLetters() {
    String nines = "9".repeat(100_000);
    assertEquals(List.of("value.time"), codes(athletes(1) + plan("p", 1, nines, "", LINE)));
    List<ReportedFinding> findings = findings("log " + "x".repeat(3_000_000) + " {\n}\n");
    assertEquals(1, findings.size());
    assertTrue(findings.get(0).message().length() < 2_000);
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
