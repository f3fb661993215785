package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A load gets harder only where it was lifted before; common practice. */
class EarnedLoadTest {

  private static final String PLAN =
      """
      language 1
      athlete runa "Runa Berge" {
        born       1994-05-12
        body-mass  62 kg
        trained    48 months
        ability    french 7c
        hand {
          length    172 mm
        }
        available  mon 90 min, wed 90 min, fri 90 min
        equipment {
          edges    20 mm
          added    0.5 kg steps to 40 kg
          assist   0.5 kg steps to 50 kg
        }
      }
      protocol tens {
        given  level 80 % max, sets 4
        repeat sets resting 3 min {
          hold 10 s at level
        }
      }
      log runa {
        2027-01-04 test half-crimp edge 20 mm hold 7 s load 80 kg
        LINES
      }
      plan winter {
        for      runa
        from     2027-01-11
        block a 3 weeks {
          advance load 2 % weekly
          session heavy 1 per week {
            do tens on half-crimp edge 20 mm
          }
          session light 1 per week {
            do calm-holds on half-crimp edge 20 mm
          }
        }
      }
      """;

  private static CompiledPlan compiled(String... lines) {
    return Gripwright.read("plan.grip", PLAN.replace("LINES", String.join("\n  ", lines)))
        .compile()
        .plans()
        .get(0);
  }

  /** Returns the loads of the heavy exercise from a day on, in kg. */
  private static List<Double> heavyFrom(CompiledPlan plan, LocalDate day) {
    return plan.sessions().stream()
        .filter(s -> s.name().equals("heavy") && !s.date().isBefore(day))
        .flatMap(s -> s.exercises().stream())
        .map(PlannedExercise::totalLoad)
        .map(load -> load.kilograms())
        .toList();
  }

  private static final LocalDate SECOND_WEEK = LocalDate.of(2027, 1, 18);

  @Test
  void aStepFollowsAWeekThatTrainedIt() {
    assertEquals(
        List.of(63.0, 64.5),
        heavyFrom(
            compiled(
                "2027-01-11 session heavy { tens on half-crimp edge 20 mm: sets 4 of 4, effort 6 }",
                "2027-01-15 session light { calm-holds on half-crimp edge 20 mm: sets 4 of 4 }"),
            SECOND_WEEK));
  }

  @Test
  void aLightSessionEarnsNoStepForTheHeavySession() {
    assertEquals(
        List.of(62.0, 63.0),
        heavyFrom(
            compiled(
                "2027-01-11 skipped heavy",
                "2027-01-15 session light { calm-holds on half-crimp edge 20 mm: sets 4 of 4 }"),
            SECOND_WEEK));
  }

  @Test
  void noStepFollowsALoadThatWasNotLifted() {
    assertEquals(
        List.of(62.0, 63.0),
        heavyFrom(
            compiled(
                "2027-01-11 session heavy {",
                "  tens on half-crimp edge 20 mm: sets 4 of 4, load 55 kg, effort 6",
                "}",
                "2027-01-15 session light { calm-holds on half-crimp edge 20 mm: sets 4 of 4 }"),
            SECOND_WEEK));
  }

  @Test
  void aLowerTestCountsAtOnceAndLoadsNeverExceedTheTest() {
    List<Double> loads =
        heavyFrom(
            compiled("2027-01-16 test half-crimp edge 20 mm hold 7 s load 70 kg"), SECOND_WEEK);
    assertTrue(loads.get(0) <= 70 * 0.816, loads.toString());
  }
}
