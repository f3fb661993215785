package gripwright.tissue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Sex;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.MomentArms;
import gripwright.tissue.Sheath;
import gripwright.tissue.TissueLoad;
import gripwright.tissue.TissueModel;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tendons and pulleys in climbing postures against published values. Nothing was fitted to them;
 * where the model falls outside, the table in docs/models/tissue.md says so.
 *
 * <p>Crimps are the middle finger in the solved grips of the catalogue on 20 mm; the full crimp's
 * bands are the crimp of the cadaver tests, with the end joint bent back. Slope is the middle
 * finger with PIP 20 and DIP 50 deg, as the cadaver tests define it (Schweizer A, Hudek R 2011, J
 * Appl Biomech 27(2):116-121: PIP below 25, DIP 50).
 */
class ClimbingForcesTest {

  private static final double NEWTONS = 100;
  private static final HandShape HAND = PractisedGrips.hand(Sex.MALE, 50);

  private static final List<TissueModel> MODELS =
      List.of(
          TissueModel.STANDARD,
          TissueModel.STANDARD.with(Sheath.THIRDS),
          TissueModel.STANDARD.with(MomentArms.AN_1983));

  static List<HandShape> hands() {
    return PractisedGrips.hands();
  }

  private static FingerLoad slope(HandShape hand, Finger finger, TissueModel model) {
    return FingerLoad.of(hand, FingerPose.level(hand, finger, 20, 50), NEWTONS, model);
  }

  private static FingerLoad solved(Grip grip, HandShape hand, Finger finger, TissueModel model) {
    GripFit fit = GripFit.of(grip, hand, PractisedGrips.EDGE);
    return FingerLoad.of(hand, fit.pose().finger(finger).orElseThrow(), NEWTONS, model);
  }

  private static FingerLoad crimp(TissueModel model) {
    return solved(StandardGrips.HALF_CRIMP, HAND, Finger.MIDDLE, model);
  }

  private static FingerLoad slope(TissueModel model) {
    return slope(HAND, Finger.MIDDLE, model);
  }

  private record Row(
      String what,
      String source,
      String published,
      double low,
      double high,
      ToDoubleFunction<TissueModel> model) {

    String accepted() {
      return Double.isInfinite(high)
          ? String.format(Locale.ROOT, "above %.0f", low)
          : String.format(Locale.ROOT, "%.2f to %.2f", low, high);
    }
  }

  private static List<Row> rows() {
    String vigouroux = "Vigouroux 2006 (model)";
    String cadaver = "Schoeffl I 2009 (cadaver)";
    String living = "Schweizer 2001 (in vivo)";
    List<Row> rows = new ArrayList<>();
    for (Grip grip : List.of(StandardGrips.HALF_CRIMP, StandardGrips.FULL_CRIMP)) {
      String name = ", " + grip.name();
      rows.add(
          new Row(
              "FDP by FDS" + name,
              vigouroux,
              "1.75",
              1.3125,
              2.1875,
              m -> middle(grip, m).fdpToFds()));
      rows.add(
          new Row("A2 by FDP" + name, cadaver, "0.825", 0.6, 1.1, m -> a2ByFdp(middle(grip, m))));
      rows.add(
          new Row(
              "A2 by fingertip" + name,
              living,
              "3",
              2.5,
              3.5,
              m -> middle(grip, m).a2().value() / NEWTONS));
      rows.add(
          new Row(
              "A2 by fingertip" + name,
              cadaver,
              "1.78",
              1.25,
              2.32,
              m -> middle(grip, m).a2().value() / NEWTONS));
      rows.add(
          new Row(
              "FDP by fingertip" + name,
              cadaver,
              "2.16",
              1.51,
              2.81,
              m -> middle(grip, m).fdp().value() / NEWTONS));
      rows.add(
          new Row(
              "A2" + name + " by slope",
              cadaver + "; 36 in " + vigouroux,
              "2.37",
              1.66,
              36,
              m -> middle(grip, m).a2().value() / slope(m).a2().value()));
      rows.add(
          new Row(
              "A4" + name + " by slope",
              cadaver + "; 4 in " + vigouroux,
              "2.2",
              1.54,
              8,
              m -> middle(grip, m).a4().value() / slope(m).a4().value()));
    }
    String order = "more in a crimp: " + cadaver + ", of a slope";
    rows.add(
        new Row(
            "A2, half-crimp by three-finger-drag",
            order,
            "above 1",
            1,
            Double.POSITIVE_INFINITY,
            m ->
                middle(StandardGrips.HALF_CRIMP, m).a2().value()
                    / middle(StandardGrips.THREE_FINGER_DRAG, m).a2().value()));
    rows.add(
        new Row(
            "A2, full-crimp by half-crimp",
            "common practice",
            "above 1",
            1,
            Double.POSITIVE_INFINITY,
            m ->
                middle(StandardGrips.FULL_CRIMP, m).a2().value()
                    / middle(StandardGrips.HALF_CRIMP, m).a2().value()));
    rows.add(new Row("FDP by FDS, slope", vigouroux, "0.88", 0.66, 1.1, m -> slope(m).fdpToFds()));
    rows.add(new Row("A2 by FDP, slope", cadaver, "0.326", 0.2, 0.5, m -> a2ByFdp(slope(m))));
    rows.add(
        new Row(
            "A2 by fingertip, slope",
            cadaver,
            "1.15",
            0.81,
            1.5,
            m -> slope(m).a2().value() / NEWTONS));
    rows.add(
        new Row(
            "FDP by fingertip, slope",
            cadaver,
            "3.53",
            2.47,
            4.59,
            m -> slope(m).fdp().value() / NEWTONS));
    return rows;
  }

  private static FingerLoad middle(Grip grip, TissueModel model) {
    return solved(grip, HAND, Finger.MIDDLE, model);
  }

  @Test
  void byFinger() throws IOException {
    StringBuilder table = new StringBuilder();
    table.append("| grip | finger | MCP/PIP/DIP | share | FDP | FDS | A2 | A4 | FDP by FDS |\n");
    table.append("|---|---|---|---|---|---|---|---|---|\n");
    for (Grip grip :
        List.of(
            StandardGrips.HALF_CRIMP,
            StandardGrips.FULL_CRIMP,
            StandardGrips.THREE_FINGER_DRAG,
            StandardGrips.FRONT_THREE,
            StandardGrips.BACK_THREE)) {
      GripFit fit = GripFit.of(grip, HAND, PractisedGrips.EDGE);
      for (FingerLoad load : TissueLoad.of(fit, 4 * NEWTONS).fingers()) {
        FingerPose pose = fit.pose().finger(load.finger()).orElseThrow();
        table.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %d/%d/%d | %.0f %% | %s | %s | %s | %s | %.2f |%n",
                grip.name(),
                load.finger(),
                Math.round(pose.mcp().degrees()),
                Math.round(pose.pip().degrees()),
                Math.round(pose.dip().degrees()),
                100 * load.share().value(),
                range(load.fdp()),
                range(load.fds()),
                range(load.a2()),
                range(load.a4()),
                load.fdpToFds()));
      }
    }
    ModelPage.check("tissue.md", "fingers", table.toString());
  }

  private static String range(Estimate estimate) {
    return String.format(
        Locale.ROOT, "%.0f (%.0f to %.0f)", estimate.value(), estimate.low(), estimate.high());
  }

  private static double a2ByFdp(FingerLoad load) {
    return load.a2().value() / load.fdp().value();
  }

  @Test
  void modelAgainstPublished() throws IOException {
    StringBuilder table = new StringBuilder();
    table.append(
        "| quantity | source | published | accepted | Ketchum, even | inside | Ketchum, thirds"
            + " | An, even |\n");
    table.append("|---|---|---|---|---|---|---|---|\n");
    for (Row row : rows()) {
      double standard = row.model().applyAsDouble(MODELS.get(0));
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %.2f | %s | %.2f | %.2f |%n",
              row.what(),
              row.source(),
              row.published(),
              row.accepted(),
              standard,
              standard >= row.low() && standard <= row.high() ? "yes" : "**no**",
              row.model().applyAsDouble(MODELS.get(1)),
              row.model().applyAsDouble(MODELS.get(2))));
    }
    ModelPage.check("tissue.md", "climbing", table.toString());
  }

  /** Vigouroux L et al. 2006, J Biomech 39(14):2583-2592: 0.88 within 25 %. */
  @Test
  void slopeSharesTheTendonsAsPublished() {
    assertEquals(0.88, slope(TissueModel.STANDARD).fdpToFds(), 0.22);
  }

  /**
   * Vigouroux 2006: 1.75 within 25 %, for the middle finger with its end joint bent back. The other
   * fingers and the half crimp fall short of it; docs/models/tissue.md shows by how much.
   */
  @Test
  void crimpSharesTheTendonsAsPublished() {
    double crimped = middle(StandardGrips.FULL_CRIMP, TissueModel.STANDARD).fdpToFds();
    assertEquals(1.75, crimped, 0.4375);
    assertTrue(crimped > slope(TissueModel.STANDARD).fdpToFds());
  }

  /** Schoeffl I et al. 2009, J Biomech 42(13):2183-2187: 0.326, from 0.2 to 0.5. */
  @ParameterizedTest
  @MethodSource("hands")
  void slopeLoadsA2AsPublished(HandShape hand) {
    double ratio = a2ByFdp(slope(hand, Finger.MIDDLE, TissueModel.STANDARD));
    assertTrue(ratio > 0.2 && ratio < 0.5, () -> "" + ratio);
  }

  /** Between 1.78 in cadavers (Schoeffl 2009) and 3 in vivo (Schweizer A 2001), 30 % and 0.5. */
  @ParameterizedTest
  @MethodSource("hands")
  void crimpLoadsA2BetweenTheTwoMeasurements(HandShape hand) {
    double ratio =
        solved(StandardGrips.HALF_CRIMP, hand, Finger.MIDDLE, TissueModel.STANDARD).a2().value()
            / NEWTONS;
    assertTrue(ratio > 1.25 && ratio < 3.5, () -> "" + ratio);
  }

  /** Order in Vigouroux 2006 and Schoeffl 2009: both pulleys carry more in a crimp. */
  @ParameterizedTest
  @MethodSource("hands")
  void pulleysCarryMoreInACrimp(HandShape hand) {
    for (Finger finger : List.of(Finger.INDEX, Finger.RING)) {
      FingerLoad crimped = solved(StandardGrips.HALF_CRIMP, hand, finger, TissueModel.STANDARD);
      FingerLoad dragged =
          solved(StandardGrips.THREE_FINGER_DRAG, hand, finger, TissueModel.STANDARD);
      assertTrue(crimped.a2().value() > dragged.a2().value(), finger + " A2");
      assertTrue(crimped.a4().value() > dragged.a4().value(), finger + " A4");
    }
  }

  /** Vigouroux 2006: passive structures take a quarter of the end joint's moment in a crimp. */
  @Test
  void passiveStructuresTakeAQuarterInACrimp() {
    TissueModel model = TissueModel.STANDARD;
    FingerLoad straight =
        FingerLoad.of(HAND, FingerPose.level(HAND, Finger.INDEX, 90, 0), NEWTONS, model);
    FingerLoad backwards =
        FingerLoad.of(HAND, FingerPose.level(HAND, Finger.INDEX, 90, -15), NEWTONS, model);
    assertEquals(0.75, backwards.fdp().value() / straight.fdp().value(), 1e-9);
  }

  /**
   * Bollen SR 1990, J Hand Surg Br 15(2):268-270 (from memory): 450 N with 70 kg on one crimped
   * finger. The model says more than twice as much: docs/models/tissue.md names it.
   */
  @Test
  void oneCrimpedFingerIsOverestimated() {
    double a2 = crimp(TissueModel.STANDARD).a2().value() / NEWTONS * 70 * 9.80665;
    assertTrue(a2 > 2 * 450, () -> "" + a2);
  }

  @Test
  void standardMovesWithTheSeedOnlyInItsIntervals() {
    Grip grip = PractisedGrips.HALF_CRIMP;
    GripFit fit = GripFit.of(grip, HAND, PractisedGrips.EDGE);
    TissueLoad one = TissueLoad.of(fit, NEWTONS);
    TissueLoad other = TissueLoad.of(fit, NEWTONS, TissueModel.STANDARD.withSeed(3));
    for (int i = 0; i < one.fingers().size(); i++) {
      assertEquals(one.fingers().get(i).a2().value(), other.fingers().get(i).a2().value(), 1e-12);
    }
  }
}
