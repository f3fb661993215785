package gripwright.history;

import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Matches of planned and logged sessions. Immutable.
 *
 * <p>Matched sessions have the same name and are in the same plan week or at most {@value
 * #MOST_DAYS} days apart. Each is matched once. The matching has the most trained sessions, then
 * the most skipped ones, then the fewest days between planned and logged dates, and then the
 * earlier days. The order of entries in the log has no effect.
 *
 * @param matches matched sessions, by planned date
 * @param unlogged past planned sessions without a log entry, by date
 * @param unplanned logged sessions, trained or skipped, without a planned one, by date
 */
public record SessionMatches(
    List<Match> matches, List<DatedSession> unlogged, List<LogEntry> unplanned) {

  /** Maximum distance of a planned and a logged session in different weeks, in days. */
  public static final int MOST_DAYS = 3;

  /** Maximum number of lines of one name and day that are matched; a day has no more sessions. */
  private static final int MOST_OF_A_DAY = 16;

  private static final Comparator<LogEntry> BY_DATE =
      Comparator.comparing(LogEntry::date)
          .thenComparing(entry -> entry instanceof LogEntry.Skipped)
          .thenComparing(Object::toString);

  /**
   * A planned session and its log entry.
   *
   * @param planned the planned session
   * @param logged a {@link LogEntry.Trained} or {@link LogEntry.Skipped} entry of the same name
   */
  public record Match(DatedSession planned, LogEntry.OfSession logged) {

    /** Returns whether the session was trained, even in part. */
    public boolean trained() {
      return logged instanceof LogEntry.Trained;
    }

    /** Returns the days from the planned to the logged date; negative if logged earlier. */
    public long daysLate() {
      return ChronoUnit.DAYS.between(planned.date(), logged.date());
    }
  }

  /** Copies the lists. */
  public SessionMatches {
    matches = List.copyOf(matches);
    unlogged = List.copyOf(unlogged);
    unplanned = List.copyOf(unplanned);
  }

  /**
   * Matches the sessions of a schedule with a log.
   *
   * @param until the last known day; planned sessions after it need no log entry, and later entries
   *     are ignored
   * @throws IllegalArgumentException if it is the log of another athlete
   */
  public static SessionMatches of(Schedule schedule, Log log, LocalDate until) {
    log.requireOf(schedule.athlete());
    return of(schedule.planned(), schedule.plan().from(), log, until);
  }

  /**
   * Matches planned sessions with a log.
   *
   * @param planned dated sessions of one plan, in any order
   * @param first first day of the plan, which starts its first week
   * @param log the athlete's log
   * @param until the last known day; planned sessions after it need no log entry, and later entries
   *     are ignored
   */
  public static SessionMatches of(
      List<DatedSession> planned, LocalDate first, Log log, LocalDate until) {
    Map<String, List<DatedSession>> plannedByName = new TreeMap<>();
    planned.stream()
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(s -> s.path().toString()))
        .forEach(s -> plannedByName.computeIfAbsent(s.name(), name -> new ArrayList<>()).add(s));
    List<LogEntry.OfSession> sessions =
        log.of(LogEntry.OfSession.class).stream()
            .filter(e -> !e.date().isAfter(until))
            .sorted(BY_DATE)
            .toList();
    Map<String, List<Integer>> logged = new TreeMap<>();
    for (int i = 0; i < sessions.size(); i++) {
      logged.computeIfAbsent(sessions.get(i).session(), name -> new ArrayList<>()).add(i);
    }
    List<Match> matches = new ArrayList<>();
    Set<DatedSession> found = new HashSet<>();
    Set<Integer> used = new HashSet<>();
    plannedByName.forEach(
        (name, ofName) -> {
          List<Integer> lines = firstOfEachDay(logged.getOrDefault(name, List.of()), sessions);
          List<LogEntry.OfSession> entries = lines.stream().map(sessions::get).toList();
          int[] chosen = new SessionAlignment(ofName, entries, first).choose();
          for (int i = 0; i < chosen.length; i++) {
            if (chosen[i] >= 0) {
              matches.add(new Match(ofName.get(i), entries.get(chosen[i])));
              found.add(ofName.get(i));
              used.add(lines.get(chosen[i]));
            }
          }
        });
    matches.sort(Comparator.comparing(Match::planned, DatedSession.IN_ORDER));
    return new SessionMatches(
        matches,
        planned.stream()
            .filter(s -> !found.contains(s) && !s.date().isAfter(until))
            .sorted(DatedSession.IN_ORDER)
            .toList(),
        IntStream.range(0, sessions.size())
            .filter(i -> !used.contains(i))
            .<LogEntry>mapToObj(sessions::get)
            .toList());
  }

  private static List<Integer> firstOfEachDay(
      List<Integer> lines, List<LogEntry.OfSession> sessions) {
    Map<LocalDate, Integer> counts = new TreeMap<>();
    return lines.stream()
        .filter(i -> counts.merge(sessions.get(i).date(), 1, Integer::sum) <= MOST_OF_A_DAY)
        .toList();
  }
}
