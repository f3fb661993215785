package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TransferProperties {

  @Property
  void workOnAPostureCountsInFullForItself(@ForAll Setup setup) {
    Posture posture = Trials.posture(setup);
    Transfer transfer = Transfer.between(posture, posture);
    assertEquals(1, transfer.share(), 1e-12);
    assertEquals(1, transfer.low(), 1e-12);
    assertTrue(!transfer.extrapolated());
  }

  @Property
  void itIsSymmetricAndAtMostOne(@ForAll Setup one, @ForAll Setup other) {
    Transfer there = Transfer.between(Trials.posture(one), Trials.posture(other));
    Transfer back = Transfer.between(Trials.posture(other), Trials.posture(one));
    assertEquals(there.share(), back.share(), 1e-12);
    assertTrue(0 <= there.low() && there.high() <= 1);
    if (!one.grip().fingers().overlaps(other.grip().fingers())) {
      assertEquals(0, there.high());
    }
    if (!one.grip().fingers().equals(other.grip().fingers())) {
      assertTrue(there.share() < 1 && there.extrapolated());
    }
  }

  @Property
  void aLargerDifferenceNeverTransfersMore(
      @ForAll Setup setup,
      @ForAll Finger finger,
      @ForAll @DoubleRange(min = 0, max = 90) double one,
      @ForAll @DoubleRange(min = 0, max = 90) double other) {
    Posture posture = Trials.posture(setup);
    Transfer near = Transfer.between(posture, moved(posture, finger, Math.min(one, other)));
    Transfer far = Transfer.between(posture, moved(posture, finger, Math.max(one, other)));
    assertTrue(far.share() <= near.share() + 1e-12);
    assertTrue(far.low() <= near.low() + 1e-12);
    assertTrue(far.high() <= near.high() + 1e-12);
  }

  private static Posture moved(Posture posture, Finger finger, double degrees) {
    Map<Finger, Angle> flexions = new EnumMap<>(posture.flexions());
    flexions.computeIfPresent(finger, (f, angle) -> Angle.ofDegrees(angle.degrees() - degrees));
    return new Posture(flexions);
  }
}
