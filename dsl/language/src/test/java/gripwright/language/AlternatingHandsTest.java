package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Hands;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Alternating hands, from text to loads. */
class AlternatingHandsTest {

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
        available mon 90 min, thu 90 min
        equipment {
          edges 20 mm
          added 0.5 kg steps to 60 kg
          assist 0.5 kg steps to 40 kg
        }
      }
      log ida {
        2026-12-10 test half-crimp edge 20 mm hold 7 s load 90 kg
        2026-12-10 test half-crimp edge 20 mm left hand lifting hold 7 s load 40 kg
        2026-12-10 test half-crimp edge 20 mm right hand lifting hold 7 s load 46 kg
        %s
      }
      plan turns {
        for ida
        from 2027-01-11
        block train 3 weeks {
          session lift 2 per week {
            %s
            do max-holds with level 80 %% max, sets 2 on half-crimp edge 20 mm
          }
          advance load 2 %% weekly
        }
      }
      """;
  private static final String TURNS =
      "do max-holds with level 70 % max, sets 4 on half-crimp edge 20 mm alternating hands lifting";
  private static final String LEFT_THEN_RIGHT =
      "do max-holds with level 70 % max, sets 4 on half-crimp edge 20 mm left hand lifting\n"
          + "do max-holds with level 70 % max, sets 4 on half-crimp edge 20 mm right hand lifting";

  private static CompiledPlan plan(String log, String lines) {
    Compilation compiled = Gripwright.read("turns.grip", PLAN.formatted(log, lines)).compile();
    assertTrue(compiled.usable(), compiled.findings().toString());
    return compiled.plans().get(0);
  }

  private static PlannedExercise exercise(CompiledPlan plan, int session, Hands hands) {
    return plan.sessions().get(session).exercises().stream()
        .filter(each -> each.setup().hands() == hands)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachHandGoesByItsOwnMaximumLeftFirst() {
    CompiledPlan turns = plan("", TURNS);
    CompiledPlan lines = plan("", LEFT_THEN_RIGHT);
    DatedSession session = turns.sessions().get(0);
    assertEquals(
        List.of(Hands.LEFT, Hands.RIGHT, Hands.BOTH),
        session.exercises().stream().map(each -> each.setup().hands()).toList());
    for (Hands hands : List.of(Hands.LEFT, Hands.RIGHT)) {
      for (int i = 0; i < turns.sessions().size(); i++) {
        assertEquals(exercise(lines, i, hands).totalLoad(), exercise(turns, i, hands).totalLoad());
      }
    }
    assertEquals(
        lines.weeks().get(0).loadIndex(), turns.weeks().get(0).loadIndex(), 1e-9, "the same work");
    assertEquals(
        3 * 180 - 10 + 180,
        60 * (lines.sessions().get(0).minutes() - session.minutes()),
        60,
        "the rests of the right hand, and the rest between the lines");
  }

  @Test
  void theOtherHandsSetsAreNoLongRestBeforeWhatFollows() {
    String then =
        "\ndo max-holds with level 60 % max, sets 2 on half-crimp edge 20 mm left hand lifting";
    double inTurn = leftOf(plan("", TURNS + then));
    double apart = leftOf(plan("", LEFT_THEN_RIGHT + then));
    assertTrue(inTurn < apart, inTurn + " is not below " + apart);
    CompiledPlan left = plan("", LEFT_THEN_RIGHT.lines().findFirst().orElseThrow() + then);
    assertEquals(
        left.sessions().get(0).exercises().get(1).endReserve().orElseThrow().mean(),
        inTurn,
        1e-12,
        "as if the right hand did nothing");
  }

  /** Returns what the left hand has left after the exercise that follows the alternating hands. */
  private static double leftOf(CompiledPlan plan) {
    return plan.sessions().get(0).exercises().get(2).endReserve().orElseThrow().mean();
  }

  @Test
  void troubleOfOneHandHoldsThatHandAlone() {
    CompiledPlan plan =
        plan(
            """
            2027-01-11 session lift {
              max-holds on half-crimp edge 20 mm left hand lifting: sets 4 of 4, effort 6
              max-holds on half-crimp edge 20 mm right hand lifting: sets 2 of 4, effort 9.5
              max-holds on half-crimp edge 20 mm: sets 2 of 2, effort 7
            }
            2027-01-14 session lift {
              max-holds on half-crimp edge 20 mm left hand lifting: sets 4 of 4, effort 6
              max-holds on half-crimp edge 20 mm right hand lifting: sets 2 of 4, effort 9.5
              max-holds on half-crimp edge 20 mm: sets 2 of 2, effort 7
            }
            """,
            TURNS);
    assertTrue(load(plan, 2, Hands.LEFT) > load(plan, 0, Hands.LEFT));
    assertEquals(load(plan, 0, Hands.RIGHT), load(plan, 2, Hands.RIGHT));
    assertEquals(2, exercise(plan, 0, Hands.RIGHT).scheme().sets());
    assertTrue(exercise(plan, 0, Hands.RIGHT).alternating());
  }

  private static double load(CompiledPlan plan, int session, Hands hands) {
    return exercise(plan, session, hands).totalLoad().kilograms();
  }
}
