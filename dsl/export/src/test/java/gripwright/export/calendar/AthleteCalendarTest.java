package gripwright.export.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Season;
import gripwright.export.study.Pseudonyms;
import gripwright.schedule.DatedSession;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

final class AthleteCalendarTest {

  private static final Path GOLDEN =
      Path.of("src/test/resources/gripwright/export/calendar/thaw.ics");

  private static AthleteCalendar of(CompiledPlan... plans) {
    return AthleteCalendar.of(List.of(plans), Wording.english());
  }

  /** Returns the season with other sessions. */
  private static CompiledPlan with(UnaryOperator<List<DatedSession>> change) {
    CompiledPlan thaw = Season.thaw();
    return CompiledPlan.of(
        thaw.schedule().toBuilder()
            .sessions(change.apply(new ArrayList<>(thaw.sessions())))
            .build(),
        thaw.timeline());
  }

  private static List<DatedSession> moved(List<DatedSession> sessions) {
    DatedSession first = sessions.get(0);
    sessions.set(0, first.toBuilder().date(first.date().plusDays(1)).build());
    return sessions;
  }

  private static List<DatedSession> withoutFirst(List<DatedSession> sessions) {
    return sessions.subList(1, sessions.size());
  }

  private static Map<String, VEvent> byUid(String text) {
    Map<String, VEvent> events = new TreeMap<>();
    ReadBack.events(text).forEach(event -> events.put(ReadBack.value(event, Property.UID), event));
    return events;
  }

  private static String sequence(VEvent event) {
    return ReadBack.value(event, Property.SEQUENCE);
  }

  @Test
  void aCalendar() throws IOException {
    String text = of(Season.thaw()).text();
    ReadBack.assertFolded(text);
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.createDirectories(GOLDEN.getParent());
      Files.writeString(GOLDEN, text);
    }
    assertEquals(Files.readString(GOLDEN), text);
    assertEquals(8, byUid(text).size());
    assertFalse(ReadBack.calendar(text).getProperty(Property.METHOD).isPresent());
    assertFalse(text.contains("VALARM"));
  }

  @Test
  void anotherDayIsTheSameEventInALaterEdition() {
    String before = of(Season.thaw()).text();
    String after = of(with(AthleteCalendarTest::moved)).after(before).text();
    assertEquals(byUid(before).keySet(), byUid(after).keySet());
    List<String> changed = new ArrayList<>();
    byUid(after)
        .forEach(
            (uid, event) -> {
              String same = ReadBack.value(byUid(before).get(uid), Property.DTSTART);
              String now = ReadBack.value(event, Property.DTSTART);
              assertEquals(same.equals(now) ? "0" : "1", sequence(event));
              if (!same.equals(now)) {
                changed.add(same + " " + now);
              }
            });
    assertEquals(List.of("20270112 20270113"), changed);
  }

  @Test
  void anotherTextIsALaterEdition() {
    CompiledPlan longer =
        with(
            sessions -> {
              sessions.set(0, sessions.get(0).toBuilder().notes(List.of("tape first")).build());
              return sessions;
            });
    String after = of(longer).after(of(Season.thaw()).text()).text();
    assertEquals(
        List.of("fingers, note"),
        ReadBack.events(after).stream()
            .filter(event -> sequence(event).equals("1"))
            .map(event -> ReadBack.value(event, Property.DESCRIPTION))
            .map(text -> text.contains("\"tape first\"") ? "fingers, note" : text)
            .toList());
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    String text = of(Season.thaw()).text();
    assertEquals(text, of(Season.thaw()).text());
    assertEquals(text, of(Season.thaw()).after(text).text());
  }

  @Test
  void anEventThatIsGoneIsCancelledOnceAndCanComeBack() {
    String first = of(Season.thaw()).text();
    CompiledPlan shorter = with(AthleteCalendarTest::withoutFirst);
    String second = of(shorter).after(first).text();
    assertEquals(8, byUid(second).size());
    VEvent gone = byUid(second).get(uidOf(first, "20270112"));
    assertEquals("CANCELLED", ReadBack.value(gone, Property.STATUS));
    assertEquals("1", sequence(gone));
    assertEquals("20270112", ReadBack.value(gone, Property.DTSTART));
    assertEquals(second, of(shorter).after(second).text());
    VEvent back = byUid(of(Season.thaw()).after(second).text()).get(uidOf(first, "20270112"));
    assertEquals("", ReadBack.value(back, Property.STATUS));
    assertEquals("2", sequence(back));
  }

  private static String uidOf(String text, String day) {
    return byUid(text).entrySet().stream()
        .filter(event -> ReadBack.value(event.getValue(), Property.DTSTART).equals(day))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void remindersAreBeforeTheDay() {
    String text = of(Season.thaw()).remindingBefore(Duration.ofMinutes(300)).text();
    assertEquals(
        List.of("-PT5H"),
        ReadBack.events(text).stream()
            .flatMap(event -> event.getAlarms().stream())
            .map(alarm -> alarm.getRequiredProperty(Property.TRIGGER).getValue())
            .distinct()
            .toList());
    AthleteCalendar calendar = of(Season.thaw());
    for (Duration wrong :
        List.of(
            Duration.ZERO,
            Duration.ofMinutes(-1),
            Duration.ofSeconds(90),
            Duration.ofDays(7).plusMinutes(1))) {
      assertThrows(IllegalArgumentException.class, () -> calendar.remindingBefore(wrong));
    }
  }

  @Test
  void withoutFutureOnlyTheGoalAndThePastAreLeft() {
    String first = of(Season.thaw()).remindingBefore(Duration.ofMinutes(60)).text();
    String text = of(Season.thaw()).withoutFuture().after(first).text();
    for (VEvent event : ReadBack.events(text)) {
      boolean goal = ReadBack.value(event, Property.SUMMARY).startsWith("goal");
      assertEquals(goal ? "" : "CANCELLED", ReadBack.value(event, Property.STATUS));
      assertTrue(event.getAlarms().isEmpty());
    }
    assertEquals(1, ReadBack.events(of(Season.thaw()).withoutFuture().text()).size());
  }

  @Test
  void codesReplaceNamesEverywhere() {
    Pseudonyms codes = Pseudonyms.of(Map.of("sunniva", "K7"), List.of(Season.thaw().athlete()));
    String text = of(Season.thaw()).withNames(codes).text();
    assertTrue(text.contains("NAME:K7: finger strength"));
    assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains("sunniva"));
    byUid(of(Season.thaw()).text())
        .keySet()
        .forEach(uid -> assertFalse(byUid(text).containsKey(uid), uid));
  }

  @Test
  void testsAreEventsWithWhatIsDone() {
    String text = of(Season.tested()).text();
    assertEquals(
        List.of(
            "test, all-out series of 24 x 7 s, rest 3 s",
            "test, hold 7 s",
            "test, to failure at 60 % max, 3 attempts resting 5 min, the mean counts"),
        ReadBack.events(text).stream()
            .map(event -> ReadBack.value(event, Property.SUMMARY))
            .filter(summary -> summary.startsWith("test"))
            .sorted()
            .toList());
  }

  @Test
  void refusesOtherCalendarsAndPlansOfSeveralAthletes() {
    AthleteCalendar calendar = of(Season.thaw());
    for (String other :
        List.of(
            "",
            "BEGIN:VCALENDAR",
            "training on Tuesday",
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//X//Y//EN\r\nEND:VCALENDAR\r\n")) {
      assertThrows(IllegalArgumentException.class, () -> calendar.after(other), other);
    }
    assertThrows(IllegalArgumentException.class, () -> of());
  }
}
