package gripwright.history;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.PainReport;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.FeltPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain;
import gripwright.schedule.Cause;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which logged pain an exercise has to do with, and how it is reported. */
class PainReportsTest {

  private static Pain pain(LocalDate day, Finger finger, double score, Pain.Kind kind) {
    return Pain.builder(day, finger, score).kind(kind).build();
  }

  private static Pain dull(int day, double score) {
    return pain(MONDAY.plusDays(day), Finger.RING, score, Pain.Kind.DULL);
  }

  private static LogEntry trained(int day, Grip grip, Hands hands, OptionalDouble pain) {
    Setup setup = new Setup(grip, EDGE, hands, false);
    return new LogEntry.Trained(
        MONDAY.plusDays(day),
        "strength",
        List.of(LogEntry.Done.builder("single-holds", setup).sets(5).pain(pain).build()),
        Optional.empty());
  }

  private static LogEntry climbed(int day, OptionalDouble pain) {
    return LogEntry.Climbed.builder(MONDAY.plusDays(day), false, "easy", Duration.ofHours(1))
        .pain(pain)
        .build();
  }

  /**
   * Returns the pain reports for a half crimp with one or both hands in the two weeks from Monday.
   */
  private static List<String> aches(Hands hands, LogEntry... entries) {
    return of(hands, entries).stream().map(PainReportsTest::words).toList();
  }

  private static String words(PainReport report) {
    return Words.say(
        new Cause.Pain(report.date(), report.score(), report.rising(), report.where()));
  }

  private static List<PainReport> of(Hands hands, LogEntry... entries) {
    Log log = Log.empty("ylva");
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return PainReports.of(
        FeltPain.of(log, List.of()), MONDAY, MONDAY.plusDays(14), HALF_CRIMP, hands);
  }

  @Test
  void painIsReportedByItsFingerItsScoreAndItsKind() {
    LocalDate day = MONDAY.plusDays(1);
    assertEquals(
        List.of(
            "pain index a2 1 on 2027-03-02",
            "pain ring 3 on 2027-03-02",
            "pain ring 3.5, sharp, on 2027-03-02",
            "pain ring 4, sudden, on 2027-03-02"),
        aches(
            Hands.BOTH,
            pain(day, Finger.RING, 3, Pain.Kind.DULL),
            pain(day, Finger.RING, 3.5, Pain.Kind.SHARP),
            pain(day, Finger.RING, 4, Pain.Kind.SUDDEN),
            Pain.builder(day, Finger.INDEX, 1)
                .structure(Structure.A2)
                .side(Side.LEFT)
                .kind(Pain.Kind.DULL)
                .build()));
  }

  @Test
  void onlyTheGivenDaysCount() {
    assertEquals(
        List.of("pain ring 3 on 2027-03-01", "pain ring 3 on 2027-03-14"),
        aches(Hands.BOTH, dull(-1, 3), dull(0, 3), dull(13, 3), dull(14, 3)));
  }

  @Test
  void painInOtherHandIsIgnored() {
    Pain left = Pain.builder(MONDAY, Finger.RING, 4).side(Side.LEFT).kind(Pain.Kind.DULL).build();
    assertEquals(1, aches(Hands.LEFT, left).size());
    assertEquals(1, aches(Hands.BOTH, left).size());
    assertEquals(0, aches(Hands.RIGHT, left).size());
    assertEquals(1, aches(Hands.RIGHT, dull(0, 4)).size(), "no hand is named");
  }

  @Test
  void painInAnUnusedFingerIsIgnored() {
    Log log = Log.empty("ylva").with(pain(MONDAY, Finger.LITTLE, 4, Pain.Kind.DULL));
    assertEquals(
        List.of(),
        PainReports.of(
            FeltPain.of(log, List.of()), MONDAY, MONDAY.plusDays(14), FRONT_THREE, Hands.BOTH));
  }

  @Test
  void painWhileClimbingConcernsEveryGrip() {
    assertEquals(
        List.of("pain 2.5 while climbing on 2027-03-03"),
        aches(Hands.LEFT, climbed(2, OptionalDouble.of(2.5)), climbed(3, OptionalDouble.empty())));
  }

  @Test
  void painInTrainingConcernsTheFingersOfItsGrip() {
    OptionalDouble mild = OptionalDouble.of(5);
    OptionalDouble strong = OptionalDouble.of(5.5);
    assertEquals(
        List.of("pain 5 in training on 2027-03-03"),
        aches(Hands.BOTH, trained(2, HALF_CRIMP, Hands.BOTH, mild)));
    assertEquals(
        List.of(), aches(Hands.BOTH, trained(2, HALF_CRIMP, Hands.BOTH, OptionalDouble.empty())));
    assertEquals(
        List.of("pain 5 in training on 2027-03-03"),
        aches(Hands.BOTH, trained(2, DRAG, Hands.BOTH, mild)),
        "another grip with the same fingers");
    assertEquals(
        List.of("pain 5.5 in training on 2027-03-03"),
        aches(Hands.BOTH, trained(2, DRAG, Hands.BOTH, strong)));
    assertEquals(1, aches(Hands.LEFT, trained(2, DRAG, Hands.LEFT, strong)).size());
    assertEquals(
        List.of(), aches(Hands.LEFT, trained(2, DRAG, Hands.RIGHT, strong)), "the other hand");
    Grip little = Grip.named("little-one").family(GripFamily.SINGLE).fingers(Finger.LITTLE).build();
    Log log = Log.empty("ylva").with(trained(2, little, Hands.BOTH, strong));
    assertEquals(
        List.of(),
        PainReports.of(
            FeltPain.of(log, List.of()), MONDAY, MONDAY.plusDays(14), FRONT_THREE, Hands.BOTH),
        "no finger in common");
  }

  @Test
  void sharpPainAndPainAboveFiveStop() {
    assertEquals(
        List.of(false, true, true, true),
        of(
                Hands.BOTH,
                dull(1, 5),
                dull(2, 5.1),
                pain(MONDAY.plusDays(3), Finger.RING, 1, Pain.Kind.SHARP),
                climbed(4, OptionalDouble.of(5.1)))
            .stream()
            .map(PainReport::stops)
            .toList());
    assertEquals(false, of(Hands.BOTH, climbed(4, OptionalDouble.of(5))).get(0).stops());
  }

  @Test
  void aSecondRiseInARowIsReportedAsRising() {
    assertEquals(
        List.of("pain ring 1 on 2027-03-02", "pain ring 3, rising week on week, on 2027-03-09"),
        aches(Hands.BOTH, dull(-6, 0), dull(1, 1), dull(8, 3)),
        "what was before the days asked for is remembered");
    assertEquals(
        List.of("pain ring 2 on 2027-03-03", "pain ring 3 on 2027-03-10"),
        aches(Hands.BOTH, dull(2, 2), dull(9, 3)),
        "the first rise");
  }

  @Test
  void stopEndsWithinTheGivenDaysOrHasNoEndYet() {
    List<PainReport> ended = of(Hands.BOTH, dull(1, 6), dull(3, 2), dull(5, 1));
    assertEquals(true, ended.get(0).stopsOn(MONDAY.plusDays(4)));
    assertEquals(false, ended.get(0).stopsOn(MONDAY.plusDays(5)));
    assertEquals(false, ended.get(0).stopsOn(MONDAY), "before it began");
    assertEquals(
        Optional.empty(), of(Hands.BOTH, dull(1, 6), dull(3, 2), dull(14, 1)).get(0).until());
  }
}
