package gripwright.export.calendar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * An event of an athlete's calendar. Immutable.
 *
 * @param uid identifies the event in every edition of the calendar
 * @param stamp the day of what it is based on
 * @param day the day of the event
 * @param at its local time, wherever the athlete is; empty if it has none
 * @param minutes how long it takes, if it has a time; 0 if that is not known
 * @param past whether the event is over, so that nobody is reminded of it
 * @param summary one line
 * @param description lines separated by {@code \n}
 */
record CalendarEvent(
    String uid,
    LocalDate stamp,
    LocalDate day,
    Optional<LocalTime> at,
    int minutes,
    boolean past,
    String summary,
    String description) {

  /**
   * Returns an identifier that is always the same for the same parts, and from which they can't be
   * read (RFC 7986, 5.3: it must not identify a person).
   */
  static String uid(List<String> parts) {
    StringBuilder all = new StringBuilder("gripwright");
    parts.forEach(part -> all.append('\n').append(part.length()).append(' ').append(part));
    return UUID.nameUUIDFromBytes(all.toString().getBytes(StandardCharsets.UTF_8)).toString();
  }
}
