package gripwright.athlete;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An injury of a finger.
 *
 * @param finger which finger
 * @param structure what is hurt
 * @param side which hand; empty if both or not said
 * @param from the day it happened
 * @param cleared the day a practitioner cleared it, if they have
 * @param note in the coach's words
 */
public record Injury(
    Finger finger,
    Structure structure,
    Optional<Side> side,
    LocalDate from,
    Optional<LocalDate> cleared,
    Optional<String> note) {

  /**
   * Checks the order of the dates.
   *
   * @throws IllegalArgumentException if it was cleared before it happened
   */
  public Injury {
    if (cleared.isPresent() && cleared.get().isBefore(from)) {
      throw new IllegalArgumentException("cleared " + cleared.get() + " before " + from);
    }
  }

  /** Tells whether the injury has happened and is not yet cleared on a day. */
  public boolean openOn(LocalDate day) {
    return !day.isBefore(from) && (cleared.isEmpty() || day.isBefore(cleared.get()));
  }

  /** Returns the finger, structure and side, such as {@code ring a2 left}. */
  @Override
  public String toString() {
    return finger + " " + structure + side.map(s -> " " + s).orElse("");
  }
}
