package gripwright.tissue;

import gripwright.hand.Finger;
import java.util.List;
import java.util.Set;

/**
 * One finger leaves the hold, by each view of the arm. Where one number is needed it is the worse
 * for the finger: the higher ratio.
 *
 * @param momentKept with the arm where it is
 * @param armSwings with the arm under the new centre of force
 */
public record SlipViews(Slip momentKept, Slip armSwings) {

  /**
   * Checks the pair.
   *
   * @throws IllegalArgumentException if the slips are of another view or of different fingers
   */
  public SlipViews {
    if (momentKept.view() != Slip.View.MOMENT_KEPT
        || armSwings.view() != Slip.View.ARM_SWINGS
        || momentKept.leaving() != armSwings.leaving()) {
      throw new IllegalArgumentException("not two views of one slip");
    }
  }

  /** Returns the finger that leaves. */
  public Finger leaving() {
    return momentKept.leaving();
  }

  /** Returns the fingers that remain, in the order of the hand. */
  public Set<Finger> remaining() {
    return momentKept.after().keySet();
  }

  /** Returns the two slips. */
  public List<Slip> both() {
    return List.of(momentKept, armSwings);
  }

  /** Returns the slip that loads a remaining finger more. */
  public Slip worse(Finger finger) {
    return armSwings.ratio(finger) > momentKept.ratio(finger) ? armSwings : momentKept;
  }

  /** Returns the higher of a remaining finger's slip ratios. */
  public double ratio(Finger finger) {
    return worse(finger).ratio(finger);
  }
}
