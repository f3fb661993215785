package gripwright.survey;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.log.Log;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Load;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rules for a grip that is surveyed but not planned, and the load on each hand. */
class GripSurveyRulesTest {

  private static GripSurvey survey(Athlete athlete, Log log, double kilograms, Grip... grips) {
    return GripSurvey.of(athlete, log, List.of(grips), EDGE, Load.ofKilograms(kilograms), MONDAY);
  }

  private static List<String> rules(List<Gate> gates) {
    return gates.stream().map(Gate::rule).toList();
  }

  @Test
  void aRuleThatClosesAGripIsNotAlsoALimit() {
    Athlete beginner = Skarvdal.ylva().trained(8).build();
    GripSurvey survey =
        survey(
            beginner,
            Log.empty("ylva"),
            60,
            StandardGrips.FRONT_THREE,
            StandardGrips.FULL_CRIMP,
            StandardGrips.HALF_CRIMP);
    for (GripSurvey.Row row : survey.rows()) {
      List<String> gates = rules(row.gates());
      assertTrue(rules(row.limits()).stream().noneMatch(gates::contains), row.grip().name());
    }
    GripSurvey.Row split =
        survey.rows().stream()
            .filter(row -> row.grip().equals(StandardGrips.FRONT_THREE))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("split-grip-gate"), rules(split.gates()));
    assertEquals(false, split.open());
    assertEquals(List.of(), survey.notes(), "no rule speaks of the athlete whatever the grip");
  }

  @Test
  void aGripThatIsOpenMayHaveALimit() {
    GripSurvey.Row full =
        survey(
                Skarvdal.ylva().trained(90).familiar("half-crimp", 12).build(),
                Log.empty("ylva"),
                60,
                Grip.named("full-crimp")
                    .family(GripFamily.FOUR)
                    .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
                    .build())
            .rows()
            .get(0);
    assertEquals(true, full.open());
    assertEquals(List.of("full-crimp-ceiling"), rules(full.limits()));
    assertEquals(true, full.limited());
  }

  @Test
  void eachHandHoldsHalf() {
    assertEquals(
        30 * 9.80665,
        survey(Skarvdal.ylva().build(), Log.empty("ylva"), 60, StandardGrips.HALF_CRIMP)
            .newtonsPerHand(),
        1e-9);
  }

  @Test
  void theMaximumItselfIsNotAboveIt() {
    Athlete ylva = Skarvdal.ylva().build();
    GripSurvey.Row row =
        survey(ylva, Skarvdal.tested(), 60, StandardGrips.HALF_CRIMP).rows().get(0);
    double best = row.maximum().orElseThrow().load().best().kilograms();
    assertEquals(
        Optional.of(false),
        survey(ylva, Skarvdal.tested(), best, StandardGrips.HALF_CRIMP).aboveMaximum(row));
    assertEquals(
        Optional.of(true),
        survey(ylva, Skarvdal.tested(), best + 0.1, StandardGrips.HALF_CRIMP).aboveMaximum(row));
  }
}
