package gripwright.log;

import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.planning.Skarvdal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class GrowthPainTest {

  private static final Athlete SEVENTEEN = Skarvdal.ylva().born(MONDAY.minusYears(17)).build();

  /** Pain of the left ring finger this many days after the Monday. */
  private static LogEntry.Pain pain(Structure structure, int day, double score) {
    return LogEntry.Pain.builder(MONDAY.plusDays(day), Finger.RING, score)
        .structure(structure)
        .side(Side.LEFT)
        .build();
  }

  private static GrowthPain of(Athlete athlete, LogEntry... entries) {
    Log log = Log.empty("ylva");
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return GrowthPain.of(athlete, log);
  }

  private static boolean stops(GrowthPain pain, int day) {
    return pain.stops(FingerSet.FOUR, Hands.BOTH, MONDAY.plusDays(day));
  }

  @Test
  void anyPainOfAGrowthPlateStopsTheFingerOfThatHand() {
    GrowthPain one = of(SEVENTEEN, pain(Structure.GROWTH_PLATE, 3, 1));
    assertFalse(stops(one, 2));
    assertTrue(stops(one, 3));
    assertTrue(stops(one, 700));
    LocalDate later = MONDAY.plusDays(9);
    assertFalse(one.stops(FingerSet.FOUR, Hands.RIGHT, later));
    assertFalse(one.stops(FingerSet.of(Finger.INDEX), Hands.LEFT, later));
    assertFalse(stops(of(SEVENTEEN, pain(Structure.GROWTH_PLATE, 3, 0)), 9));
  }

  @Test
  void painOfAdultsOrOtherStructuresIsIgnored() {
    Athlete adult = Skarvdal.ylva().born(MONDAY.minusYears(18)).build();
    assertFalse(stops(of(adult, pain(Structure.GROWTH_PLATE, 0, 1)), 1));
    Athlete eve = Skarvdal.ylva().born(MONDAY.minusYears(18).plusDays(1)).build();
    assertTrue(stops(of(eve, pain(Structure.GROWTH_PLATE, 0, 1)), 1));
    assertFalse(stops(of(SEVENTEEN, pain(Structure.A2, 0, 4)), 1));
  }

  @Test
  void anInjuryThatIsWrittenTakesOverUntilPainComesAfterItsClearance() {
    GrowthPain hurt =
        of(
            Skarvdal.ylva()
                .born(MONDAY.minusYears(17))
                .injury(
                    Injury.builder(Finger.RING, Structure.GROWTH_PLATE, MONDAY.plusDays(5))
                        .side(Side.LEFT)
                        .cleared(MONDAY.plusDays(30))
                        .build())
                .build(),
            pain(Structure.GROWTH_PLATE, 3, 1),
            pain(Structure.GROWTH_PLATE, 40, 1));
    assertTrue(stops(hurt, 4));
    assertFalse(stops(hurt, 5));
    assertFalse(stops(hurt, 39));
    assertTrue(stops(hurt, 40));
  }

  @Test
  void aSingleSmallScoreOfTheMiddleJointEndsWithTwoZerosTwoDaysApart() {
    GrowthPain ended =
        of(
            SEVENTEEN,
            pain(Structure.PIP, 0, 2),
            pain(Structure.PIP, 3, 0),
            pain(Structure.PIP, 4, 0),
            pain(Structure.PIP, 5, 0));
    assertTrue(stops(ended, 4));
    assertFalse(stops(ended, 5));
    GrowthPain tooSoon =
        of(
            SEVENTEEN,
            pain(Structure.PIP, 0, 2),
            pain(Structure.PIP, 3, 0),
            pain(Structure.PIP, 4, 0));
    assertTrue(stops(tooSoon, 60));
  }

  @Test
  void threeOrASecondSmallScoreOfTheMiddleJointStays() {
    LogEntry.Pain[] zeros = {pain(Structure.PIP, 10, 0), pain(Structure.PIP, 20, 0)};
    assertTrue(stops(of(SEVENTEEN, pain(Structure.PIP, 0, 3), zeros[0], zeros[1]), 30));
    assertFalse(stops(of(SEVENTEEN, pain(Structure.PIP, 0, 2.5), zeros[0], zeros[1]), 30));
    assertTrue(
        stops(
            of(SEVENTEEN, pain(Structure.PIP, 0, 1), pain(Structure.PIP, 2, 1), zeros[0], zeros[1]),
            30));
  }
}
