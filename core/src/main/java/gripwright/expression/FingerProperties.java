package gripwright.expression;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of fingers. */
final class FingerProperties {

  /** Description shared by all collections of fingers. */
  static final String DOC = "The fingers that hold, those of the left hand first.";

  private FingerProperties() {}

  static void addTo(List<Property> all) {
    PropertyCatalogue.Of finger = new PropertyCatalogue.Of(Kind.FINGER, all);
    finger
        .word("name", Vocabulary.of("finger", (Object[]) Finger.values()), "Name of the finger.")
        .word(
            "hand",
            Vocabulary.of("hand", (Object[]) Side.values()),
            "The hand that the finger belongs to.")
        .time("time-under-load", "Time under tension: the sum of all holds of the finger.");
    exposure(finger, "impulse", "force on the fingertip");
    exposure(finger, "a2-exposure", "force on the A2 pulley");
    exposure(finger, "a4-exposure", "force on the A4 pulley");
    finger.time("recent-time-under-load", recent("time under tension"));
    recent(finger, "impulse");
    recent(finger, "a2-exposure");
    recent(finger, "a4-exposure");
  }

  private static void exposure(PropertyCatalogue.Of finger, String name, String what) {
    finger.quantity(
        name, Dimension.IMPULSE, "Sum of " + what + " times time over its holds; an estimate.");
  }

  private static void recent(PropertyCatalogue.Of finger, String name) {
    String words = name.replace("a2-", "A2 ").replace("a4-", "A4 ");
    finger.quantity("recent-" + name, Dimension.IMPULSE, recent(words));
  }

  private static String recent(String what) {
    return "Of a finger of a week: its highest "
        + what
        + " in the last three weeks of the block that have a session and are not"
        + " deload weeks; missing if it held in none of them.";
  }
}
