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
 * Which logged session is taken for which planned one. Immutable.
 *
 * <p>Both have the same name and lie in the same plan week or at most {@value #MOST_DAYS} days
 * apart. Each is taken once. As many trained sessions as can be are matched, then as many skipped
 * ones, and of all ways to do so the one with the fewest days between planned and logged; where two
 * are alike, the earlier day is taken. The order in which lines of a log are written plays no part.
 *
 * @param matches what belongs together, by planned date
 * @param unlogged planned sessions that should be behind the athlete and have no line, by date
 * @param unplanned logged sessions, trained or skipped, that no planned one stands for, by date
 */
public record SessionMatches(
    List<Match> matches, List<DatedSession> unlogged, List<LogEntry> unplanned) {

  /** How far apart a planned and a logged session of different weeks may lie, in days. */
  public static final int MOST_DAYS = 3;

  /** Lines of one name and day that can find a planned session; there are no more to find. */
  private static final int MOST_OF_A_DAY = 16;

  private static final Comparator<LogEntry> BY_DATE =
      Comparator.comparing(LogEntry::date)
          .thenComparing(entry -> entry instanceof LogEntry.Skipped)
          .thenComparing(Object::toString);

  /**
   * A planned session and the line of the log that tells of it.
   *
   * @param planned what was asked
   * @param logged a {@link LogEntry.Trained} or {@link LogEntry.Skipped} line of the same name
   */
  public record Match(DatedSession planned, LogEntry.OfSession logged) {

    /** Tells whether the session was trained, whole or in part. */
    public boolean trained() {
      return logged instanceof LogEntry.Trained;
    }

    /** Returns how many days after its planned date it was logged; negative means before. */
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
   * Matches what a schedule planned with what was logged.
   *
   * @param until planned sessions up to this day should have a line, and later lines are not known
   * @throws IllegalArgumentException if it is the log of another athlete
   */
  public static SessionMatches of(Schedule schedule, Log log, LocalDate until) {
    log.requireOf(schedule.athlete());
    return of(schedule.planned(), schedule.plan().from(), log, until);
  }

  /**
   * Matches planned sessions with what was logged.
   *
   * @param planned dated sessions of one plan, in any order
   * @param first first day of the plan, from which its weeks are counted
   * @param log what happened
   * @param until planned sessions up to this day should have a line, and later lines are not known
   */
  public static SessionMatches of(
      List<DatedSession> planned, LocalDate first, Log log, LocalDate until) {
    Map<String, List<DatedSession>> asked = new TreeMap<>();
    planned.stream()
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(s -> s.path().toString()))
        .forEach(s -> asked.computeIfAbsent(s.name(), name -> new ArrayList<>()).add(s));
    List<LogEntry.OfSession> sessions =
        log.of(LogEntry.OfSession.class).stream()
            .filter(e -> !e.date().isAfter(until))
            .sorted(BY_DATE)
            .toList();
    Map<String, List<Integer>> told = new TreeMap<>();
    for (int i = 0; i < sessions.size(); i++) {
      told.computeIfAbsent(sessions.get(i).session(), name -> new ArrayList<>()).add(i);
    }
    List<Match> matches = new ArrayList<>();
    Set<DatedSession> found = new HashSet<>();
    Set<Integer> used = new HashSet<>();
    asked.forEach(
        (name, ofName) -> {
          List<Integer> lines = firstOfEachDay(told.getOrDefault(name, List.of()), sessions);
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
    matches.sort(
        Comparator.comparing((Match match) -> match.planned().date())
            .thenComparing(match -> match.planned().name()));
    return new SessionMatches(
        matches,
        planned.stream()
            .filter(s -> !found.contains(s) && !s.date().isAfter(until))
            .sorted(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name))
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
