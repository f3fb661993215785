package gripwright.survey;

import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.expression.Shortfall;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.finding.WrittenText;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.planning.Skarvdal;
import gripwright.wording.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an athlete lacks if a built-in rule prevents a grip. */
class GateTest {

  private static final ModelPath PLACE = ModelPath.of("plan", "spring");

  private static Grip asking(double months, String grade, Map<String, Double> familiar) {
    return Grip.named("low-open")
        .family(GripFamily.OPEN)
        .fingers(Finger.INDEX, Finger.MIDDLE, Finger.LITTLE)
        .needs(
            new Prerequisites(months, Optional.of(Ability.of(GradeScale.FRENCH, grade)), familiar))
        .build();
  }

  private static List<String> missing(Finding breach, Grip grip, Athlete athlete) {
    return Gate.of(breach, grip, athlete, MONDAY).missing().stream().map(GateTest::line).toList();
  }

  private static String line(Gate.Missing missing) {
    if (missing instanceof Gate.Training training) {
      return "training: " + (int) training.months() + " of " + (int) training.required();
    }
    if (missing instanceof Gate.Level level) {
      return "ability: " + level.ability() + " of " + level.required();
    }
    if (missing instanceof Gate.Familiarity with) {
      return with.grip() + ": " + (int) with.months() + " of " + (int) with.required();
    }
    if (missing instanceof Gate.Injured injured) {
      return injured.injury() + " since " + injured.injury().from();
    }
    if (missing instanceof Gate.TrainingByRule training) {
      return "training: "
          + (int) training.months()
          + " of "
          + Words.say(training.shortfall().limit());
    }
    Shortfall counted = ((Gate.Counted) missing).shortfall();
    return counted.what() + ": " + Words.say(counted.was()) + " of " + Words.say(counted.limit());
  }

  private static Finding breach(String rule) {
    return Finding.error("rule." + rule, PLACE);
  }

  @Test
  void eachMissingPrerequisiteIsReported() {
    Finding needs = breach("grip-needs-gate").about(Topic.PREREQUISITES);
    assertEquals(
        List.of("training: 40 of 41", "ability: french 7c of french 8a", "half-crimp: 1 of 6"),
        missing(
            needs,
            asking(41, "8a", Map.of("half-crimp", 6.0)),
            Skarvdal.ylva().familiar("half-crimp", 1.5).build()));
    assertEquals(
        List.of(),
        missing(
            needs,
            asking(40, "7c", Map.of("half-crimp", 6.0)),
            Skarvdal.ylva().familiar("half-crimp", 6).build()));
    assertEquals(
        List.of("half-crimp: 0 of 6"),
        missing(
            needs,
            asking(40, "7c", Map.of("half-crimp", 6.0)),
            Skarvdal.ylva().familiar("full-crimp", 6).build()));
  }

  private static Injury injury(Finger finger, Optional<LocalDate> cleared) {
    return Injury.builder(finger, Structure.A2, MONDAY.minusDays(30))
        .side(Side.LEFT)
        .cleared(cleared)
        .build();
  }

  @Test
  void anOpenInjuryOfAFingerInUseIsReportedWithItsDay() {
    Athlete athlete =
        Skarvdal.ylva()
            .injury(injury(Finger.RING, Optional.empty()))
            .injury(injury(Finger.MIDDLE, Optional.of(MONDAY.minusDays(1))))
            .build();
    assertEquals(
        List.of(),
        missing(breach("injured-finger"), HALF_CRIMP, athlete),
        "a name alone says nothing");
    assertEquals(
        List.of("ring a2 left since 2027-01-30"),
        missing(breach("injured-finger").about(Topic.INJURY), HALF_CRIMP, athlete));
    assertEquals(
        List.of(),
        missing(breach("injured-finger").about(Topic.INJURY), asking(1, "6a", Map.of()), athlete),
        "the ring finger does not hold");
  }

  private static Shortfall shortfall(String what, String was, String limit) {
    return new Shortfall(
        Optional.empty(),
        what,
        new WrittenText(was),
        Shortfall.Bound.AT_LEAST,
        new WrittenText(limit));
  }

  @Test
  void theNumbersOfOtherRulesAreReported() {
    Finding counted =
        breach("split-grip-gate")
            .with(
                "missing",
                List.of(
                    shortfall("trained", "40.2 months", "48 months"),
                    shortfall("edge", "15 mm", "20 mm")));
    assertEquals(
        List.of("training: 40 of 48 months", "edge: 15 mm of 20 mm"),
        missing(counted, HALF_CRIMP, Skarvdal.ylva().build()));
    assertEquals(
        List.of(), missing(breach("split-grip-gate"), HALF_CRIMP, Skarvdal.ylva().build()));
  }

  @Test
  void aGateHasItsRuleItsSentenceAndWhetherItCloses() {
    Athlete athlete = Skarvdal.ylva().build();
    Gate error =
        Gate.of(
            breach("split-grip-gate").with("message", "two fingers need two years"),
            HALF_CRIMP,
            athlete,
            MONDAY);
    assertEquals("split-grip-gate", error.rule());
    assertEquals("two fingers need two years", error.message());
    assertEquals(true, error.closes());
    Gate warning = Gate.of(Finding.warning("rule.edge-small", PLACE), HALF_CRIMP, athlete, MONDAY);
    assertEquals(false, warning.closes());
    assertEquals("rule.edge-small", warning.message(), "a rule without a sentence");
    assertEquals("plan.no-day", new Gate(Finding.error("plan.no-day", PLACE), List.of()).rule());
  }
}
