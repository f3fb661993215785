package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Content;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class CalendarCommandTest extends CommandLine {

  private static final String ATHLETE =
      """
      athlete %1$s "%2$s" {
        born       1990-04-03
        body-mass  60 kg
        trained    80 months
        ability    ircra 20
        hand { length 180 mm }
        %3$s
        available  mon 2 h, thu 2 h
        equipment {
          edges    20 mm
          added    0.5 kg steps to 40 kg
          assist   0.5 kg steps to 40 kg
        }
        note "private to the coach"
      }
      log %1$s {
        2026-12-20 test half-crimp edge 20 mm hold 7 s load 80 kg
      %4$s}
      """;

  private static final String PLAN =
      """
      protocol tens "tens" {
        repeat 3 resting 3 min { hold 10 s at 60 % max }
        note "private to the protocol"
      }
      plan winter "winter of Nils" {
        for nils, ada
        from 2027-01-04
        towards 2027-02-06 "the big wall; and, more"
        note "private to the plan"
        warm-up 15 min "skip, shoulders"
        supervised by "Tilda Vik"
        block base 4 weeks {
          note "private to the block"
          session fingers 2 per week at least 48 h apart {
            note "for Nils: quiet room"
            do tens on half-crimp edge 20 mm "thumb off"
          }
        }
        retest half-crimp edge 20 mm hold 7 s every 4 weeks
      }
      """;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("winter.grip"), text("", ""));
  }

  private static String text(String ofNils, String logOfNils) {
    return "language 1\n"
        + ATHLETE.formatted("nils", "Nils Moen", ofNils, logOfNils)
        + ATHLETE.formatted("ada", "Ada Lie", "", "")
        + PLAN;
  }

  private String file(String name) {
    try {
      return Files.readString(folder.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<VEvent> events(String name) {
    try {
      return new CalendarBuilder()
          .build(new StringReader(file(name)))
          .getComponents(Component.VEVENT);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParserException e) {
      throw new AssertionError(file(name), e);
    }
  }

  private static String value(VEvent event, String property) {
    return event.getProperty(property).map(Content::getValue).orElse("");
  }

  /** Returns day, summary, number and status of each event. */
  private List<String> lines(String name) {
    return events(name).stream()
        .map(
            event ->
                Stream.of("DTSTART", "SUMMARY", "SEQUENCE", "STATUS")
                    .map(property -> value(event, property))
                    .reduce("", (one, other) -> (one + " " + other).strip()))
        .toList();
  }

  private List<String> names(String name) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void eachAthleteHasACalendar() throws IOException {
    assertEquals(0, run("calendar", "winter.grip", "--to", "out"), err());
    assertEquals("2 calendars written to out\n", out());
    assertEquals(List.of("ada.ics", "manifest.json", "nils.ics"), names("out"));
    assertEquals(
        List.of(
            "20270104 fingers, 22 min 0",
            "20270107 fingers, 22 min 0",
            "20270111 fingers, 22 min 0",
            "20270114 fingers, 22 min 0",
            "20270118 fingers, 22 min 0",
            "20270121 fingers, 22 min 0",
            "20270125 test, hold 7 s 0",
            "20270128 fingers, 22 min 0",
            "20270206 goal: the big wall; and, more 0"),
        lines("out/nils.ics"));
    assertEquals(
        List.of(
            "supervised by Tilda Vik",
            "warm-up: skip, shoulders",
            "\"for Nils: quiet room\"",
            "- tens, half-crimp 20 mm: 3 x 10 s, rest 3 min between sets, take off 14 kg",
            "  \"thumb off\""),
        value(events("out/nils.ics").get(0), "DESCRIPTION").lines().limit(5).toList());
    assertTrue(
        value(events("out/nils.ics").get(0), "DESCRIPTION")
            .contains("\n* Stop at once on sharp or sudden pain"));
    assertFalse(file("out/nils.ics").replace("\r\n ", "").contains("private"));
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    assertEquals(0, run("calendar", "winter.grip", "--to", "one"), err());
    assertEquals(0, run("calendar", "winter.grip", "--to", "two"), err());
    assertEquals(0, run("calendar", "winter.grip", "--to", "two", "--previous", "two"), err());
    for (String name : List.of("/nils.ics", "/ada.ics", "/manifest.json")) {
      assertEquals(file("one" + name), file("two" + name));
    }
  }

  @Test
  void aLaterEditionNumbersWhatChangedAndCancelsWhatIsGone() throws IOException {
    assertEquals(0, run("calendar", "winter.grip", "--to", "out"), err());
    String log =
        """
          2027-01-05 session fingers {
            tens on half-crimp edge 20 mm: sets 3 of 3, load 43 kg, effort 5, pain 0
          }
          2027-01-07 skipped fingers "flu"
        """;
    Files.writeString(folder.resolve("winter.grip"), text("", log));
    assertEquals(0, run("calendar", "winter.grip", "--to", "out", "--previous", "out"), err());
    List<String> lines = lines("out/nils.ics");
    assertTrue(
        lines.contains("20270105 fingers, done (planned for Mon 4 Jan), 22 min 1"), "" + lines);
    assertTrue(lines.contains("20270107 fingers, 22 min 1 CANCELLED"), "" + lines);
    assertFalse(file("out/nils.ics").contains("flu"));
    assertEquals(9, lines.size());
    assertTrue(lines("out/ada.ics").stream().noneMatch(line -> line.endsWith("1")));
  }

  @Test
  void anErrorOfOneAthleteStopsOnlyThatCalendar() throws IOException {
    assertEquals(0, run("calendar", "winter.grip", "--to", "out"), err());
    String ada = file("out/ada.ics");
    Files.writeString(
        folder.resolve("winter.grip"), text("injury ring a2 left from 2026-12-22", ""));
    assertEquals(
        1, run("calendar", "winter.grip", "--to", "out", "--previous", "out", "--remind", "60"));
    assertEquals("2 calendars written to out\n", out());
    assertTrue(err().contains("error: "), err());
    assertTrue(err().contains("the calendar of nils has no future sessions"), err());
    assertFalse(err().contains("calendar of ada"), err());
    assertEquals(
        List.of("20270206 goal: the big wall; and, more 0"),
        lines("out/nils.ics").stream().filter(line -> !line.endsWith("CANCELLED")).toList());
    assertEquals(9, lines("out/nils.ics").size());
    assertEquals(ada, file("out/ada.ics").replaceAll("(?s)BEGIN:VALARM\r\n.*?END:VALARM\r\n", ""));
  }

  @Test
  void anErrorOfEverybodyWritesNothing() throws IOException {
    Files.writeString(folder.resolve("winter.grip"), text("", "").replace("60 % max", "60 % mx"));
    assertEquals(1, run("calendar", "winter.grip", "--to", "out"));
    assertEquals("", out());
    assertFalse(Files.exists(folder.resolve("out")));
    assertEquals(2, run("calendar", "none.grip", "--to", "out"));
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void codesReplaceNames() throws IOException {
    Files.writeString(folder.resolve("key.csv"), "athlete,code\nnils,K4\nada,M7\n");
    assertEquals(0, run("calendar", "winter.grip", "--to", "out", "--codes", "key.csv"), err());
    assertEquals(List.of("K4.ics", "M7.ics", "manifest.json"), names("out"));
    for (String name : names("out")) {
      String text = file("out/" + name).replace("\r\n ", "").toLowerCase(java.util.Locale.ROOT);
      for (String hidden : List.of("nils", "moen", "ada", "lie")) {
        assertFalse(text.matches("(?s).*\\b" + hidden + "\\b.*"), name + ": " + hidden);
      }
    }
    assertEquals(2, run("calendar", "winter.grip", "--to", "out", "--codes", "out/key.csv"));
  }

  @Test
  void remindersAreOnlyForTheFuture() throws IOException {
    assertEquals(0, run("calendar", "winter.grip", "--to", "out", "--remind", "300"), err());
    Map<String, Integer> triggers = new TreeMap<>();
    for (String line : file("out/nils.ics").split("\r\n")) {
      if (line.startsWith("TRIGGER")) {
        triggers.merge(line, 1, Integer::sum);
      }
    }
    assertEquals(Map.of("TRIGGER:-PT300M", 9), triggers);
    for (String wrong : List.of("0", "-5", "10081", "soon", "1.5")) {
      assertEquals(2, run("calendar", "winter.grip", "--to", "new", "--remind", wrong), wrong);
      assertFalse(Files.exists(folder.resolve("new")));
    }
  }

  @Test
  void refusesFoldersAndFilesOfOthers() throws IOException {
    Files.createDirectory(folder.resolve("theirs"));
    Files.writeString(folder.resolve("theirs/nils.ics"), "BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n");
    List<List<String>> wrong =
        List.of(
            List.of("winter.grip"),
            List.of("winter.grip", "--to", "theirs"),
            List.of("winter.grip", "--to", "out", "--previous", "theirs"),
            List.of("winter.grip", "--to", "out", "--previous", "none"),
            List.of("winter.grip", "--to", "no/such"),
            List.of("winter.grip", "--to", "out", "--as", "json"));
    for (List<String> arguments : wrong) {
      List<String> all = new ArrayList<>(List.of("calendar"));
      all.addAll(arguments);
      assertEquals(2, run(all.toArray(String[]::new)), "" + arguments);
      assertFalse(Files.exists(folder.resolve("out")), "" + arguments);
      assertTrue(err().startsWith("gripwright: "), err());
    }
  }
}
