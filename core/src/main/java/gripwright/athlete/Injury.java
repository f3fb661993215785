package gripwright.athlete;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.quantity.Range;
import java.time.LocalDate;
import java.util.Objects;
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
   * Checks the dates.
   *
   * @throws IllegalArgumentException if it was cleared before it happened, or a year is outside
   *     1900 to 2199
   */
  public Injury {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(structure, "structure");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(cleared, "cleared");
    Objects.requireNonNull(note, "note");
    Range.YEAR.check(from);
    cleared.ifPresent(Range.YEAR::check);
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
