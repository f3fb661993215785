package gripwright.export.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateStart;
import biweekly.property.RawProperty;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Events as the text of a calendar, by biweekly, and back. */
final class CalendarFile {

  /** Names the writer of a calendar. */
  static final String PRODUCT = "-//Gripwright//Calendar//EN";

  /** Most bytes of a line without its end (RFC 5545, 3.1). */
  private static final int LINE = 75;

  private static final String END = "\r\n";

  private static final String START = "DTSTART";

  /** A local time in any zone (RFC 5545, 3.3.5, form 1). */
  private static final DateTimeFormatter FLOATING =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

  private static final int REPLACEMENT = 0xFFFD;

  private CalendarFile() {}

  /** Returns the event of a calendar. */
  static VEvent event(CalendarEvent event, int sequence) {
    VEvent written = new VEvent();
    written.setUid(event.uid());
    written.setDateTimeStamp(midnight(event.stamp()));
    start(written, event);
    written.setSummary(writable(event.summary()));
    written.setDescription(writable(event.description()));
    written.setSequence(sequence);
    // A session takes no whole day; without this, calendars would show the day as busy.
    written.setTransparency(true);
    return written;
  }

  /** Sets the start of an event: its day, or its local time without a zone. */
  private static void start(VEvent written, CalendarEvent event) {
    LocalDate day = event.day();
    if (event.at().isPresent()) {
      setFloating(written, event.day().atTime(event.at().get()).format(FLOATING));
      if (event.minutes() > 0) {
        written.setDuration(Duration.builder().minutes(event.minutes()).build());
      }
      return;
    }
    written.setDateStart(
        new DateStart(
            new ICalDate(
                new DateTimeComponents(
                    day.getYear(), day.getMonthValue(), day.getDayOfMonth(), 0, 0, 0, false),
                false)));
  }

  /**
   * Sets a local time as its text. The library would take it through the zone of this machine, in
   * which it need not exist.
   */
  private static void setFloating(VEvent written, String start) {
    written.removeProperties(DateStart.class);
    written.setExperimentalProperty(START, start);
  }

  private static String startOf(VEvent event) {
    RawProperty floating = event.getExperimentalProperty(START);
    return floating != null
        ? floating.getValue()
        : event.getDateStart() == null ? "" : String.valueOf(event.getDateStart().getValue());
  }

  /** Returns an event whose start, if it is a local time, is its text. */
  private static VEvent withFloatingStart(VEvent event) {
    DateStart start = event.getDateStart();
    if (start != null && start.getValue() != null && start.getValue().hasTime()) {
      setFloating(event, start.getValue().getRawComponents().toString(true, false));
    }
    return event;
  }

  /** Adds a reminder before the start of an event. */
  static void remind(VEvent event, int minutes) {
    Duration before = Duration.builder().prior(true).minutes(minutes).build();
    event.addAlarm(VAlarm.display(new Trigger(before, null), event.getSummary().getValue()));
  }

  /** Returns what an athlete sees of an event: a change of it is a new edition of the event. */
  static List<String> shown(VEvent event) {
    return Stream.concat(
            Stream.of(startOf(event)),
            Stream.of(
                    Optional.ofNullable(event.getSummary()),
                    Optional.ofNullable(event.getDescription()))
                .map(text -> text.map(value -> String.valueOf(value.getValue())).orElse("")))
        .toList();
  }

  static boolean isCancelled(VEvent event) {
    return event.getStatus() != null && event.getStatus().isCancelled();
  }

  /**
   * Marks an event of an earlier edition as one that will not take place.
   *
   * @param stamp the day of what that is based on
   */
  static void cancel(VEvent event, LocalDate stamp) {
    event.setStatus(Status.cancelled());
    event.setDateTimeStamp(midnight(stamp));
    event.setSequence(sequence(event) + 1);
    event.getAlarms().clear();
  }

  /** Returns the number of the edition of an event, from 0. */
  static int sequence(VEvent event) {
    return event.getSequence() == null ? 0 : event.getSequence().getValue();
  }

  private static Date midnight(LocalDate day) {
    return Date.from(day.atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  /** Returns a text in one line. */
  static String line(String text) {
    return text.lines().map(String::strip).collect(Collectors.joining(" "));
  }

  /**
   * Returns a text without what a calendar can't contain: control characters other than line breaks
   * and tabs (RFC 5545, 3.3.11), halves of characters, and blanks at its ends, which some readers
   * drop.
   */
  static String writable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.replace(END, "\n")
        .codePoints()
        .map(c -> c == '\n' || c == '\t' || !isForbidden(c) ? c : REPLACEMENT)
        .forEach(out::appendCodePoint);
    return out.toString().strip();
  }

  private static boolean isForbidden(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.CONTROL || type == Character.SURROGATE;
  }

  /**
   * Returns the text of a calendar: lines end in CR LF and have at most {@value #LINE} bytes in
   * UTF-8.
   *
   * @param name what a calendar program calls it
   */
  static String text(String name, List<VEvent> events) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(writable(name));
    events.forEach(calendar::addEvent);
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // not from memory
    }
    return folded(text.toString().replace(END + " ", ""));
  }

  /** Folds by bytes, between code points; the library counts characters. */
  private static String folded(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (String line : text.lines().toList()) {
      int bytes = 0;
      for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
        int codePoint = line.codePointAt(i);
        int more = codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4;
        if (bytes + more > LINE) {
          out.append(END).append(' ');
          bytes = 1;
        }
        out.appendCodePoint(codePoint);
        bytes += more;
      }
      out.append(END);
    }
    return out.toString();
  }

  /**
   * Returns the events of a calendar that this class wrote.
   *
   * @throws IllegalArgumentException if it is another text
   */
  static List<VEvent> events(String text) {
    try (ICalReader reader = new ICalReader(text)) {
      ICalendar calendar = reader.readNext();
      if (calendar == null
          || calendar.getProductId() == null
          || !PRODUCT.equals(calendar.getProductId().getValue())) {
        throw new IllegalArgumentException("not a calendar that Gripwright wrote");
      }
      return calendar.getEvents().stream()
          .filter(event -> event.getUid() != null)
          .map(CalendarFile::withFloatingStart)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e); // not from memory
    }
  }
}
