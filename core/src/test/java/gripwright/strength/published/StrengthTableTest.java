package gripwright.strength.published;

import static gripwright.quantity.Numbers.plain;

import gripwright.ModelPage;
import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.EdgeDepth;
import gripwright.strength.EnduranceLaw;
import gripwright.strength.LoadEstimate;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.strength.TestReliability;
import gripwright.strength.Transfer;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The table of docs/models/strength.md: published values next to those of the model. */
class StrengthTableTest {

  private static final Length EDGE = Length.ofMillimetres(20);
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private final StringBuilder table = new StringBuilder();

  @Test
  void isAsWritten() throws IOException {
    row("quantity", "source", "published", "accepted", "model", "inside");
    row("---", "---", "---", "---", "---", "---");
    endurance();
    depth();
    fingers();
    angles();
    reliability();
    ModelPage.check("strength.md", "strength", table.toString());
  }

  private void row(String... cells) {
    table.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  private void row(
      String quantity, String source, String published, double low, double high, double model) {
    row(
        quantity,
        source,
        published,
        plain(low, 2) + " to " + plain(high, 2),
        plain(model, 2),
        model >= low && model <= high ? "yes" : "**no**");
  }

  /** Manenica from memory; every law is within a factor of 2 of the others. */
  private void endurance() {
    Map<Double, Double> manenica = new TreeMap<>(Map.of(0.2, 405.2, 0.5, 105.0, 0.8, 27.2));
    manenica.forEach(
        (share, seconds) -> {
          String what = "endurance at " + plain(100 * share, 0) + " %, s: ";
          String source = "Manenica 1986, hand grip\u2020";
          String published = plain(seconds, 1);
          row(
              what + "`ROHMERT`",
              source,
              published,
              seconds / 2,
              2 * seconds,
              EnduranceLaw.ROHMERT.seconds(share));
          row(
              what + "`POWER_LAW`",
              source,
              published,
              seconds / 2,
              2 * seconds,
              EnduranceLaw.FREY_LAW_AVIN.seconds(share));
        });
  }

  private static Posture bent(double degrees) {
    Angle flexion = Angle.ofDegrees(degrees);
    return new Posture(
        Map.of(
            Finger.INDEX, flexion,
            Finger.MIDDLE, flexion,
            Finger.RING, flexion,
            Finger.LITTLE, flexion));
  }

  private void depth() {
    Length shallow = Length.ofMillimetres(10);
    Length deep = Length.ofMillimetres(40);
    double most = 575.7 / 350.8;
    String source = "Amca 2012, envelope of three grips";
    row("load on 40 mm / load on 10 mm, bent", source, "rises", 1, most, factor(shallow, deep, 90));
    row("load on 40 mm / load on 10 mm, open", source, "rises", 1, most, factor(shallow, deep, 30));
    row(
        "load open / load bent, on 23 mm",
        "CISS 2025",
        "slightly above 1",
        1,
        1.1,
        factor(EDGE, Length.ofMillimetres(23), 30) / factor(EDGE, Length.ofMillimetres(23), 90));
  }

  private static double factor(Length from, Length to, double flexion) {
    return EdgeDepth.factor(from, to, bent(flexion));
  }

  private void fingers() {
    String source = "Methot 2010, whole-hand grip\u2020";
    lost(
        "the little finger",
        FingerSet.of(Finger.INDEX, Finger.MIDDLE, Finger.RING),
        source,
        33,
        10);
    lost("ring and little finger", FingerSet.of(Finger.INDEX, Finger.MIDDLE), source, 54.5, 12);
  }

  private void lost(String without, FingerSet fingers, String source, double loss, double within) {
    LoadEstimate load = ofFour(fingers);
    String published = plain(loss, 1);
    row(
        "lost without " + without + ", %: best",
        source,
        published,
        loss - within,
        loss + within,
        100 - load.best().kilograms());
    row(
        "lost without " + without + ", %: lower bound",
        source,
        published,
        loss - within,
        loss + within,
        100 - load.low().kilograms());
  }

  /** Returns the estimate for some fingers after a test of four with 100 kg. */
  private static LoadEstimate ofFour(FingerSet fingers) {
    GripFamily family = fingers.count() == 1 ? GripFamily.SINGLE : GripFamily.SPLIT;
    Grip some = Grip.named("some").family(family).fingers(fingers).build();
    Grip four = Grip.named("four").family(GripFamily.FOUR).fingers(FingerSet.FOUR).build();
    StrengthTest test =
        new StrengthTest(
            DAY,
            Setup.of(four, EDGE),
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(100)));
    return StrengthMap.of(List.of(test), StrengthTableTest::alike, DAY)
        .maximum(Setup.of(some, EDGE))
        .orElseThrow()
        .load();
  }

  /** What fewer fingers hold by each view, and what the map makes of it after a test of four. */
  @Test
  void viewsOfLostFingersAreAsWritten() throws IOException {
    row("fingers", "`EXCLUSION`", "`GRIP_WEIGHTS`", "`FORCE_DEFICIT`", "best", "lower bound");
    row("---", "---", "---", "---", "---", "---");
    for (List<Finger> fingers :
        List.of(
            List.of(Finger.INDEX),
            List.of(Finger.MIDDLE),
            List.of(Finger.RING),
            List.of(Finger.LITTLE),
            List.of(Finger.INDEX, Finger.MIDDLE),
            List.of(Finger.MIDDLE, Finger.RING),
            List.of(Finger.INDEX, Finger.MIDDLE, Finger.RING),
            List.of(Finger.MIDDLE, Finger.RING, Finger.LITTLE))) {
      FingerSet set = FingerSet.of(fingers);
      LoadEstimate load = ofFour(set);
      row(
          String.join(", ", fingers.stream().map(Finger::word).toList()),
          percent(FingerLoss.EXCLUSION.capacity(set)),
          percent(FingerLoss.GRIP_WEIGHTS.capacity(set)),
          percent(FingerLoss.FORCE_DEFICIT.capacity(set)),
          percent(load.best().kilograms() / 100),
          percent(load.low().kilograms() / 100));
    }
    ModelPage.check("strength.md", "fingers", table.toString());
  }

  private static String percent(double share) {
    return plain(100 * share, 0);
  }

  private static Posture alike(Setup setup) {
    Map<Finger, Angle> flexions = new TreeMap<>();
    setup.grip().fingers().fingers().forEach(f -> flexions.put(f, Angle.ofDegrees(90)));
    return new Posture(flexions);
  }

  private void angles() {
    Map<Integer, Integer> gains = new TreeMap<>(Map.of(35, 5, 50, 11, 80, 7));
    gains.forEach(
        (degrees, gain) -> {
          Transfer transfer = Transfer.between(bent(65), bent(degrees));
          double published = gain / 12.0;
          row(
              "gain at " + degrees + " deg / gain at 65 deg",
              "Lanza 2019, knee",
              plain(published, 2),
              published - 0.1,
              published + 0.1,
              transfer.share());
        });
  }

  private void reliability() {
    Map<TestReliability, Double> agreement =
        new TreeMap<>(
            Map.of(
                TestReliability.PEAK_FORCE, 15.9,
                TestReliability.END_FORCE, 60.4,
                TestReliability.IMPULSE_ABOVE_END_FORCE, 35.7));
    agreement.forEach(
        (measure, half) ->
            row(
                "detectable change, %: `" + measure + "`",
                "McClean 2023, limits of agreement",
                plain(half, 1),
                half * 0.95,
                half * 1.05,
                100 * measure.detectableChange()));
    row(
        "detectable change, %: `" + TestReliability.MAXIMAL_HOLD + "`",
        "J Sports Sci 2025, between sessions",
        "5.7 to 9.3",
        5.7,
        9.3,
        100 * TestReliability.MAXIMAL_HOLD.detectableChange());
  }
}
