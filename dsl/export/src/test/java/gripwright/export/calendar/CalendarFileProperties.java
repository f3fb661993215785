package gripwright.export.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.component.VEvent;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;

/** What is written is what another library reads. */
final class CalendarFileProperties {

  /** Parts that a calendar treats specially, and letters of two to four bytes. */
  private static final List<String> PARTS =
      List.of(
          "a",
          "hold 10 s",
          " ",
          "  ",
          "\n",
          "\t",
          ",",
          ";",
          ":",
          "\\",
          "\\n",
          "\\,",
          "\"",
          "'",
          "^",
          "BEGIN:VEVENT",
          "\nEND:VEVENT\n",
          "é",
          "ß",
          "שלום",
          "مرحبا",
          "指",
          "力",
          "💪🏽",
          "👩‍🦰",
          "=",
          "%",
          "\r\n",
          "\u2028");

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.of(PARTS).list().ofMaxSize(60).map(parts -> String.join("", parts)),
        Arbitraries.of("力", "💪", "é", "x")
            .flatMap(sign -> Arbitraries.integers().between(60, 400).map(sign::repeat)),
        Arbitraries.strings().ofMaxLength(100));
  }

  @Provide
  Arbitrary<CalendarEvent> events() {
    return Combinators.combine(
            texts(),
            texts(),
            Arbitraries.integers().between(0, 60_000),
            Arbitraries.integers().between(0, 60_000),
            Arbitraries.integers().between(0, 24 * 60 - 1).optional(0.5))
        .as(
            (summary, description, day, stamp, minute) ->
                new CalendarEvent(
                    CalendarEvent.uid(List.of(summary, description, "" + day)),
                    LocalDate.of(1950, 1, 1).plusDays(stamp),
                    LocalDate.of(1950, 1, 1).plusDays(day),
                    minute.map(at -> LocalTime.MIN.plusMinutes(at)),
                    minute.isPresent() ? day % 200 : 0,
                    false,
                    summary,
                    description));
  }

  @Property
  void anotherLibraryReadsWhatIsWritten(
      @ForAll("texts") String name,
      @ForAll @Size(max = 4) List<@From("events") CalendarEvent> events,
      @ForAll("zones") String zone) {
    TimeZone usual = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      List<VEvent> written = new ArrayList<>();
      events.forEach(event -> written.add(CalendarFile.event(event, 3)));
      String text = CalendarFile.text(name, written);
      ReadBack.assertFolded(text);
      List<net.fortuna.ical4j.model.component.VEvent> read = ReadBack.events(text);
      assertEquals(events.size(), read.size());
      for (int i = 0; i < read.size(); i++) {
        assertSame(events.get(i), read.get(i));
      }
      assertEquals(
          written.stream().map(CalendarFile::shown).toList(),
          CalendarFile.events(text).stream().map(CalendarFile::shown).toList());
    } finally {
      TimeZone.setDefault(usual);
    }
  }

  private static void assertSame(
      CalendarEvent event, net.fortuna.ical4j.model.component.VEvent read) {
    assertEquals(event.uid(), ReadBack.value(read, "UID"));
    String day = event.day().toString().replace("-", "");
    assertEquals(
        event.at().map(at -> day + "T" + at.toString().replace(":", "") + "00").orElse(day),
        ReadBack.value(read, "DTSTART"),
        event::toString);
    assertEquals(
        event.stamp().toString().replace("-", "") + "T000000Z", ReadBack.value(read, "DTSTAMP"));
    assertRead(event.summary(), ReadBack.value(read, "SUMMARY"));
    assertRead(event.description(), ReadBack.value(read, "DESCRIPTION"));
    assertEquals("3", ReadBack.value(read, "SEQUENCE"));
  }

  /**
   * That library misreads a backslash before a line break, which stands as three backslashes and an
   * n; {@link #theTextIsEscapedAsTheStandardSays} covers those.
   */
  private static void assertRead(String written, String read) {
    String expected = CalendarFile.writable(written);
    if (!expected.contains("\\\n")) {
      assertEquals(expected, read);
    }
  }

  /** Reads a description by the rules of RFC 5545, 3.1 and 3.3.11, without a library. */
  @Property
  void theTextIsEscapedAsTheStandardSays(@ForAll("texts") String description) {
    CalendarEvent event =
        new CalendarEvent(
            "1", LocalDate.EPOCH, LocalDate.EPOCH, Optional.empty(), 0, true, "x", description);
    String text = CalendarFile.text("x", List.of(CalendarFile.event(event, 0)));
    String raw =
        text.replace("\r\n ", "")
            .lines()
            .filter(line -> line.startsWith("DESCRIPTION:"))
            .findFirst()
            .orElseThrow()
            .substring("DESCRIPTION:".length());
    StringBuilder read = new StringBuilder();
    for (int i = 0; i < raw.length(); i++) {
      char sign = raw.charAt(i);
      assertTrue(",;".indexOf(sign) < 0, raw);
      if (sign == '\\') {
        i++;
        sign = raw.charAt(i);
        assertTrue("\\,;n".indexOf(sign) >= 0, raw);
        sign = sign == 'n' ? '\n' : sign;
      }
      read.append(sign);
    }
    assertEquals(CalendarFile.writable(description), read.toString());
  }

  /** With days that have no midnight, or that are left out. */
  @Provide
  Arbitrary<String> zones() {
    return Arbitraries.of("UTC", "America/Sao_Paulo", "Pacific/Apia", "Asia/Beirut", "Asia/Tokyo");
  }

  /** Ordinary text stays as it is: only what a calendar can't contain is replaced. */
  @Property
  void onlyControlCharactersAndHalvesOfCharactersAreReplaced(
      @ForAll @From("ordinary") String text) {
    assertEquals(text.strip(), CalendarFile.writable(text));
  }

  @Provide
  Arbitrary<String> ordinary() {
    return Arbitraries.of(PARTS)
        .filter(part -> !part.contains("\r"))
        .list()
        .ofMaxSize(60)
        .map(parts -> String.join("", parts));
  }
}
