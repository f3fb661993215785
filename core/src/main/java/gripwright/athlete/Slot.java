package gripwright.athlete;

import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;
import java.util.Optional;

/**
 * Time to train on some days.
 *
 * @param on the days
 * @param at the local time at which it begins; empty if it is any time of the day
 * @param time how long it is, above 0 and up to 24 h; a slot with a time ends by midnight
 * @param place name of the place, if one is written
 */
public record Slot(SlotDay on, Optional<LocalTime> at, Duration time, Optional<String> place) {

  private static final long DAY_MINUTES = Duration.ofDays(1).toMinutes();

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if the time is outside its {@link Range}, or the slot goes on
   *     after midnight
   */
  public Slot {
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(place, "place");
    Range.AVAILABLE.check(time);
    if (at.isPresent() && isPastMidnight(at.get(), time)) {
      throw new IllegalArgumentException("from " + at.get() + " for " + time + ", past midnight");
    }
  }

  /** Creates time without a place. */
  public Slot(SlotDay on, Optional<LocalTime> at, Duration time) {
    this(on, at, time, Optional.empty());
  }

  /** Returns this time at a place. */
  public Slot atPlace(String name) {
    return new Slot(on, at, time, Optional.of(name));
  }

  /** Returns time at any time of a weekday. */
  public static Slot on(DayOfWeek day, Duration time) {
    return new Slot(new SlotDay.Weekly(day, Optional.empty()), Optional.empty(), time);
  }

  /** Returns time from a time of a weekday on. */
  public static Slot on(DayOfWeek day, LocalTime at, Duration time) {
    Objects.requireNonNull(at, "at");
    return new Slot(new SlotDay.Weekly(day, Optional.empty()), Optional.of(at), time);
  }

  /** Returns time on a single day. */
  public static Slot on(LocalDate day, Optional<LocalTime> at, Duration time) {
    return new Slot(new SlotDay.Dated(day), at, time);
  }

  /** Returns whether time that begins at an hour would go on after midnight. */
  public static boolean isPastMidnight(LocalTime at, Duration time) {
    return at.toSecondOfDay() + time.toSeconds() > Duration.ofDays(1).toSeconds();
  }

  /** Returns the minute of the day at which it begins; 0 if it has no time. */
  public int startMinute() {
    return at.map(clock -> clock.toSecondOfDay() / 60).orElse(0);
  }

  /** Returns the minute of the day at which it ends, rounded up; that of midnight without time. */
  public int endMinute() {
    return at.isEmpty()
        ? (int) DAY_MINUTES
        : startMinute() + (int) time.plusMinutes(1).minusNanos(1).toMinutes();
  }

  /** Returns whether both may count for one day and one of them has no time or both overlap. */
  public boolean clashes(Slot other) {
    return countsBeside(other)
        && startMinute() < other.endMinute()
        && other.startMinute() < endMinute();
  }

  private boolean countsBeside(Slot other) {
    return on.weekday() == other.on.weekday()
        && on.date().equals(other.on.date())
        && on.span().map(Span::from).equals(other.on.span().map(Span::from));
  }
}
