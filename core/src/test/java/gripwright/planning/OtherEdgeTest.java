package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Segment;
import gripwright.planning.load.HandFindings;
import gripwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Which of an athlete's edges is named where a hand does not take a grip on the one asked for. */
class OtherEdgeTest {

  /** So short a little finger that a half crimp goes on 15 mm and not on 20 mm. */
  private static final Hand SHORT_LITTLE =
      Hand.ofLength(Length.ofMillimetres(180))
          .withBone(Finger.LITTLE, Segment.PROXIMAL, Length.ofMillimetres(13.9));

  private static Object other(double... edges) {
    Athlete.Builder athlete = Skarvdal.ylva().hand(SHORT_LITTLE);
    for (double edge : edges) {
      athlete.edge(Length.ofMillimetres(edge));
    }
    Finding finding =
        new HandFindings(athlete.build())
            .outOfReach(Setup.of(StandardGrips.HALF_CRIMP, EDGE), ModelPath.of("plan", "spring"))
            .orElseThrow();
    return finding.arguments().get("other-edge");
  }

  @Test
  void nearestDepthIsNamed() {
    assertEquals(Length.ofMillimetres(15), other());
    assertEquals(Length.ofMillimetres(15), other(8, 10, 12));
    assertEquals(Length.ofMillimetres(15), other(40, 45, 8), "deeper ones are no nearer");
  }
}
