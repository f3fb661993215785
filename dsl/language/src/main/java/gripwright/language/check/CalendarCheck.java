package gripwright.language.check;

import gripwright.athlete.Slot;
import gripwright.athlete.SlotDay;
import gripwright.athlete.Span;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.CalendarDay;
import gripwright.language.syntax.CalendarSpan;
import gripwright.language.syntax.ClockTime;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Checks the times of a calendar. */
final class CalendarCheck {

  private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]");

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Words words;

  /** The days without a time of day, by the first day of their line. */
  private final Map<Optional<LocalDate>, Once> once = new HashMap<>();

  private final List<Written> written = new ArrayList<>();
  private final List<Word> places = new ArrayList<>();
  private boolean somewhereUnnamed;

  /** A time to train and its place in the text. */
  private record Written(Slot slot, AthleteItem.DaySlot at) {}

  CalendarCheck(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
    this.words = new Words(diagnostics);
  }

  /** Returns the times of a line that are right and overlap none of those before. */
  List<Slot> slots(AthleteItem.Available line) {
    CalendarSpan written = line.span();
    Optional<Span> span = written == null ? Optional.empty() : span(written);
    List<Slot> slots = new ArrayList<>();
    for (AthleteItem.DaySlot slot : line.slots()) {
      Word place = slot.place();
      somewhereUnnamed |= place == null;
      if (place != null) {
        places.add(place);
      }
      slot(slot, written, span).ifPresent(slots::add);
    }
    return slots;
  }

  /** Returns whether a time has no place, so that the equipment of no place is needed. */
  boolean isSomewhereUnnamed() {
    return somewhereUnnamed || places.isEmpty();
  }

  /**
   * Reports times at places without equipment.
   *
   * @param known the places with equipment
   * @param damaged true if a part of the text could not be read and may have more
   */
  void requirePlaces(Set<String> known, boolean damaged) {
    for (Word place : places) {
      if (!known.contains(place.text())) {
        if (damaged) {
          diagnostics.markInvalid();
        } else {
          diagnostics.unknown(place, "place", known);
        }
      }
    }
  }

  /** Returns when a line is in force; empty if that has a mistake, which is reported. */
  Optional<Span> span(CalendarSpan span) {
    Optional<LocalDate> from = amounts.date(span.from());
    DateText last = span.to();
    Optional<LocalDate> to = last == null ? Optional.empty() : amounts.date(last);
    if (last != null) {
      amounts.inOrder(span.from(), Terms.of("date-first-day"), last, Terms.of("date-last-day"));
    }
    Amount every = span.every();
    Optional<Integer> weeks =
        every == null
            ? Optional.of(1)
            : amounts.weeks(every, gripwright.language.check.Slot.RECURRENCE);
    boolean sound =
        from.isPresent()
            && weeks.isPresent()
            && (last == null || (to.isPresent() && !to.get().isBefore(from.get())));
    return sound ? Optional.of(new Span(from.get(), to, weeks.get())) : Optional.empty();
  }

  private Optional<Slot> slot(
      AthleteItem.DaySlot slot, @Nullable CalendarSpan written, Optional<Span> span) {
    Optional<SlotDay> day = day(slot.day(), written, span);
    Optional<Duration> time = amounts.time(slot.time(), gripwright.language.check.Slot.AVAILABLE);
    ClockTime clock = slot.clock();
    Optional<LocalTime> at = clock == null ? Optional.empty() : clock(clock);
    boolean first = clock != null || day.isEmpty() || isFirst(slot.day(), span.map(Span::from));
    boolean sound =
        day.isPresent() && time.isPresent() && first && (clock == null || at.isPresent());
    if (!sound) {
      return Optional.empty();
    }
    if (at.isPresent() && Slot.isPastMidnight(at.get(), time.get())) {
      diagnostics.error(slot, "value.slot", "midnight", at.get().toString());
      return Optional.empty();
    }
    Word place = slot.place();
    Optional<String> where = place == null ? Optional.empty() : Optional.of(place.text());
    return apart(new Written(new Slot(day.get(), at, time.get(), where), slot));
  }

  private Optional<SlotDay> day(
      CalendarDay day, @Nullable CalendarSpan written, Optional<Span> span) {
    DateText date = day.date();
    Word weekday = day.weekday();
    if (date != null) {
      if (written != null) {
        diagnostics.error(day, "value.slot", "dated", date.value());
        return Optional.empty();
      }
      return amounts.date(date).map(SlotDay.Dated::new);
    }
    if (weekday == null) {
      return Optional.empty();
    }
    return words
        .weekday(weekday)
        .filter(of -> written == null || span.isPresent())
        .map(of -> new SlotDay.Weekly(of, span));
  }

  /** Returns whether a day without a time is the first of its name in lines that begin together. */
  private boolean isFirst(CalendarDay day, Optional<LocalDate> from) {
    Word weekday = day.weekday();
    DateText date = day.date();
    String name = weekday != null ? weekday.text() : date != null ? date.value().toString() : "";
    Syntax at = weekday != null ? weekday : day;
    return once.computeIfAbsent(from, f -> new Once(diagnostics))
        .first(at, date == null ? "available-weekday" : "available-day", name);
  }

  private Optional<Slot> apart(Written slot) {
    for (Written before : written) {
      if (before.slot().clashes(slot.slot())) {
        boolean untimedBefore = before.slot().at().isEmpty();
        boolean timed = !untimedBefore && slot.slot().at().isPresent();
        diagnostics.errorBeside(
            (untimedBefore ? before : slot).at(),
            (untimedBefore ? slot : before).at(),
            "other-time-here",
            "value.slot",
            timed ? "overlap" : "untimed",
            name(slot.at().day()));
        return Optional.empty();
      }
    }
    written.add(slot);
    return Optional.of(slot.slot());
  }

  private static Object name(CalendarDay day) {
    Word weekday = day.weekday();
    DateText date = day.date();
    return weekday != null ? "`" + weekday.text() + "`" : date != null ? date.value() : "";
  }

  /** Returns a time of day; empty if it is none, which is reported. */
  Optional<LocalTime> clock(ClockTime clock) {
    if (CLOCK.matcher(clock.text()).matches()) {
      return Optional.of(LocalTime.parse(clock.text()));
    }
    String padded = two(clock.hours()) + ":" + two(clock.minutes());
    if (CLOCK.matcher(padded).matches()) {
      diagnostics.error(clock, "value.clock", "found", clock.text(), "meant", padded);
    } else {
      diagnostics.error(clock, "value.clock", "found", clock.text());
    }
    return Optional.empty();
  }

  private static String two(String digits) {
    return digits.length() == 1 ? "0" + digits : digits;
  }
}
