package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Other models stand beside the one of plans and are never averaged. */
class ScenariosTest {

  private static List<String> names(ComparisonResult.Difference difference) {
    return difference.scenarios().stream()
        .map(ComparisonResult.Scenario::name)
        .collect(Collectors.toList());
  }

  private static double best(ComparisonResult.Difference difference, String name) {
    return difference.scenarios().stream()
        .filter(scenario -> scenario.name().equals(name))
        .findFirst()
        .orElseThrow()
        .best();
  }

  /**
   * Arithmetic: with the same share of each maximum, the load-times of four and of three fingers
   * differ by what three fingers hold, once by each view of {@link FingerLoss}; plans use the mean
   * of their logarithms.
   */
  @Test
  void whatFewerFingersHoldIsAScenario() {
    Exercise three = Exercise.of(Studies.holds(), StandardGrips.FRONT_THREE, Studies.SETUP.edge());
    ComparisonResult.Difference difference =
        Studies.subject(Studies.compared(Studies.p1(), three, Measure.LOAD_TIME).build())
            .differences()
            .get(0);
    assertEquals(List.of("EXCLUSION", "FORCE_DEFICIT"), names(difference));
    FingerSet fingers = StandardGrips.FRONT_THREE.fingers();
    double apart =
        Math.log(FingerLoss.FORCE_DEFICIT.capacity(fingers))
            - Math.log(FingerLoss.EXCLUSION.capacity(fingers));
    assertEquals(apart, best(difference, "EXCLUSION") - best(difference, "FORCE_DEFICIT"), 1e-9);
    assertEquals(
        difference.best(),
        (best(difference, "EXCLUSION") + best(difference, "FORCE_DEFICIT")) / 2,
        1e-9);
  }

  @Test
  void fourFingersHaveNoSuchScenario() {
    assertTrue(
        names(
                Studies.subject(
                        Studies.compared(Studies.p1(), Studies.p2(), Measure.LOAD_TIME).build())
                    .differences()
                    .get(0))
            .isEmpty());
  }

  /**
   * An all-out series of 24 holds whose load falls exponentially towards 40 kg, so that its
   * asymptote is 40 kg and the mean of its last three holds is more.
   */
  @Test
  void theAsymptoteOfAnAllOutSeriesIsAScenario() {
    LocalDate day = LocalDate.of(2027, 1, 4);
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      loads.add(Load.ofKilograms(40 + 60 * Math.exp(-i / 8.0)));
    }
    StrengthTest.Series series =
        new StrengthTest.Series(Duration.ofSeconds(7), Duration.ofSeconds(3), loads);
    Athlete athlete =
        Athlete.named("aud")
            .born(LocalDate.of(1995, 4, 2))
            .bodyMass(Load.ofKilograms(62))
            .trained(80)
            .ability(gripwright.ability.Ability.of(gripwright.ability.GradeScale.FRENCH, "7b"))
            .hand(Hand.ofLength(Length.ofMillimetres(180)))
            .available(java.time.DayOfWeek.MONDAY, Duration.ofHours(2))
            .edges(List.of(Studies.SETUP.edge()))
            .added(Load.ofKilograms(0.01), Load.ofKilograms(100))
            .assist(Load.ofKilograms(0.01), Load.ofKilograms(61))
            .build();
    Log log =
        Log.empty("aud")
            .with(
                new LogEntry.Tested(
                    StrengthTest.held(
                        day, Studies.SETUP, Duration.ofSeconds(7), Load.ofKilograms(100)),
                    Optional.empty()))
            .with(
                new LogEntry.Tested(
                    new StrengthTest(day, Studies.SETUP, series), Optional.empty()));
    Comparison comparison =
        Comparison.builder("two", "aud")
            .arm(Arm.of("a", Studies.p1()))
            .arm(Arm.of("b", Studies.p2().with("level", Level.ofMax(50))))
            .measures(List.of(Measure.IMPULSE_ABOVE_CF))
            .build();
    ComparisonResult.Subject subject =
        ComparisonRun.of(comparison, List.of(athlete), List.of(log), List.of())
            .run(RunOptions.standard())
            .subjects()
            .get(0);
    ComparisonResult.Difference difference = subject.differences().get(0);
    assertEquals(List.of(CriticalForce.Definition.ASYMPTOTE.name()), names(difference));
    double heavy = subject.arms().get(0).heaviest().orElseThrow();
    double light = subject.arms().get(1).heaviest().orElseThrow();
    assertEquals(
        Math.log(50 * (heavy - 40) / (126 * (light - 40))), best(difference, "ASYMPTOTE"), 0.01);
  }
}
