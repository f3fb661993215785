package gripwright.export.calendar;

import gripwright.export.study.Pseudonyms;
import gripwright.export.text.SessionText;
import gripwright.export.words.Words;
import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlanWeek;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The events of a compiled plan. */
final class PlanEvents {

  private final CompiledPlan compiled;
  private final Pseudonyms names;
  private final Wording wording;
  private final Words words;
  private final LocalDate stamp;
  private final IdentityHashMap<DatedSession, Integer> numbers = new IdentityHashMap<>();
  private final Map<List<String>, Integer> others = new HashMap<>();

  PlanEvents(CompiledPlan compiled, Pseudonyms names, Wording wording) {
    this.compiled = compiled;
    this.names = names;
    this.wording = wording;
    words = new Words(wording);
    stamp = stamp(compiled);
    Map<List<String>, Integer> counts = new HashMap<>();
    for (DatedSession planned : compiled.schedule().planned()) {
      numbers.put(planned, counts.merge(place(planned), 1, Integer::sum));
    }
  }

  /** Returns the last day of the log or, without one, the first day of the plan. */
  static LocalDate stamp(CompiledPlan compiled) {
    return compiled.lastKnownDay().orElse(compiled.plan().from());
  }

  /** Returns the events; with {@code pastOnly} only the goal and what the log shows as done. */
  List<CalendarEvent> all(boolean pastOnly) {
    List<CalendarEvent> events = new ArrayList<>();
    compiled.sessions().stream()
        .filter(session -> !pastOnly || session.happened().isPresent())
        .forEach(session -> events.add(of(session)));
    compiled.retests().stream()
        .filter(test -> !pastOnly || test.done())
        .forEach(test -> events.add(of(test)));
    compiled.plan().towards().ifPresent(goal -> events.add(of(goal)));
    return events;
  }

  private CalendarEvent of(DatedSession session) {
    return new CalendarEvent(
        uid(identity(session)),
        stamp,
        session.date(),
        session.time(),
        session.minutes(),
        session.happened().isPresent(),
        names.hide(SessionText.heading(session, wording)),
        names.hide(SessionText.of(compiled, session, wording)));
  }

  private CalendarEvent of(DatedRetest test) {
    return new CalendarEvent(
        uid(identity(test)),
        stamp,
        test.date(),
        test.time(),
        0,
        test.done(),
        names.hide(SessionText.heading(test, wording)),
        names.hide(SessionText.of(compiled, test, wording)));
  }

  private CalendarEvent of(Plan.Goal goal) {
    Plan plan = compiled.plan();
    String title =
        goal.title()
            .map(text -> words.say("calendar.goal", "title", text))
            .orElseGet(
                () ->
                    words.say("calendar.goal-untitled", "plan", plan.title().orElse(plan.name())));
    return new CalendarEvent(
        uid(List.of("goal", plan.name())),
        stamp,
        goal.date(),
        Optional.empty(),
        0,
        compiled.lastKnownDay().filter(last -> !last.isBefore(goal.date())).isPresent(),
        names.hide(CalendarFile.line(title)),
        words.say("calendar.goal-day"));
  }

  /** A planned session is identified by its place in the plan, another one only by its day. */
  private List<String> identity(DatedSession session) {
    Optional<Happened> happened = session.happened();
    if (happened.isPresent() && happened.get().planned().isEmpty()) {
      List<String> day = List.of("unplanned", session.date().toString(), session.name());
      return with(day, others.merge(day, 1, Integer::sum));
    }
    DatedSession planned = happened.flatMap(Happened::planned).orElse(session);
    return with(place(planned), numbers.getOrDefault(planned, 1));
  }

  private List<String> place(DatedSession planned) {
    return List.of(
        "session",
        compiled.plan().name(),
        planned.block(),
        Integer.toString(planned.blockWeek()),
        planned.name());
  }

  private List<String> identity(DatedRetest test) {
    List<String> place = new ArrayList<>(List.of("test", compiled.plan().name(), test.block()));
    place.add(
        compiled.weeks().stream()
            .filter(week -> week.number() == test.week())
            .map(PlanWeek::blockWeek)
            .findFirst()
            .map(week -> "week " + week)
            .orElse("week of plan " + test.week()));
    test.path().steps().stream()
        .filter(step -> step.kind().equals("retest"))
        .forEach(step -> place.add(step.name()));
    return with(place, others.merge(place, 1, Integer::sum));
  }

  private static List<String> with(List<String> parts, int number) {
    List<String> all = new ArrayList<>(parts);
    all.add(Integer.toString(number));
    return all;
  }

  private String uid(List<String> parts) {
    List<String> all = new ArrayList<>();
    parts.forEach(part -> all.add(names.hide(part)));
    all.add(names.of(compiled.athlete().name()));
    return CalendarEvent.uid(all);
  }
}
