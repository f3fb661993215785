package gripwright.history;

import gripwright.grip.Setup;
import gripwright.log.LogEntry.Done;
import gripwright.log.LogEntry.Trained;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/**
 * A planned exercise and the logged work that belongs to it; one of the two may be missing.
 *
 * @param planned the planned exercise; empty for unplanned work
 * @param done the logged work; empty if none was logged
 */
public record ExerciseMatch(Optional<PlannedExercise> planned, Optional<Done> done) {

  /**
   * Matches the exercises of a session in order, by protocol and setup first, then by protocol,
   * grip and hands on another edge. Each is used once. A warm-up, which needs no log line, leaves
   * the lines that other exercises of its kind need.
   *
   * @return the planned exercises in order, then unplanned work
   */
  public static List<ExerciseMatch> of(DatedSession session, Trained trained) {
    List<PlannedExercise> exercises = session.exercises();
    List<Optional<Done>> found = new ArrayList<>();
    exercises.forEach(exercise -> found.add(Optional.empty()));
    List<Done> left = new ArrayList<>(trained.done());
    take(exercises, found, left, (one, other) -> one.toString().equals(other.toString()));
    take(exercises, found, left, ExerciseMatch::sameExceptEdge);
    List<ExerciseMatch> matches = new ArrayList<>();
    for (int i = 0; i < exercises.size(); i++) {
      matches.add(new ExerciseMatch(Optional.of(exercises.get(i)), found.get(i)));
    }
    left.forEach(done -> matches.add(new ExerciseMatch(Optional.empty(), Optional.of(done))));
    return matches;
  }

  private static boolean sameExceptEdge(Setup one, Setup other) {
    return one.grip().name().equals(other.grip().name())
        && one.hands() == other.hands()
        && one.lifting() == other.lifting();
  }

  private static void take(
      List<PlannedExercise> exercises,
      List<Optional<Done>> found,
      List<Done> left,
      BiPredicate<Setup, Setup> same) {
    for (int i = 0; i < exercises.size(); i++) {
      if (found.get(i).isEmpty()) {
        PlannedExercise exercise = exercises.get(i);
        List<Done> fitting =
            left.stream()
                .filter(d -> d.protocol().equals(exercise.protocol()))
                .filter(d -> same.test(exercise.setup(), d.setup()))
                .toList();
        Optional<Done> done =
            exercise.warmUp() && fitting.size() <= needed(exercises, found, exercise, same)
                ? Optional.empty()
                : fitting.stream().findFirst();
        found.set(i, done);
        done.ifPresent(left::remove);
      }
    }
  }

  /** Counts the exercises of the kind of a warm-up that need a line and have none yet. */
  private static long needed(
      List<PlannedExercise> exercises,
      List<Optional<Done>> found,
      PlannedExercise warmUp,
      BiPredicate<Setup, Setup> same) {
    long needed = 0;
    for (int i = 0; i < exercises.size(); i++) {
      PlannedExercise each = exercises.get(i);
      needed +=
          found.get(i).isEmpty()
                  && !each.warmUp()
                  && each.protocol().equals(warmUp.protocol())
                  && same.test(each.setup(), warmUp.setup())
              ? 1
              : 0;
    }
    return needed;
  }

  /** Returns whether it is a warm-up without a log line, which counts as done. */
  public boolean isUnloggedWarmUp() {
    return done.isEmpty() && planned.filter(PlannedExercise::warmUp).isPresent();
  }

  /** Returns the setup that was trained: the logged one, or the planned one of a warm-up. */
  public Optional<Setup> trainedSetup() {
    return isUnloggedWarmUp() ? planned.map(PlannedExercise::setup) : done.map(Done::setup);
  }

  /** Returns the number of planned sets, by the plan or else by the log. */
  public OptionalInt setsPlanned() {
    return planned.isPresent()
        ? OptionalInt.of(planned.get().scheme().sets())
        : done.map(Done::setsPlanned).orElse(OptionalInt.empty());
  }

  /**
   * Returns the number of sets done: 0 if nothing was logged, except for a warm-up, and all planned
   * sets if the log gives no number; empty if that is unknown too.
   */
  public OptionalInt setsDone() {
    if (done.isEmpty()) {
      return isUnloggedWarmUp() ? setsPlanned() : OptionalInt.of(0);
    }
    return done.get().sets().isPresent() ? done.get().sets() : setsPlanned();
  }

  /**
   * Returns whether all planned sets were done with at least the planned load. If their number is a
   * bound, that many count as all.
   */
  public boolean inFull() {
    return isDone() && hasAllSets() && isHeavyEnough();
  }

  /**
   * Returns whether it was done as planned: in full, or with fewer sets where their number is a
   * bound.
   */
  public boolean asPlanned() {
    return isDone() && !missedSets() && isHeavyEnough();
  }

  /** Returns whether sets were left out that the plan has, and not only as a bound. */
  public boolean missedSets() {
    boolean bound = planned.filter(p -> p.scheme().setsUpTo()).isPresent();
    return !(bound && isDone()) && !hasAllSets();
  }

  private boolean isDone() {
    return (done.isPresent() || isUnloggedWarmUp()) && setsDone().orElse(0) > 0;
  }

  private boolean hasAllSets() {
    return setsDone().orElse(0) >= setsPlanned().orElse(1);
  }

  private boolean isHeavyEnough() {
    return planned.isEmpty()
        || done.flatMap(Done::load)
            .map(load -> load.compareTo(planned.get().totalLoad().times(LEAST_SHARE)) >= 0)
            .orElse(true);
  }

  /** Returns whether clearly more than the planned load was used. */
  public boolean heavier() {
    return planned.isPresent()
        && done.flatMap(Done::load)
            .filter(load -> isMore(load, planned.get().totalLoad()))
            .isPresent();
  }

  /**
   * Returns whether a load is clearly above a planned one: by more than 5 %, and by more than one
   * small step of the equipment. Both limits are the library's own choice.
   */
  static boolean isMore(Load load, Load planned) {
    return load.compareTo(planned.times(MOST_SHARE)) > 0
        && load.minus(planned).compareTo(SMALL_STEP) > 0;
  }

  private static final double MOST_SHARE = 1.05;
  private static final Load SMALL_STEP = Load.ofKilograms(0.5);

  /**
   * Share of the planned load that counts as the full load, because the exact plate is not always
   * available.
   */
  private static final double LEAST_SHARE = 0.98;
}
