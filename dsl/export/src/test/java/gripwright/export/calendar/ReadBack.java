package gripwright.export.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Content;
import net.fortuna.ical4j.model.component.VEvent;

/** Calendars as another library reads them. */
final class ReadBack {

  private ReadBack() {}

  static Calendar calendar(String text) {
    try {
      return new CalendarBuilder().build(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserException e) {
      throw new AssertionError(text, e);
    }
  }

  static List<VEvent> events(String text) {
    return calendar(text).getComponents(Component.VEVENT);
  }

  static String value(VEvent event, String property) {
    return event.getProperty(property).map(Content::getValue).orElse("");
  }

  static Optional<VEvent> event(String text, String uid) {
    return events(text).stream().filter(event -> value(event, "UID").equals(uid)).findFirst();
  }

  /** Checks lines as RFC 5545, 3.1 has them: CR LF, at most 75 bytes, no character cut. */
  static void assertFolded(String text) {
    assertTrue(text.endsWith("\r\n"));
    String[] lines = text.split("\r\n", -1);
    for (String line : lines) {
      byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
      assertTrue(bytes.length <= 75, line);
      assertEquals(line, new String(bytes, StandardCharsets.UTF_8));
      assertTrue(line.indexOf('\n') < 0 && line.indexOf('\r') < 0, line);
    }
  }
}
