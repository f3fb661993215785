package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Sex;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Grips with the bands that coaches give them (common practice), under names not in the catalogue,
 * and hands to try them on.
 */
public final class PractisedGrips {

  public static final Length EDGE = Length.ofMillimetres(20);

  public static final Grip HALF_CRIMP =
      Grip.named("practised-half-crimp")
          .family(GripFamily.FOUR)
          .fingers(FingerSet.FOUR)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75, 105))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75, 105))
          .build();

  public static final Grip FULL_CRIMP =
      Grip.named("practised-full-crimp")
          .family(GripFamily.FOUR)
          .fingers(FingerSet.FOUR)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(95, 115))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(95, 115))
          .band(Finger.RING, Joint.PIP, Band.degrees(95, 115))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(60, 115))
          .build();

  public static final Grip THREE_FINGER_DRAG =
      Grip.named("practised-three-finger-drag")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.RING, Joint.PIP, Band.degrees(0, 20))
          .build();

  public static final Grip FRONT_THREE =
      Grip.named("practised-front-three")
          .family(GripFamily.SPLIT)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75, 105))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75, 105))
          .band(Finger.RING, Joint.PIP, Band.degrees(60, 105))
          .build();

  public static final Grip BACK_THREE = backThree("practised-back-three", 75, 105, 60);
  public static final Grip BACK_THREE_MIDDLE_OPEN = backThree("back-three-middle-open", 20, 50, 45);

  public static final Grip FRONT_TWO =
      Grip.named("practised-front-two")
          .family(GripFamily.SPLIT)
          .fingers(Finger.INDEX, Finger.MIDDLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(10, 50))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(20, 60))
          .build();

  public static final Grip MIDDLE_TWO =
      Grip.named("practised-middle-two")
          .family(GripFamily.SPLIT)
          .fingers(Finger.MIDDLE, Finger.RING)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(20, 70))
          .band(Finger.RING, Joint.PIP, Band.degrees(10, 60))
          .build();

  public static final Grip MIDDLE_MONO =
      Grip.named("middle-mono")
          .family(GripFamily.SINGLE)
          .fingers(Finger.MIDDLE)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(20, 75))
          .build();

  /** Index, middle and ring straight, the little finger on: no hand can. */
  public static final Grip STRAIGHT_FOUR =
      Grip.named("straight-four")
          .family(GripFamily.OPEN)
          .fingers(FingerSet.FOUR)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.RING, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0, 20))
          .build();

  private PractisedGrips() {}

  private static Grip backThree(String name, double low, double high, double ring) {
    return Grip.named(name)
        .family(GripFamily.SPLIT)
        .fingers(Finger.MIDDLE, Finger.RING, Finger.LITTLE)
        .band(Finger.MIDDLE, Joint.PIP, Band.degrees(low, high))
        .band(Finger.RING, Joint.PIP, Band.degrees(ring, 105))
        .band(Finger.LITTLE, Joint.PIP, Band.degrees(0, 90))
        .build();
  }

  /** Returns every grip that an ordinary hand takes on an edge of 20 mm. */
  public static List<Grip> all() {
    return List.of(
        HALF_CRIMP,
        FULL_CRIMP,
        THREE_FINGER_DRAG,
        FRONT_THREE,
        BACK_THREE,
        FRONT_TWO,
        MIDDLE_TWO,
        MIDDLE_MONO);
  }

  /** Returns the hand of a percentile of both length and breadth. */
  public static HandShape hand(Sex sex, double percentile) {
    return HandShape.of(
        Hand.ofLength(HandMeasure.LENGTH.percentile(sex, percentile))
            .withBreadth(HandMeasure.BREADTH.percentile(sex, percentile)));
  }

  /** Returns hands from the 5th to the 95th percentile of both sexes. */
  public static List<HandShape> hands() {
    List<HandShape> hands = new ArrayList<>();
    for (Sex sex : Sex.values()) {
      for (double percentile : new double[] {5, 25, 50, 75, 95}) {
        hands.add(hand(sex, percentile));
      }
    }
    return hands;
  }

  /** Returns a hand of which only the length is known. */
  public static HandShape ofLength(double millimetres) {
    return HandShape.of(Hand.ofLength(Length.ofMillimetres(millimetres)), Optional.empty());
  }
}
