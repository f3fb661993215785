package gripwright.rule.view;

import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Injury;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.rule.Winter;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an exercise knows of the fingers it uses. */
class FingerHistoryTest {

  private static Injury injury(Finger finger, Optional<Side> side, Optional<LocalDate> cleared) {
    return Injury.builder(finger, Structure.A2, MONDAY.minusDays(200))
        .side(side)
        .cleared(cleared)
        .build();
  }

  private static LogEntry.Pain pain(Finger finger, Optional<Side> side) {
    return LogEntry.Pain.builder(MONDAY.minusDays(1), finger, 8).side(side).build();
  }

  private static boolean painful(Injury injury, LogEntry.Pain pain) {
    Winter winter = new Winter().athlete(a -> a.injury(injury)).log(pain);
    PlanView plan = Views.of(winter.session(0, line(HALF_CRIMP, 40)));
    return plan.history.usesPainfulFinger(plan.exercises.get(0));
  }

  @Test
  void openInjuryReplacesTheStopForItsPain() {
    Optional<Side> left = Optional.of(Side.LEFT);
    Optional<Side> right = Optional.of(Side.RIGHT);
    Optional<LocalDate> open = Optional.empty();
    assertEquals(
        false, painful(injury(Finger.RING, left, open), pain(Finger.RING, left)), "the same hand");
    assertEquals(
        false, painful(injury(Finger.RING, Optional.empty(), open), pain(Finger.RING, left)));
    assertEquals(
        false, painful(injury(Finger.RING, left, open), pain(Finger.RING, Optional.empty())));
    assertEquals(
        true, painful(injury(Finger.RING, right, open), pain(Finger.RING, left)), "the other hand");
    assertEquals(true, painful(injury(Finger.INDEX, left, open), pain(Finger.RING, left)));
    assertEquals(
        true,
        painful(
            injury(Finger.RING, left, Optional.of(MONDAY.minusDays(30))), pain(Finger.RING, left)),
        "cleared before");
    assertEquals(
        false,
        painful(injury(Finger.RING, left, Optional.of(MONDAY)), pain(Finger.RING, left)),
        "cleared since");
  }

  @Test
  void levelBeforeIsThatOfTheLastClearedFinger() {
    Winter winter =
        new Winter()
            .athlete(
                a ->
                    a.injury(
                            injury(
                                Finger.RING, Optional.empty(), Optional.of(MONDAY.minusDays(40))))
                        .injury(
                            injury(
                                Finger.INDEX,
                                Optional.of(Side.LEFT),
                                Optional.of(MONDAY.plusDays(8))))
                        .injury(
                            injury(
                                Finger.LITTLE,
                                Optional.of(Side.RIGHT),
                                Optional.of(MONDAY.plusDays(90)))));
    winter.session(0, line(HALF_CRIMP, 40)); // before the index finger was cleared
    winter.session(7, line(HALF_CRIMP, 60)).session(9, line(HALF_CRIMP, 50));
    winter.session(14, line(HALF_CRIMP, 55), line(HALF_CRIMP, 30).hands(Hands.RIGHT));
    PlanView plan = Views.of(winter);
    assertEquals(Double.NaN, levelBefore(plan, 0));
    assertEquals(0.40, levelBefore(plan, 1), 1e-12, "only the ring finger so far");
    assertEquals(Double.NaN, levelBefore(plan, 2), "the index finger's first week");
    assertEquals(0.50, levelBefore(plan, 3), 1e-12, "since clearance only");
    assertEquals(0.60, levelBefore(plan, 4), 1e-12, "the right hand: the ring finger's");
  }

  private static double levelBefore(PlanView plan, int exercise) {
    return plan.history.levelBefore(plan.exercises.get(exercise));
  }

  private static LogEntry.Trained trained(LocalDate day, double pain) {
    return new LogEntry.Trained(
        day,
        "strength",
        List.of(
            LogEntry.Done.builder("tens", Setup.of(HALF_CRIMP, Length.ofMillimetres(20)))
                .sets(5)
                .pain(pain)
                .build()),
        Optional.empty());
  }

  private static LogEntry.Climbed climbed(LocalDate day, double pain) {
    return LogEntry.Climbed.builder(day, false, "easy", Duration.ofHours(1)).pain(pain).build();
  }

  private static boolean painful(LogEntry line) {
    PlanView plan = Views.of(new Winter().log(line).session(0, line(HALF_CRIMP, 40)));
    return plan.history.usesPainfulFinger(plan.exercises.get(0));
  }

  @Test
  void painAboveFiveInTrainingOrClimbingCountsFromItsDay() {
    assertEquals(true, painful(trained(MONDAY.minusDays(130), 6)), "it never lapses");
    assertEquals(false, painful(trained(MONDAY.minusDays(1), 5)));
    assertEquals(true, painful(trained(MONDAY.minusDays(1), 5.1)));
    assertEquals(false, painful(trained(MONDAY, 6)), "the session that hurt");
    assertEquals(true, painful(climbed(MONDAY.minusDays(130), 6)));
    assertEquals(false, painful(climbed(MONDAY.minusDays(1), 5)));
    assertEquals(true, painful(climbed(MONDAY, 6)));
  }

  private static LogEntry.Pain at(int day, Structure structure, double score) {
    return LogEntry.Pain.builder(MONDAY.plusDays(day), Finger.RING, score)
        .structure(structure)
        .side(Side.LEFT)
        .build();
  }

  @Test
  void laterStopThatEndsSoonerDoesNotHideAnEarlierOne() {
    PlanView plan =
        Views.of(
            new Winter()
                .log(at(-20, Structure.A2, 8))
                .log(at(5, Structure.PIP, 8))
                .log(at(8, Structure.PIP, 1))
                .log(at(10, Structure.PIP, 1))
                .session(0, line(HALF_CRIMP, 40)));
    assertEquals(true, plan.history.usesPainfulFinger(plan.exercises.get(0)));
  }
}
