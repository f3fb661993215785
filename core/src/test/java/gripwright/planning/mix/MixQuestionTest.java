package gripwright.planning.mix;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.plan.Exercise;
import gripwright.planning.Skarvdal;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.GripMix.Blend;
import gripwright.strength.Posture;
import gripwright.strength.Transfer;
import gripwright.tissue.OwnHang;
import gripwright.tissue.Pulley;
import gripwright.tissue.SlipViews;
import gripwright.tissue.TissueLoad;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The values of a line's grips, compared with direct results of the tissue model. */
class MixQuestionTest {

  private static final Exercise.Weights MATCH = new Exercise.Weights(1, 0, 0);

  private static Blend blend(
      Athlete athlete, Log log, Map<Grip, Double> demand, List<Grip> grips, double... shares) {
    HandFindings hands = new HandFindings(athlete);
    return new MixQuestion(
            grips.stream().map(g -> Setup.of(g, EDGE)).toList(),
            demand,
            hands.fits(),
            new Prescription(athlete, log, MONDAY, hands).strengthOn(MONDAY),
            Load.ofKilograms(60))
        .solver(MATCH)
        .blend(shares);
  }

  /**
   * The least margin of any pulley in any slip if all work is on one grip, in times a half crimp on
   * 20 mm with a body mass of 60 kg.
   */
  private static double margin(Athlete athlete, double kilograms, Grip grip, Set<Side> sides) {
    double least = Double.POSITIVE_INFINITY;
    for (Side side : sides) {
      TissueLoad load = load(athlete, kilograms, Setup.of(grip, EDGE), side);
      TissueLoad own = load(athlete, 60, OwnHang.SETUP, side);
      for (Pulley pulley : Pulley.values()) {
        for (Finger finger : grip.fingers().fingers()) {
          if (finger == Finger.LITTLE) {
            continue; // straight in a half crimp, so there is next to nothing to compare with
          }
          double use = load.force(finger, pulley) / own.force(finger, pulley);
          double worst = 0;
          for (SlipViews slip : load.slips()) {
            if (slip.leaving() != finger) {
              worst = Math.max(worst, use * slip.momentKept().ratio(finger));
              worst = Math.max(worst, use * slip.armSwings().ratio(finger));
            }
          }
          least = Math.min(least, (1 + MixQuestion.HARDENING * use) / worst);
        }
      }
    }
    return least;
  }

  private static TissueLoad load(Athlete athlete, double kilograms, Setup setup, Side side) {
    return TissueLoad.of(new HandFindings(athlete).fits().of(setup, side), kilograms * 9.80665 / 2);
  }

  @Test
  void theMarginIsThatOfTheMostLoadedPulleyInTheWorstSlip() {
    Athlete ylva = Skarvdal.ylva().build();
    Log none = Log.empty("ylva");
    for (Grip grip : List.of(DRAG, HALF_CRIMP)) {
      assertEquals(
          margin(ylva, 60, grip, Set.of(Side.LEFT)),
          blend(ylva, none, Map.of(grip, 1.0), List.of(grip), 1).margin(),
          1e-9,
          "without a test by body mass");
    }
    HandFindings fits = new HandFindings(ylva);
    double best =
        new Prescription(ylva, Skarvdal.tested(), MONDAY, fits)
            .strengthOn(MONDAY)
            .maximum(Setup.of(DRAG, EDGE))
            .orElseThrow()
            .load()
            .best()
            .kilograms();
    assertEquals(
        margin(ylva, best, DRAG, Set.of(Side.LEFT)),
        blend(ylva, Skarvdal.tested(), Map.of(DRAG, 1.0), List.of(DRAG), 1).margin(),
        1e-9);
  }

  @Test
  void bothHandsCountIfTheyDiffer() {
    Athlete uneven =
        Skarvdal.ylva()
            .hand(Side.RIGHT, Hand.ofLength(Length.ofMillimetres(200)))
            .hand(Side.LEFT, Hand.ofLength(Length.ofMillimetres(170)))
            .build();
    double left = margin(uneven, 60, DRAG, Set.of(Side.LEFT));
    double right = margin(uneven, 60, DRAG, Set.of(Side.RIGHT));
    assertTrue(Math.abs(left - right) > 1e-6);
    assertEquals(
        Math.min(left, right),
        blend(uneven, Log.empty("ylva"), Map.of(DRAG, 1.0), List.of(DRAG), 1).margin(),
        1e-9);
  }

  @Test
  void withoutADemandTheGripsOfTheLineHaveEqualDemand() {
    Athlete ylva = Skarvdal.ylva().build();
    List<Grip> two = List.of(HALF_CRIMP, DRAG);
    Map<Grip, Double> nothing = Collections.emptyMap();
    assertEquals(1, blend(ylva, Skarvdal.tested(), nothing, two, 0.5, 0.5).match(), 1e-9);
    assertEquals(0.8, blend(ylva, Skarvdal.tested(), nothing, two, 0.7, 0.3).match(), 1e-9);
  }

  /** A grip that was tested, or that the demand names, counts with its best estimate. */
  @Test
  void anUntestedGripOutsideTheDemandCarriesOverAtItsLowEnd() {
    Athlete ylva = Skarvdal.ylva().build();
    Map<Grip, Double> drag = Map.of(DRAG, 1.0);
    List<Grip> line = List.of(StandardGrips.FRONT_THREE, HALF_CRIMP, DRAG);
    HandFits fits = new HandFindings(ylva).fits();
    Posture asked = Posture.of(fits.of(Setup.of(DRAG, EDGE)).values());
    Transfer front =
        Transfer.between(
            Posture.of(fits.of(Setup.of(StandardGrips.FRONT_THREE, EDGE)).values()), asked);
    Transfer half =
        Transfer.between(Posture.of(fits.of(Setup.of(HALF_CRIMP, EDGE)).values()), asked);
    Log log = Skarvdal.tested();
    assertEquals(front.low(), blend(ylva, log, drag, line, 1, 0, 0).carryOver(), 1e-9);
    assertEquals(half.share(), blend(ylva, log, drag, line, 0, 1, 0).carryOver(), 1e-9);
    assertTrue(front.low() < front.share());
  }
}
