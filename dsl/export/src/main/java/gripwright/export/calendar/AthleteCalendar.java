package gripwright.export.calendar;

import biweekly.component.VEvent;
import gripwright.export.study.Pseudonyms;
import gripwright.export.text.SessionText;
import gripwright.export.words.Words;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The calendar of an athlete by RFC 5545: an event for each session, each planned test and the day
 * of the goal, all of them for a whole day, without a zone.
 *
 * <p>A past session is as it was trained; a missed one has no event. An event keeps its identifier
 * as long as its plan, block, week of the block, session and number in that week, and the athlete
 * stay the same, whatever its day. The text depends on nothing but the arguments, in particular not
 * on a clock. What {@link SessionText} leaves out, such as notes of the plan, is not in it.
 *
 * <p>It has no {@code METHOD}: with {@code PUBLISH}, RFC 5546 requires the address of an organizer.
 *
 * <p>Immutable and thread-safe.
 *
 * @since 1.0
 */
public final class AthleteCalendar {

  /** The longest time before an event at which it may remind of it. */
  public static final Duration LONGEST_REMINDER = Duration.ofDays(7);

  private final List<CompiledPlan> plans;
  private final Wording wording;
  private final Pseudonyms names;
  private final Optional<Duration> reminder;
  private final Optional<String> earlier;
  private final boolean stopped;

  private AthleteCalendar(
      List<CompiledPlan> plans,
      Wording wording,
      Pseudonyms names,
      Optional<Duration> reminder,
      Optional<String> earlier,
      boolean stopped) {
    this.plans = plans;
    this.wording = wording;
    this.names = names;
    this.reminder = reminder;
    this.earlier = earlier;
    this.stopped = stopped;
  }

  /**
   * Returns the calendar of an athlete, without reminders and as a first edition.
   *
   * @param plans plans of one athlete, at least one
   * @param wording words of the events
   * @throws IllegalArgumentException if there is no plan, or there are plans of several athletes
   */
  public static AthleteCalendar of(List<CompiledPlan> plans, Wording wording) {
    long athletes = plans.stream().map(plan -> plan.athlete().name()).distinct().count();
    if (athletes != 1) {
      throw new IllegalArgumentException("plans of " + athletes + " athletes, not of one");
    }
    return new AthleteCalendar(
        List.copyOf(plans),
        Objects.requireNonNull(wording, "wording"),
        Pseudonyms.none(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  /** Returns the calendar with codes in place of athletes' names. */
  public AthleteCalendar withNames(Pseudonyms other) {
    Objects.requireNonNull(other, "other");
    return new AthleteCalendar(plans, wording, other, reminder, earlier, stopped);
  }

  /**
   * Returns the calendar with a reminder of each event that is not over. A whole day begins at
   * midnight, so 5 hours before it are 19:00 on the day before.
   *
   * @param before whole minutes from 1 up to {@link #LONGEST_REMINDER}
   * @throws IllegalArgumentException if it is another time
   */
  public AthleteCalendar remindingBefore(Duration before) {
    if (before.compareTo(Duration.ofMinutes(1)) < 0
        || before.compareTo(LONGEST_REMINDER) > 0
        || !before.equals(Duration.ofMinutes(before.toMinutes()))) {
      throw new IllegalArgumentException(before + " is not from 1 minute to " + LONGEST_REMINDER);
    }
    return new AthleteCalendar(plans, wording, names, Optional.of(before), earlier, stopped);
  }

  /**
   * Returns the calendar as the edition after an earlier one: the {@code SEQUENCE} of an event is
   * one higher where its day or text differs, and an event that is gone is cancelled.
   *
   * @param text the earlier calendar of the same athlete, as {@link #text()} returned it
   * @throws IllegalArgumentException if it is not a calendar that this class wrote
   */
  public AthleteCalendar after(String text) {
    CalendarFile.events(text);
    return new AthleteCalendar(plans, wording, names, reminder, Optional.of(text), stopped);
  }

  /**
   * Returns the calendar without future sessions and tests, for an athlete whose sessions may not
   * be used because of an error.
   */
  public AthleteCalendar withoutFuture() {
    return new AthleteCalendar(plans, wording, names, reminder, earlier, true);
  }

  /** Returns the text of the calendar: lines that end in CR LF, to be stored in UTF-8. */
  public String text() {
    Map<String, VEvent> before = new LinkedHashMap<>();
    earlier.ifPresent(
        text ->
            CalendarFile.events(text)
                .forEach(event -> before.putIfAbsent(event.getUid().getValue(), event)));
    List<VEvent> events = new ArrayList<>();
    for (CalendarEvent event : planned()) {
      VEvent old = before.remove(event.uid());
      VEvent written = CalendarFile.event(event, 0);
      written.setSequence(old == null ? 0 : sequence(old, written));
      if (!event.past()) {
        reminder.ifPresent(time -> CalendarFile.remind(written, Math.toIntExact(time.toMinutes())));
      }
      events.add(written);
    }
    before.values().forEach(old -> events.add(cancelled(old)));
    String name = new Words(wording).say("calendar.name", "athlete", athlete());
    return CalendarFile.text(name, events);
  }

  /** Returns the events by day, each once even if several plans show the same session. */
  private List<CalendarEvent> planned() {
    Map<String, CalendarEvent> events = new LinkedHashMap<>();
    plans.stream()
        .flatMap(plan -> new PlanEvents(plan, names, wording).all(stopped).stream())
        .sorted(Comparator.comparing(CalendarEvent::day).thenComparing(CalendarEvent::uid))
        .forEach(event -> events.putIfAbsent(event.uid(), event));
    return List.copyOf(events.values());
  }

  private String athlete() {
    String name = plans.get(0).athlete().name();
    return names.hiding() ? names.of(name) : CalendarFile.line(plans.get(0).athlete().title());
  }

  private static int sequence(VEvent old, VEvent now) {
    boolean same =
        !CalendarFile.isCancelled(old) && CalendarFile.shown(old).equals(CalendarFile.shown(now));
    return CalendarFile.sequence(old) + (same ? 0 : 1);
  }

  private VEvent cancelled(VEvent old) {
    if (!CalendarFile.isCancelled(old)) {
      LocalDate stamp =
          plans.stream().map(PlanEvents::stamp).max(Comparator.naturalOrder()).orElseThrow();
      CalendarFile.cancel(old, stamp);
    }
    return old;
  }
}
