package gripwright.athlete;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.WrittenReason;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.quantity.Range;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An injury of a finger.
 *
 * @param finger the finger
 * @param structure the injured structure
 * @param side the hand; empty if both or unknown
 * @param from the day it happened
 * @param cleared the day a practitioner cleared it, if they have
 * @param clearedBy who cleared it, if written; never without the day
 * @param note a note by the coach
 */
public record Injury(
    Finger finger,
    Structure structure,
    Optional<Side> side,
    LocalDate from,
    Optional<LocalDate> cleared,
    Optional<String> clearedBy,
    Optional<String> note) {

  /**
   * Weeks of return to load after clearance, also used by the built-in rules; the library's own
   * choice.
   */
  public static final int WEEKS_OF_RETURN = 12;

  /** Months after clearance in which lower strength is expected; the library's own choice. */
  private static final int MONTHS_NEAR = 12;

  /**
   * Checks the dates and who cleared it.
   *
   * @throws IllegalArgumentException if it was cleared before it happened, or a year is outside
   *     1900 to 2199, a clearance has a person but no day, or the person's name has no letter and
   *     no digit
   */
  public Injury {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(structure, "structure");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(cleared, "cleared");
    Objects.requireNonNull(clearedBy, "clearedBy");
    Objects.requireNonNull(note, "note");
    Range.YEAR.check(from);
    cleared.ifPresent(Range.YEAR::check);
    if (cleared.isPresent() && cleared.get().isBefore(from)) {
      throw new IllegalArgumentException("cleared " + cleared.get() + " before " + from);
    }
    if (clearedBy.isPresent() && cleared.isEmpty()) {
      throw new IllegalArgumentException("cleared by " + clearedBy.get() + " on no day");
    }
    clearedBy.ifPresent(who -> WrittenReason.check(who, "who cleared the injury"));
  }

  /**
   * Creates an injury without the name of the person who cleared it.
   *
   * @throws IllegalArgumentException as the other constructor does
   */
  public Injury(
      Finger finger,
      Structure structure,
      Optional<Side> side,
      LocalDate from,
      Optional<LocalDate> cleared,
      Optional<String> note) {
    this(finger, structure, side, from, cleared, Optional.empty(), note);
  }

  /**
   * Returns this injury with the name of the person who cleared it.
   *
   * @param who the practitioner
   * @throws IllegalArgumentException if there is no day of clearance, or the name has no letter and
   *     no digit
   */
  public Injury clearedBy(String who) {
    return new Injury(finger, structure, side, from, cleared, Optional.of(who), note);
  }

  /**
   * Returns whether a day is in the weeks of return, which are the {@value #WEEKS_OF_RETURN} weeks
   * from the day of clearance. Skin has no such weeks.
   */
  public boolean isReturning(LocalDate day) {
    return isReturning(day, day);
  }

  /**
   * Returns whether lower strength is expected on a day, which is so from the injury until a year
   * after its clearance.
   */
  public boolean isNear(LocalDate day) {
    Objects.requireNonNull(day, "day");
    return !day.isBefore(from)
        && cleared.filter(on -> !day.isBefore(on.plusMonths(MONTHS_NEAR))).isEmpty();
  }

  /** Returns whether any day from the first to the last is in the weeks of return. */
  public boolean isReturning(LocalDate first, LocalDate last) {
    return structure != Structure.SKIN
        && cleared
            .filter(c -> !last.isBefore(c) && first.isBefore(c.plusWeeks(WEEKS_OF_RETURN)))
            .isPresent();
  }

  /** Returns the place of the injury. */
  public Message place() {
    Map<String, Object> arguments = new TreeMap<>();
    arguments.put("finger", finger);
    arguments.put("structure", structure);
    side.ifPresent(hand -> arguments.put("side", hand));
    return new Clause(
        side.isPresent() ? "common.place-structure-side" : "common.place-structure", arguments);
  }

  /** Returns whether the injury has happened and is not yet cleared on a day. */
  public boolean openOn(LocalDate day) {
    return !day.isBefore(from) && (cleared.isEmpty() || day.isBefore(cleared.get()));
  }

  /** Returns the finger, structure and side, such as {@code ring a2 left}. */
  @Override
  public String toString() {
    return finger + " " + structure + side.map(s -> " " + s).orElse("");
  }
}
