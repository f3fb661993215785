package gripwright.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ClearancesTest {

  private static final LocalDate MONDAY = LocalDate.of(2027, 1, 11);

  private static Plan.Builder plan(String name, SessionPlan session) {
    return Plan.named(name)
        .athlete("ylva")
        .from(MONDAY)
        .block(Block.named("base", 1).session(session).build());
  }

  private static SessionPlan session() {
    return SessionPlan.of(
        "light",
        1,
        Exercise.of(
            StandardProtocols.all().get(0), StandardGrips.HALF_CRIMP, Length.ofMillimetres(20)));
  }

  private static List<Finding> advice(Injury injury) {
    return Season.of(
            List.of(plan("one", session()).build(), plan("two", session()).build()),
            List.of(Skarvdal.ylva().injury(injury).build()),
            List.of(),
            List.of())
        .compile()
        .findings()
        .stream()
        .filter(f -> f.code().equals("plan.cleared-by-nobody"))
        .toList();
  }

  private static Injury cleared(LocalDate day) {
    return Injury.builder(Finger.RING, Structure.A2, day.minusDays(60)).cleared(day).build();
  }

  @Test
  void missingNameOfClearanceIsReportedOnceInTheWeeksOfReturn() {
    List<Finding> found = advice(cleared(MONDAY.minusWeeks(12).plusDays(1)));
    assertEquals(1, found.size());
    assertEquals(Severity.ADVICE, found.get(0).severity());
    assertEquals(List.of(), advice(cleared(MONDAY.minusWeeks(12))));
    assertEquals(List.of(), advice(cleared(MONDAY.minusWeeks(11)).clearedBy("hand therapist")));
  }

  @Test
  void supervisorOfASessionReplacesThatOfThePlan() {
    Plan unnamed = plan("p", session()).build();
    assertEquals(Optional.empty(), unnamed.supervisorOf("base", "light", "ylva"));
    Plan named = plan("p", session()).supervisedBy("one").build();
    assertEquals(Optional.of("one"), named.supervisorOf("base", "light", "ylva"));
    Plan both = plan("p", session().supervisedBy("two")).supervisedBy("one").build();
    assertEquals(Optional.of("two"), both.supervisorOf("base", "light", "ylva"));
    assertEquals(Optional.of("one"), both.supervisorOf("base", "heavy", "ylva"));
    assertThrows(IllegalArgumentException.class, () -> session().supervisedBy("."));
    Plan.Builder blank = plan("p", session()).supervisedBy("\u200B");
    assertThrows(IllegalArgumentException.class, blank::build);
    assertEquals(
        Optional.of("two"),
        session().supervisedBy("two").onlyFor("ylva", session().content()).supervisedBy());
    assertEquals(Map.of(), session().supervisedBy("two").only());
  }
}
