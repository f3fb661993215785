package gripwright.athlete;

import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** The days of a line of a calendar. */
public sealed interface SlotDay {

  /** Calls the visitor's method for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of days.
   *
   * @param <R> the result
   */
  interface Visitor<R> {
    /** Visits a weekday. */
    R weekly(Weekly weekly);

    /** Visits a single day. */
    R dated(Dated dated);
  }

  /**
   * A weekday.
   *
   * @param day the weekday
   * @param span when it is in force; empty for always
   */
  record Weekly(DayOfWeek day, Optional<Span> span) implements SlotDay {
    /** Refuses null. */
    public Weekly {
      Objects.requireNonNull(day, "day");
      Objects.requireNonNull(span, "span");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.weekly(this);
    }
  }

  /**
   * A single day.
   *
   * @param day the day
   */
  record Dated(LocalDate day) implements SlotDay {
    /**
     * Checks the year.
     *
     * @throws IllegalArgumentException if the year is outside 1900 to 2199
     */
    public Dated {
      Objects.requireNonNull(day, "day");
      Range.YEAR.check(day);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dated(this);
    }
  }

  /** Returns the single day, if it is one. */
  default Optional<LocalDate> date() {
    return accept(
        new Visitor<>() {
          @Override
          public Optional<LocalDate> weekly(Weekly weekly) {
            return Optional.empty();
          }

          @Override
          public Optional<LocalDate> dated(Dated dated) {
            return Optional.of(dated.day());
          }
        });
  }

  /** Returns when it is in force; empty for always, and for a single day. */
  default Optional<Span> span() {
    return accept(
        new Visitor<>() {
          @Override
          public Optional<Span> weekly(Weekly weekly) {
            return weekly.span();
          }

          @Override
          public Optional<Span> dated(Dated dated) {
            return Optional.empty();
          }
        });
  }

  /** Returns the weekday. */
  default DayOfWeek weekday() {
    return accept(
        new Visitor<>() {
          @Override
          public DayOfWeek weekly(Weekly weekly) {
            return weekly.day();
          }

          @Override
          public DayOfWeek dated(Dated dated) {
            return dated.day().getDayOfWeek();
          }
        });
  }

  /**
   * Returns what a calendar has on a day: the lines that name the date; or else, of the lines in
   * force for some time, those that begin last; or else those always in force.
   *
   * @param lines the lines of a calendar
   * @param dayOf the days of a line
   * @param day the day
   */
  static <T> List<T> counting(List<T> lines, Function<T, SlotDay> dayOf, LocalDate day) {
    List<T> named =
        lines.stream()
            .filter(line -> dayOf.apply(line).date().filter(day::equals).isPresent())
            .toList();
    return named.isEmpty() ? usual(lines, dayOf, day) : named;
  }

  /** Returns what a calendar would have on a day if no line named its date. */
  static <T> List<T> usual(List<T> lines, Function<T, SlotDay> dayOf, LocalDate day) {
    Optional<LocalDate> last =
        lines.stream()
            .flatMap(line -> dayOf.apply(line).span().stream())
            .filter(span -> span.covers(day))
            .map(Span::from)
            .max(Comparator.naturalOrder());
    return lines.stream()
        .filter(
            line -> {
              SlotDay days = dayOf.apply(line);
              return days.date().isEmpty()
                  && days.weekday() == day.getDayOfWeek()
                  && days.span().filter(span -> span.covers(day)).map(Span::from).equals(last)
                  && (last.isPresent() || days.span().isEmpty());
            })
        .toList();
  }
}
