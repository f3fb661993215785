package gripwright.rule.view;

import gripwright.finding.ModelPath;
import gripwright.log.LogEntry;
import gripwright.protocol.Level;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Consecutive sessions that were logged with an effort near the maximum. */
final class Efforts {

  /** Lowest effort that counts as near the maximum; the library's own choice. */
  private static final double NEAR_GREATEST = 9.5;

  private final Map<ModelPath, Integer> inARow = new HashMap<>();

  /** Reads the log once; a session without an effort ends a row. */
  Efforts(PlanView plan) {
    Map<Integer, DatedSession> byEntry = new HashMap<>();
    Stream.concat(plan.before.stream(), Stream.of(plan))
        .map(view -> view.schedule)
        .map(Schedule::sessions)
        .flatMap(List::stream)
        .forEach(s -> s.happened().ifPresent(h -> byEntry.put(h.entry(), s)));
    List<LogEntry.Trained> lines =
        plan.timeline.log().of(LogEntry.Trained.class).stream()
            .sorted(Comparator.comparing(LogEntry.Trained::date))
            .toList();
    Map<LogEntry.Trained, Integer> rows = new HashMap<>();
    Map<LogEntry.Trained, DatedSession> sessions = new HashMap<>();
    byEntry.forEach(
        (entry, session) -> {
          if (plan.timeline.log().entries().get(entry) instanceof LogEntry.Trained line) {
            sessions.put(line, session);
          }
        });
    int row = 0;
    for (LogEntry.Trained line : lines) {
      plan.evaluation.take(1 + line.done().size());
      Optional<DatedSession> session = Optional.ofNullable(sessions.get(line));
      row = line.done().stream().anyMatch(d -> isTooMuch(d, session)) ? row + 1 : 0;
      rows.put(line, row);
    }
    sessions.forEach((line, session) -> inARow.put(session.path(), rows.getOrDefault(line, 0)));
  }

  private static boolean isTooMuch(LogEntry.Done done, Optional<DatedSession> session) {
    return done.effort().orElse(0) >= NEAR_GREATEST
        && session.flatMap(DatedSession::happened).flatMap(Happened::planned).stream()
            .flatMap(planned -> planned.exercises().stream())
            .noneMatch(planned -> isLike(planned, done) && needsMaximum(planned));
  }

  private static boolean isLike(PlannedExercise planned, LogEntry.Done done) {
    return planned.protocol().equals(done.protocol())
        && planned.setup().grip().name().equals(done.setup().grip().name());
  }

  private static boolean needsMaximum(PlannedExercise planned) {
    return planned.isToFailure() || isWrittenAsMaximum(planned);
  }

  private static boolean isWrittenAsMaximum(PlannedExercise planned) {
    return planned.scheme().levels().stream()
        .anyMatch(
            level ->
                (level instanceof Level.Effort effort && effort.outOfTen() >= NEAR_GREATEST)
                    || (level instanceof Level.Reserve reserve && reserve.time().isZero()));
  }

  /** Returns the number of such sessions in a row up to this one; NaN for a future session. */
  double inARow(SessionView session) {
    Integer row = inARow.get(session.path);
    return row == null ? Double.NaN : row;
  }
}
