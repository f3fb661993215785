package gripwright.review;

import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A session that was planned, logged or both, with what was done against what was asked. Immutable.
 *
 * @param outcome what came of it
 * @param planned what was asked; empty if it was not planned
 * @param logged the line of the log; empty if there is none
 * @param work its exercises: those that were asked in their order, then those that were not
 * @param minutes how long it took: the plan's minutes, less holds and rests of sets that were not
 *     done; reckoned from what was done where there was no plan; 0 if it was not trained
 * @param effort 0 to 10: mean of the efforts written down, by how long each exercise took; empty if
 *     none is
 */
public record ReviewedSession(
    Outcome outcome,
    Optional<DatedSession> planned,
    Optional<LogEntry.OfSession> logged,
    List<Work> work,
    double minutes,
    OptionalDouble effort) {

  /** What came of a session. */
  public enum Outcome {
    /** Trained as asked. */
    DONE,
    /** Trained, with sets, load or exercises missing. */
    PARTLY,
    /** Not trained, and the log says so. */
    SKIPPED,
    /** Planned, and no line of the log tells of it. */
    UNLOGGED,
    /** Trained without having been planned. */
    UNPLANNED
  }

  /**
   * What was done of an exercise.
   *
   * @param match what was asked and what was done
   * @param seconds all holds that were done, in s
   * @param impulse total load times hold time, on both hands together, in N s; empty if no load is
   *     known
   */
  public record Work(ExerciseMatch match, double seconds, OptionalDouble impulse) {}

  /** Copies the list. */
  public ReviewedSession {
    work = List.copyOf(work);
  }

  /** Returns the day it was trained or skipped, else the day it was planned. */
  public LocalDate date() {
    return logged.map(LogEntry::date).orElseGet(() -> planned.orElseThrow().date());
  }

  /** Returns its name. */
  public String name() {
    if (planned.isPresent()) {
      return planned.get().name();
    }
    return logged.orElseThrow().session();
  }

  /** Tells whether it was trained, whole or in part. */
  public boolean trained() {
    return logged.filter(LogEntry.Trained.class::isInstance).isPresent();
  }

  /** Returns effort times minutes; empty if it was not trained or no effort is written down. */
  public OptionalDouble load() {
    return trained() && effort.isPresent()
        ? OptionalDouble.of(effort.getAsDouble() * minutes)
        : OptionalDouble.empty();
  }
}
