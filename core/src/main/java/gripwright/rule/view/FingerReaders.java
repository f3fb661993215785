package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.tissue.FingerWork;
import java.util.function.ToDoubleFunction;

/** Readers of the properties of fingers. */
final class FingerReaders {

  private FingerReaders() {}

  static void addTo(Readers all) {
    Readers.Of<FingerView> finger = all.of(Kind.FINGER);
    finger
        .object("name", f -> f.work().finger().word())
        .object("hand", f -> f.work().side().word())
        .number("time-under-load", f -> f.work().timeUnderLoadSeconds());
    exposure(finger, "impulse", FingerWork::impulse);
    exposure(finger, "a2-exposure", FingerWork::a2Exposure);
    exposure(finger, "a4-exposure", FingerWork::a4Exposure);
    finger.number("recent-time-under-load", f -> f.recently(FingerWork::timeUnderLoadSeconds));
    recent(finger, "impulse", FingerWork::impulse);
    recent(finger, "a2-exposure", FingerWork::a2Exposure);
    recent(finger, "a4-exposure", FingerWork::a4Exposure);
  }

  private static void exposure(
      Readers.Of<FingerView> finger, String name, ToDoubleFunction<FingerWork> read) {
    finger.number(name, f -> read.applyAsDouble(f.work()));
  }

  private static void recent(
      Readers.Of<FingerView> finger, String name, ToDoubleFunction<FingerWork> read) {
    finger.number("recent-" + name, f -> f.recently(read));
  }
}
