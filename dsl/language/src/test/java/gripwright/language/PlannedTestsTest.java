package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Planned tests of every kind, from text to dates. */
class PlannedTestsTest {

  private static final LocalDate FROM = LocalDate.of(2027, 1, 11);

  private static final String PLAN =
      """
      language 1
      athlete ida "Ida Berg" {
        born 1995-03-03
        body-mass 60 kg
        trained 70 months as of 2027-01-11
        ability french 7c
        hand { length 178 mm }
        familiar half-crimp 60 months
        available mon 90 min, wed 90 min, thu 90 min, fri 90 min
        equipment {
          edges 20 mm
          added 0.5 kg steps to 60 kg
          assist 0.5 kg steps to 40 kg
        }
      }
      log ida {
        2026-12-10 test half-crimp edge 20 mm hold 7 s load 96 kg
        %s
      }
      plan dense {
        for ida
        from 2027-01-11
        block train 4 weeks {
          session hard 1 per week {
            prefer mon
            do max-holds on half-crimp edge 20 mm
          }
        }
        block pause 1 weeks { no training }
        %s
      }
      """;

  private static Compilation compiled(String log, String test) {
    return Gripwright.read("tests.grip", PLAN.formatted(log, test)).compile();
  }

  private static CompiledPlan plan(String test) {
    Compilation compilation = compiled("", test);
    assertTrue(compilation.usable(), compilation.findings().toString());
    return compilation.plans().get(0);
  }

  private static List<LocalDate> days(CompiledPlan plan) {
    return plan.retests().stream().map(DatedRetest::date).toList();
  }

  @Test
  void retestIsATestEveryNumberOfWeeks() {
    Plan old = plan("retest half-crimp edge 20 mm hold 7 s every 2 weeks").plan();
    Plan now = plan("test half-crimp edge 20 mm hold 7 s every 2 weeks").plan();
    assertEquals(old, now);
  }

  @Test
  void weeksNumberOnBeforeAndAfterThePlan() {
    CompiledPlan plan =
        plan(
            "test half-crimp edge 20 mm hold 7 s before the first week, after the last week,"
                + " 6 weeks later, in week 2");
    assertEquals(List.of(0, 2, 6, 12), plan.retests().stream().map(DatedRetest::week).toList());
    plan.retests()
        .forEach(
            test -> {
              LocalDate first = FROM.plusWeeks(test.week() - 1L);
              assertTrue(
                  !test.date().isBefore(first) && test.date().isBefore(first.plusDays(7)),
                  test.toString());
            });
  }

  @Test
  void restedLooksBackFurther() {
    List<LocalDate> usual = days(plan("test half-crimp edge 20 mm hold 7 s in week 2"));
    List<LocalDate> longer =
        days(plan("test half-crimp edge 20 mm hold 7 s in week 2 { rested 96 h }"));
    assertEquals(DayOfWeek.WEDNESDAY, usual.get(0).getDayOfWeek());
    assertEquals(DayOfWeek.FRIDAY, longer.get(0).getDayOfWeek());
  }

  @Test
  void onlyOnKeepsToItsWeekdays() {
    List<LocalDate> days =
        days(plan("test half-crimp edge 20 mm hold 7 s in week 2, 3 { only on fri }"));
    assertEquals(
        List.of(DayOfWeek.FRIDAY, DayOfWeek.FRIDAY),
        days.stream().map(LocalDate::getDayOfWeek).toList());
  }

  @Test
  void emptyWeeksCountAsEasedAndDrawNothing() {
    CompiledPlan plan = plan("");
    PlanWeek last = plan.weeks().get(4);
    assertTrue(last.eased());
    assertEquals(List.of(), plan.sessionsOf(5));
    assertEquals(
        "",
        compiled("", "").findings().stream()
            .map(finding -> finding.code())
            .filter("plan.week-away"::equals)
            .collect(Collectors.joining()));
  }

  @Test
  void lineOfAnotherKindIsNotTheTest() {
    String before = "test half-crimp edge 20 mm series 24 x 7 s / 3 s before the first week";
    String hold = "2027-01-05 test half-crimp edge 20 mm hold 7 s load 96 kg";
    assertEquals(
        List.of(false),
        compiled(hold, before).plans().get(0).retests().stream().map(DatedRetest::done).toList());
    String holds = "test half-crimp edge 20 mm hold 7 s before the first week";
    assertEquals(
        List.of(true),
        compiled(hold, holds).plans().get(0).retests().stream().map(DatedRetest::done).toList());
  }

  @Test
  void newtonsAreTheWeightOfAMass() {
    String force = "2027-01-05 test half-crimp edge 20 mm hold 7 s force 980.665 N";
    assertEquals(
        100,
        compiled(force, "").plans().get(0).log().tests().get(1).result().greatest().kilograms(),
        1e-9);
  }

  @Test
  void aLoadFromATestInNewtonsIsMarkedAndOneFromKilogramsIsNot() {
    String log =
        "2027-01-05 test half-crimp edge 20 mm left hand lifting hold 7 s force 402 N\n"
            + "2027-01-05 test half-crimp edge 20 mm right hand lifting hold 7 s load 43 kg";
    String test = "test half-crimp edge 20 mm hold 7 s in week 2 { %s }";
    String lines =
        "do max-holds with level 40 % max, sets 1 on half-crimp edge 20 mm alternating hands"
            + " lifting as warm-up"
            + " do max-holds with level 12 kg, sets 1 on half-crimp edge 20 mm left hand lifting"
            + " as warm-up";
    Compilation compiled = compiled(log, test.formatted(lines));
    List<PlannedExercise> before = compiled.plans().get(0).retests().get(0).exercises();
    assertEquals(
        List.of(true, false, false), before.stream().map(PlannedExercise::inForce).toList());
  }

  @Test
  void exercisesBeforeATestGetLoadsAndCountInTheWeek() {
    CompiledPlan with =
        plan(
            "test half-crimp edge 20 mm hold 7 s in week 2, after the last week {"
                + " do max-holds with level 40 % max, sets 2 on half-crimp edge 20 mm as warm-up }");
    CompiledPlan without =
        plan("test half-crimp edge 20 mm hold 7 s in week 2, after the last week { rested 48 h }");
    DatedRetest test = with.retests().get(0);
    PlannedExercise warmUp = test.exercises().get(0);
    assertTrue(warmUp.warmUp());
    assertEquals(38, warmUp.totalLoad().kilograms(), 2, "40 % of the lower bound of 96 kg");
    assertEquals(
        test.path().then("exercise", 1).toString(), warmUp.path().toString(), "its own place");
    assertEquals(1, with.retests().get(1).exercises().size(), "after the plan as well");
    assertEquals(
        without.weeks().get(1).loadIndex() + warmUp.loadIndex(),
        with.weeks().get(1).loadIndex(),
        1e-9);
    assertEquals(without.weeks().get(0), with.weeks().get(0));
  }

  @Test
  void anExerciseBeforeATestMovesWithIt() {
    Compilation moved =
        compiled(
            "2027-01-21 test half-crimp edge 20 mm hold 7 s load 97 kg",
            "test half-crimp edge 20 mm hold 7 s in week 2 { only on fri"
                + " do max-holds with level 40 % max, sets 1 on half-crimp edge 20 mm as warm-up }");
    DatedRetest test = moved.plans().get(0).retests().get(0);
    assertEquals(LocalDate.of(2027, 1, 21), test.date());
    assertEquals(
        test.path().then("exercise", 1).toString(), test.exercises().get(0).path().toString());
  }

  @Test
  void aTestThatTakesLongerThanTheDayIsReported() {
    String lengthy =
        "test half-crimp edge 20 mm hold 7 s in week 2 { attempts 4 resting %s warm-up 10 min }";
    assertTrue(codes(compiled("", lengthy.formatted("30 min"))).contains("plan.test-too-long"));
    assertTrue(!codes(compiled("", lengthy.formatted("20 min"))).contains("plan.test-too-long"));
    String worked =
        "test half-crimp edge 20 mm hold 7 s in week 2 { attempts 4 resting 20 min warm-up 10 min"
            + " do max-holds with level 40 % max, sets 8 on half-crimp edge 20 mm as warm-up }";
    assertTrue(codes(compiled("", worked)).contains("plan.test-too-long"), "with its warm-up");
  }

  @Test
  void muchWorkBeforeATestCountsAsWork() {
    String test =
        "test half-crimp edge 20 mm hold 7 s in week 2 {"
            + " do max-holds with level 50 %% max, sets %d on half-crimp edge 20 mm as warm-up }";
    assertTrue(codes(compiled("", test.formatted(12))).contains("plan.warm-up-hard"));
    assertTrue(codes(compiled("", test.formatted(12))).contains("rule.week-load-rise"));
    assertEquals(List.of(), codes(compiled("", test.formatted(2))));
  }

  private static List<String> codes(Compilation compiled) {
    return compiled.findings().stream().map(found -> found.code()).toList();
  }
}
