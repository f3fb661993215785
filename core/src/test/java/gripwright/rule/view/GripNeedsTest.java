package gripwright.rule.view;

import static gripwright.rule.Winter.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.rule.Winter;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an athlete must bring for a grip, each at its boundary. */
class GripNeedsTest {

  private static final Grip LOW_OPEN =
      Grip.named("low-open")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .needs(
              new Prerequisites(
                  36, Optional.of(Ability.of(GradeScale.FRENCH, "7a")), Map.of("half-crimp", 6.0)))
          .build();

  @ParameterizedTest
  @CsvSource({
    "36, 7a, half-crimp, 6, true",
    "35.9, 7a, half-crimp, 6, false",
    "80, 6c+, half-crimp, 6, false",
    "80, 7a+, half-crimp, 7, true",
    "36, 7a, half-crimp, 5.9, false",
    "36, 7a, full-crimp, 6, false"
  })
  void meetingThePrerequisitesExactlyIsEnough(
      double trained, String grade, String grip, double familiar, boolean meets) {
    PlanView plan =
        Views.of(
            new Winter()
                .athlete(
                    a ->
                        a.trained(trained)
                            .ability(Ability.of(GradeScale.FRENCH, grade))
                            .familiar(grip, familiar)));
    assertEquals(meets, plan.athleteOn(MONDAY).meetsNeeds(LOW_OPEN));
  }
}
