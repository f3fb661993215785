package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A session on a day. Immutable.
 *
 * @param date the day
 * @param week plan week, from 1
 * @param block name of the block
 * @param blockWeek week of the block, from 1
 * @param name name of the session
 * @param minutes warm-up, holds, rests and changes together, rounded up
 * @param hard true if any exercise is hard
 * @param eased true if the week is eased
 * @param bodyMass body mass used for the loads
 * @param placedBecause the reason for its day
 * @param exercises in the order of training
 * @param path its place in the model; a {@code week} in a path is the week of the block
 * @param happened how it was trained, for a past session, whose day and exercises are then those
 *     trained; empty for a future session
 */
public record DatedSession(
    LocalDate date,
    int week,
    String block,
    int blockWeek,
    String name,
    int minutes,
    boolean hard,
    boolean eased,
    Load bodyMass,
    PlacementReason placedBecause,
    List<PlannedExercise> exercises,
    ModelPath path,
    Optional<Happened> happened) {

  /** Copies the exercises. */
  public DatedSession {
    exercises = List.copyOf(exercises);
  }

  /** Returns the time under tension, in seconds. */
  public double timeUnderLoadSeconds() {
    return exercises.stream().mapToDouble(PlannedExercise::timeUnderLoadSeconds).sum();
  }

  /** Returns the load-time: the sum of total load times hold time, in kg s. */
  public double loadIndex() {
    return exercises.stream().mapToDouble(PlannedExercise::loadIndex).sum();
  }
}
