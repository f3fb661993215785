package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the sessions of a week; those for which the same is printed are one entry. */
final class SessionEntries {

  /** Most days before the first words of a session in one line of a terminal. */
  private static final int MOST_IN_LINE = 3;

  /**
   * Sessions with equal texts.
   *
   * @param days their days, in order and different
   * @param head the session's name, duration and protocols
   * @param body the lines below it: exercises, texts and what the log says
   */
  record Entry(List<LocalDate> days, String head, String body) {}

  private final CompiledPlan compiled;
  private final Map<String, ExerciseTable> tables = new HashMap<>();
  private final Words words;
  private final LogNotes log;

  SessionEntries(CompiledPlan compiled, Words words) {
    this.compiled = compiled;
    this.words = words;
    log = new LogNotes(words);
    compiled.sessions().stream()
        .collect(Collectors.groupingBy(DatedSession::name))
        .forEach((name, sessions) -> tables.put(name, new ExerciseTable(sessions, words)));
  }

  /** Returns the entries of a week, by their first days. */
  List<Entry> of(int week) {
    List<Entry> entries = new ArrayList<>();
    for (DatedSession session : compiled.sessionsOf(week)) {
      LocalDate day = session.date();
      String head = head(session);
      String body = body(session);
      Optional<Entry> same =
          entries.stream()
              .filter(e -> e.head().equals(head) && e.body().equals(body))
              .filter(e -> !e.days().contains(day))
              .findFirst();
      if (same.isPresent()) {
        same.get().days().add(day);
      } else {
        entries.add(new Entry(new ArrayList<>(List.of(day)), head, body));
      }
    }
    return entries;
  }

  /** Adds an entry to a page. */
  void add(Page page, Entry entry) {
    String days = String.join(" + ", entry.days().stream().map(words::day).toList());
    if (entry.days().size() <= MOST_IN_LINE) {
      page.wrapped("  " + Page.padRight(days, words.dayWidth()) + "  ", entry.head());
    } else {
      page.wrapped("  ", days);
      page.wrapped("    ", entry.head());
    }
    page.block(entry.body());
  }

  private String head(DatedSession session) {
    List<String> protocols =
        session.exercises().stream().map(PlannedExercise::protocol).distinct().toList();
    String head = log.head(session);
    return protocols.isEmpty()
        ? head
        : words.say(
            "season.session-protocols", "session", head, "protocols", words.commas(protocols));
  }

  private String body(DatedSession session) {
    Page page = new Page();
    compiled
        .supervisorOf(session)
        .filter(who -> !compiled.plan().supervisedBy().equals(Optional.of(who)))
        .ifPresent(
            who -> page.wrapped("    ", words.say("season.supervised", "by", Page.clean(who))));
    log.addTexts(page, "    ", session);
    ExerciseTable table = Objects.requireNonNull(tables.get(session.name()));
    table.addAll(page, session.exercises());
    log.addDone(page, session, compiled.timeline());
    return page.toString();
  }
}
