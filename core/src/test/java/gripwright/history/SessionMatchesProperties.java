package gripwright.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ModelPath;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What is taken for what, against all ways to do so. */
class SessionMatchesProperties {

  private static final LocalDate MONDAY = LocalDate.of(2027, 1, 11);
  private static final LocalDate END = MONDAY.plusDays(40);

  private static DatedSession planned(int day) {
    return DatedSession.builder(
            MONDAY.plusDays(day),
            "strength",
            Load.ofKilograms(60),
            ModelPath.of("plan", "winter").then("date", day))
        .week(day / 7 + 1)
        .block("base")
        .blockWeek(day / 7 + 1)
        .minutes(30)
        .hard(true)
        .build();
  }

  /** Even numbers are trained, odd ones skipped. */
  private static LogEntry logged(int code) {
    LocalDate day = MONDAY.plusDays(code / 2);
    return code % 2 == 0
        ? new LogEntry.Trained(day, "strength", List.of(), Optional.empty())
        : new LogEntry.Skipped(day, "strength", Optional.empty());
  }

  private static SessionMatches match(List<DatedSession> planned, List<LogEntry> lines) {
    return SessionMatches.of(planned, MONDAY, new Log("ylva", lines), END);
  }

  @Property
  void matchingIsOptimalAndComplete(
      @ForAll @Size(max = 5) Set<@IntRange(max = 20) Integer> days,
      @ForAll @Size(max = 5) List<@IntRange(max = 47) Integer> codes,
      @ForAll Random order) {
    List<DatedSession> planned =
        days.stream().sorted().map(SessionMatchesProperties::planned).toList();
    List<LogEntry> lines = codes.stream().map(SessionMatchesProperties::logged).toList();
    SessionMatches found = match(planned, lines);
    assertEquals(planned.size(), found.matches().size() + found.unlogged().size());
    assertEquals(lines.size(), found.matches().size() + found.unplanned().size());
    assertTrue(found.matches().stream().allMatch(m -> near(m.planned(), m.logged())));
    long worth = found.matches().stream().mapToLong(m -> worth(m.planned(), m.logged())).sum();
    assertEquals(best(planned, 0, lines, new HashSet<>()), worth);
    List<LogEntry> otherwise = new ArrayList<>(lines);
    Collections.shuffle(otherwise, order);
    assertEquals(found, match(planned, otherwise));
  }

  private static boolean near(DatedSession session, LogEntry line) {
    long one = session.date().toEpochDay() - MONDAY.toEpochDay();
    long other = line.date().toEpochDay() - MONDAY.toEpochDay();
    return Math.abs(one - other) <= 3 || one / 7 == other / 7;
  }

  private static long worth(DatedSession session, LogEntry line) {
    return (line instanceof LogEntry.Trained ? 1_000_000 : 1_000)
        - Math.abs(session.date().toEpochDay() - line.date().toEpochDay());
  }

  private static long best(
      List<DatedSession> planned, int from, List<LogEntry> lines, Set<Integer> used) {
    if (from == planned.size()) {
      return 0;
    }
    long best = best(planned, from + 1, lines, used);
    for (int i = 0; i < lines.size(); i++) {
      if (near(planned.get(from), lines.get(i)) && used.add(i)) {
        long with = worth(planned.get(from), lines.get(i)) + best(planned, from + 1, lines, used);
        best = Math.max(best, with);
        used.remove(i);
      }
    }
    return best;
  }

  @Example
  void sessionTrainedOnTheNextDayIsNotSkipped() {
    SessionMatches found = match(List.of(planned(1)), List.of(logged(3), logged(4)));
    assertTrue(found.matches().get(0).trained());
    assertEquals(1, found.matches().get(0).daysLate());
    assertEquals(List.of(logged(3)), found.unplanned());
  }

  @Example
  void earlierOfTwoEqualMatchesIsChosen() {
    SessionMatches found = match(List.of(planned(1), planned(3)), List.of(logged(4)));
    assertEquals(MONDAY.plusDays(1), found.matches().get(0).planned().date());
    assertEquals(MONDAY.plusDays(3), found.unlogged().get(0).date());
  }

  @Example
  void futureSessionsAreNotMissed() {
    SessionMatches found =
        SessionMatches.of(
            List.of(planned(1), planned(8)),
            MONDAY,
            Log.empty("ylva").with(logged(2)),
            MONDAY.plusDays(7));
    assertEquals(List.of(), found.unlogged());
  }
}
