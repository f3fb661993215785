package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/**
 * An angle, two ends of a range, or a middle and how far to either side.
 *
 * @param id the number of this part in its file
 * @param included whether the angles are those between the bones, 180 deg minus flexion
 * @param first the angle, the first end or the middle
 * @param to the second end; null if none is written
 * @param within how far to either side; null if none is written
 */
public record AngleRange(
    int id, boolean included, Amount first, @Nullable Amount to, @Nullable Amount within)
    implements Syntax {

  /** Returns whether nothing but one amount is written. */
  public boolean single() {
    return !included && to == null && within == null;
  }
}
