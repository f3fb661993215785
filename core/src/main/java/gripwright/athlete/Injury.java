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
import org.jspecify.annotations.Nullable;

/** An injury of a finger. Immutable. */
public final class Injury {

  /**
   * Weeks of return to load after clearance, also used by the built-in rules; the library's own
   * choice.
   */
  public static final int WEEKS_OF_RETURN = 12;

  /** Months after clearance in which lower strength is expected; the library's own choice. */
  private static final int MONTHS_NEAR = 12;

  /** The components, checked. */
  private record Parts(
      Finger finger,
      Structure structure,
      Optional<Side> side,
      LocalDate from,
      Optional<LocalDate> cleared,
      Optional<String> clearedBy,
      Optional<String> note) {
    Parts {
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
  }

  private final Parts parts;

  private Injury(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for an injury that is not cleared unless set.
   *
   * @param finger the finger
   * @param structure the injured structure
   * @param from the day it happened, in the years 1900 to 2199
   */
  public static Builder builder(Finger finger, Structure structure, LocalDate from) {
    return new Builder(finger, structure, from);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the finger. */
  public Finger finger() {
    return parts.finger;
  }

  /** Returns the injured structure. */
  public Structure structure() {
    return parts.structure;
  }

  /** Returns the hand; empty if both or unknown. */
  public Optional<Side> side() {
    return parts.side;
  }

  /** Returns the day it happened. */
  public LocalDate from() {
    return parts.from;
  }

  /** Returns the day a practitioner cleared it, if they have. */
  public Optional<LocalDate> cleared() {
    return parts.cleared;
  }

  /** Returns who cleared it, if written; never without the day. */
  public Optional<String> clearedBy() {
    return parts.clearedBy;
  }

  /** Returns a note by the coach. */
  public Optional<String> note() {
    return parts.note;
  }

  /**
   * Returns this injury with the name of the person who cleared it.
   *
   * @param who the practitioner
   * @throws IllegalArgumentException if there is no day of clearance, or the name has no letter and
   *     no digit
   */
  public Injury clearedBy(String who) {
    return toBuilder().clearedBy(who).build();
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
    return !day.isBefore(parts.from)
        && parts.cleared.filter(on -> !day.isBefore(on.plusMonths(MONTHS_NEAR))).isEmpty();
  }

  /** Returns whether any day from the first to the last is in the weeks of return. */
  public boolean isReturning(LocalDate first, LocalDate last) {
    return parts.structure != Structure.SKIN
        && parts
            .cleared
            .filter(c -> !last.isBefore(c) && first.isBefore(c.plusWeeks(WEEKS_OF_RETURN)))
            .isPresent();
  }

  /** Returns the place of the injury. */
  public Message place() {
    Map<String, Object> arguments = new TreeMap<>();
    arguments.put("finger", parts.finger);
    arguments.put("structure", parts.structure);
    parts.side.ifPresent(hand -> arguments.put("side", hand));
    return new Clause(
        parts.side.isPresent() ? "common.place-structure-side" : "common.place-structure",
        arguments);
  }

  /** Returns whether the injury has happened and is not yet cleared on a day. */
  public boolean openOn(LocalDate day) {
    return !day.isBefore(parts.from)
        && (parts.cleared.isEmpty() || day.isBefore(parts.cleared.get()));
  }

  /** Returns the finger, structure and side, such as {@code ring a2 left}. */
  @Override
  public String toString() {
    return parts.finger + " " + parts.structure + parts.side.map(s -> " " + s).orElse("");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Injury that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private Finger finger;
    private Structure structure;
    private Optional<Side> side = Optional.empty();
    private LocalDate from;
    private Optional<LocalDate> cleared = Optional.empty();
    private Optional<String> clearedBy = Optional.empty();
    private Optional<String> note = Optional.empty();

    private Builder(Finger finger, Structure structure, LocalDate from) {
      this.finger = Objects.requireNonNull(finger, "finger");
      this.structure = Objects.requireNonNull(structure, "structure");
      this.from = Objects.requireNonNull(from, "from");
    }

    private Builder(Parts copied) {
      finger = copied.finger;
      structure = copied.structure;
      side = copied.side;
      from = copied.from;
      cleared = copied.cleared;
      clearedBy = copied.clearedBy;
      note = copied.note;
    }

    /** Sets the finger. */
    public Builder finger(Finger value) {
      Objects.requireNonNull(value, "value");
      finger = value;
      return this;
    }

    /** Sets the injured structure. */
    public Builder structure(Structure value) {
      Objects.requireNonNull(value, "value");
      structure = value;
      return this;
    }

    /** Sets the hand. */
    public Builder side(Side value) {
      Objects.requireNonNull(value, "value");
      return side(Optional.of(value));
    }

    /** Sets the hand; empty if both or unknown. */
    public Builder side(Optional<Side> value) {
      Objects.requireNonNull(value, "value");
      side = value;
      return this;
    }

    /** Sets the day it happened. */
    public Builder from(LocalDate value) {
      Objects.requireNonNull(value, "value");
      from = value;
      return this;
    }

    /** Sets the day a practitioner cleared it. */
    public Builder cleared(LocalDate value) {
      Objects.requireNonNull(value, "value");
      return cleared(Optional.of(value));
    }

    /** Sets the day a practitioner cleared it, if they have. */
    public Builder cleared(Optional<LocalDate> value) {
      Objects.requireNonNull(value, "value");
      cleared = value;
      return this;
    }

    /** Sets who cleared it; the day must be set too. */
    public Builder clearedBy(String value) {
      Objects.requireNonNull(value, "value");
      return clearedBy(Optional.of(value));
    }

    /** Sets who cleared it, if written; never without the day. */
    public Builder clearedBy(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      clearedBy = value;
      return this;
    }

    /** Sets a note by the coach. */
    public Builder note(String value) {
      Objects.requireNonNull(value, "value");
      return note(Optional.of(value));
    }

    /** Sets a note by the coach. */
    public Builder note(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      note = value;
      return this;
    }

    /**
     * Returns the injury.
     *
     * @throws IllegalArgumentException if it was cleared before it happened, or a year is outside
     *     1900 to 2199, a clearance has a person but no day, or the person's name has no letter and
     *     no digit
     */
    public Injury build() {
      return new Injury(new Parts(finger, structure, side, from, cleared, clearedBy, note));
    }
  }
}
