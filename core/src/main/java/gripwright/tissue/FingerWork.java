package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one finger of one hand does in an exercise, a session, a week: its time under load and
 * estimates of what it bears. Of a load on both hands each hand bears half.
 *
 * @param side which hand
 * @param finger which finger
 * @param timeUnderLoadSeconds all holds in which the finger takes part, in seconds
 * @param impulse estimated force on the fingertip times hold time, in N s
 * @param a2Exposure estimated force on the second annular pulley times hold time, in N s
 * @param a4Exposure estimated force on the fourth annular pulley times hold time, in N s
 */
public record FingerWork(
    Side side,
    Finger finger,
    double timeUnderLoadSeconds,
    double impulse,
    double a2Exposure,
    double a4Exposure) {

  private static final Comparator<FingerWork> ORDER =
      Comparator.comparing(FingerWork::side).thenComparing(FingerWork::finger);

  /**
   * Adds up work by finger.
   *
   * @param parts work in any order, of a finger any number of times
   * @return one for each finger of each hand that occurs, the left hand first, then in the order of
   *     the hand
   */
  public static List<FingerWork> together(Iterable<FingerWork> parts) {
    Map<FingerWork, FingerWork> sums = new TreeMap<>(ORDER);
    for (FingerWork part : parts) {
      sums.merge(part, part, FingerWork::plus);
    }
    return List.copyOf(sums.values());
  }

  private FingerWork plus(FingerWork more) {
    return new FingerWork(
        side,
        finger,
        timeUnderLoadSeconds + more.timeUnderLoadSeconds,
        impulse + more.impulse,
        a2Exposure + more.a2Exposure,
        a4Exposure + more.a4Exposure);
  }
}
