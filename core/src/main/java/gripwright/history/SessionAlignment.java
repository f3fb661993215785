package gripwright.history;

import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the best alignment of planned and logged sessions of one name by dynamic programming.
 *
 * <p>Crossed matches are never better than uncrossed ones, so both sides are matched in order of
 * date. Only lines within reach of a session are considered, so the work grows in proportion to the
 * number of sessions.
 */
final class SessionAlignment {

  private static final long OF_TRAINED = 1_000_000_000_000L;
  private static final long OF_SKIPPED = 1_000_000L;
  private static final int DAYS_OF_WEEK = 7;

  /** The best choice for the last planned session and the last line in its reach. */
  private enum Step {
    WITHOUT_PLANNED,
    WITHOUT_LINE,
    TOGETHER
  }

  private final List<DatedSession> planned;
  private final List<LogEntry.OfSession> logged;
  private final LocalDate first;
  private final int[] from;
  private final int[] to;
  private final Step[][] steps;

  SessionAlignment(List<DatedSession> planned, List<LogEntry.OfSession> logged, LocalDate first) {
    this.planned = planned;
    this.logged = logged;
    this.first = first;
    this.from = new int[planned.size()];
    this.to = new int[planned.size()];
    this.steps = new Step[planned.size()][];
    int low = 0;
    int high = 0;
    for (int i = 0; i < planned.size(); i++) {
      while (low < logged.size() && logged.get(low).date().isBefore(earliest(planned.get(i)))) {
        low++;
      }
      while (high < logged.size() && !logged.get(high).date().isAfter(latest(planned.get(i)))) {
        high++;
      }
      from[i] = low;
      to[i] = high;
    }
  }

  private LocalDate weekStart(DatedSession session) {
    long days = ChronoUnit.DAYS.between(first, session.date());
    return first.plusDays(Math.floorDiv(days, DAYS_OF_WEEK) * DAYS_OF_WEEK);
  }

  private LocalDate earliest(DatedSession session) {
    LocalDate near = session.date().minusDays(SessionMatches.MOST_DAYS);
    LocalDate week = weekStart(session);
    return week.isBefore(near) ? week : near;
  }

  private LocalDate latest(DatedSession session) {
    LocalDate near = session.date().plusDays(SessionMatches.MOST_DAYS);
    LocalDate week = weekStart(session).plusDays(DAYS_OF_WEEK - 1);
    return week.isAfter(near) ? week : near;
  }

  private long worth(DatedSession session, LogEntry.OfSession line) {
    return (line instanceof LogEntry.Trained ? OF_TRAINED : OF_SKIPPED)
        - Math.abs(ChronoUnit.DAYS.between(session.date(), line.date()));
  }

  /** Returns the index of the matched line of each planned session; -1 for none. */
  int[] choose() {
    long[] best =
        new long[logged.size() + 1]; // of the planned sessions so far with the first j lines
    int known = 0;
    for (int i = 0; i < planned.size(); i++) {
      while (known < to[i]) {
        known++;
        best[known] = best[known - 1];
      }
      steps[i] = new Step[to[i] - from[i]];
      long before = best[from[i]];
      for (int j = from[i]; j < to[i]; j++) {
        long together = before + worth(planned.get(i), logged.get(j));
        before = best[j + 1];
        Step step = Step.WITHOUT_PLANNED;
        if (best[j] > best[j + 1]) {
          best[j + 1] = best[j];
          step = Step.WITHOUT_LINE;
        }
        if (together > best[j + 1]) {
          best[j + 1] = together;
          step = Step.TOGETHER;
        }
        steps[i][j - from[i]] = step;
      }
    }
    return chosen();
  }

  private int[] chosen() {
    int[] chosen = new int[planned.size()];
    Arrays.fill(chosen, -1);
    int lines = logged.size();
    for (int i = planned.size() - 1; i >= 0; i--) {
      lines = Math.min(lines, to[i]);
      while (lines > from[i] && steps[i][lines - 1 - from[i]] == Step.WITHOUT_LINE) {
        lines--;
      }
      if (lines > from[i] && steps[i][lines - 1 - from[i]] == Step.TOGETHER) {
        lines--;
        chosen[i] = lines;
      }
    }
    return chosen;
  }
}
