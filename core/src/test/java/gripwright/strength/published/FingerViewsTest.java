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
import gripwright.strength.LoadEstimate;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The table of docs/models/strength.md on fewer fingers. */
class FingerViewsTest {

  private static final Length EDGE = Length.ofMillimetres(20);
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private final StringBuilder table = new StringBuilder();

  private void row(String... cells) {
    table.append("| ").append(String.join(" | ", cells)).append(" |\n");
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
    return StrengthMap.of(List.of(test), FingerViewsTest::alike, DAY)
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
}
