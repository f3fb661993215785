package gripwright.review;

import gripwright.grip.Setup;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A session that was planned, logged or both, with planned and completed work. Immutable.
 *
 * @param outcome how it was done
 * @param planned the planned session; empty if it was not planned
 * @param logged the line of the log; empty if there is none
 * @param work its exercises: the planned ones in order, then the others
 * @param minutes how long it took: the plan's minutes, less holds and rests of sets that were not
 *     done; calculated from the exercises if there was no plan; 0 if it was not trained
 * @param effort 0 to 10: mean of the logged efforts, weighted by the time of each exercise; empty
 *     if none is logged
 */
public record ReviewedSession(
    Outcome outcome,
    Optional<DatedSession> planned,
    Optional<LogEntry.OfSession> logged,
    List<Work> work,
    double minutes,
    OptionalDouble effort) {

  /** How a session was done. */
  public enum Outcome {
    /** Trained as planned. */
    DONE,
    /** Trained, with sets, load or exercises missing, or with more load than planned. */
    PARTLY,
    /** Not trained, and the log says so. */
    SKIPPED,
    /** Planned, without a line in the log. */
    UNLOGGED,
    /** Trained without having been planned. */
    UNPLANNED
  }

  /**
   * Completed work of an exercise.
   *
   * @param match planned and completed exercise
   * @param seconds time under tension, in s
   * @param impulse total load times hold time, on both hands together, in N s; empty if the load is
   *     unknown
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

  /** Returns the setups that were planned or logged. */
  public Stream<Setup> setups() {
    return Stream.concat(
        planned.stream().flatMap(session -> session.exercises().stream()).map(e -> e.setup()),
        work.stream().flatMap(each -> each.match().done().stream()).map(done -> done.setup()));
  }

  /** Returns whether it was trained, whole or in part. */
  public boolean trained() {
    return logged.filter(LogEntry.Trained.class::isInstance).isPresent();
  }

  /** Returns effort times minutes; empty if it was not trained or no effort is logged. */
  public OptionalDouble load() {
    return trained() && effort.isPresent()
        ? OptionalDouble.of(effort.getAsDouble() * minutes)
        : OptionalDouble.empty();
  }
}
