package gripwright.rule;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.plan.FingerWork;
import gripwright.quantity.Dimension;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The properties of fingers. */
final class FingerProperties {

  /** Said of every collection of fingers. */
  static final String DOC = "The fingers that hold in it, those of the left hand first.";

  private FingerProperties() {}

  static void addTo(List<PropertyTable.Entry> all) {
    PropertyTable.Of<FingerView> finger =
        new PropertyTable.Of<>(Kind.FINGER, FingerView.class, all);
    finger
        .word(
            "name",
            Vocabulary.of("finger", (Object[]) Finger.values()),
            "Which finger it is.",
            f -> f.work().finger().word())
        .word(
            "hand",
            Vocabulary.of("hand", (Object[]) Side.values()),
            "Which hand it belongs to.",
            f -> f.work().side().word())
        .time(
            "time-under-load",
            "All holds in which it takes part.",
            f -> f.work().timeUnderLoadSeconds());
    exposure(finger, "impulse", "force on the fingertip", FingerWork::impulse);
    exposure(finger, "a2-exposure", "force on the A2 pulley", FingerWork::a2Exposure);
    exposure(finger, "a4-exposure", "force on the A4 pulley", FingerWork::a4Exposure);
    finger.time(
        "recent-time-under-load",
        recent("time under load"),
        f -> f.recently(FingerWork::timeUnderLoadSeconds));
    recent(finger, "impulse", FingerWork::impulse);
    recent(finger, "a2-exposure", FingerWork::a2Exposure);
    recent(finger, "a4-exposure", FingerWork::a4Exposure);
  }

  private static void exposure(
      PropertyTable.Of<FingerView> finger,
      String name,
      String what,
      ToDoubleFunction<FingerWork> read) {
    finger.quantity(
        name,
        Dimension.IMPULSE,
        "Sum of " + what + " times time over its holds, an estimate.",
        f -> read.applyAsDouble(f.work()));
  }

  private static void recent(
      PropertyTable.Of<FingerView> finger, String name, ToDoubleFunction<FingerWork> read) {
    String words = name.replace("a2-", "A2 ").replace("a4-", "A4 ");
    finger.quantity("recent-" + name, Dimension.IMPULSE, recent(words), f -> f.recently(read));
  }

  private static String recent(String what) {
    return "Of a finger of a week: its highest "
        + what
        + " in the last three uneased weeks of the block that have a session; missing if it held in"
        + " none of them.";
  }
}
