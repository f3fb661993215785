package gripwright.history;

import gripwright.grip.Setup;
import gripwright.log.LogEntry.Done;
import gripwright.log.LogEntry.Trained;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/**
 * An exercise that was asked and what was done of it; one of the two may be missing.
 *
 * @param asked what was planned; empty if it was done without being asked
 * @param done what was logged; empty if no line tells of it
 */
public record ExerciseMatch(Optional<PlannedExercise> asked, Optional<Done> done) {

  /**
   * Matches the exercises of a session in order: the same protocol on the same setup first, then
   * the same protocol and grip with the same hands on another edge. Each is taken once.
   *
   * @return those that were asked, in their order, then those that were not
   */
  public static List<ExerciseMatch> of(DatedSession planned, Trained trained) {
    List<PlannedExercise> asked = planned.exercises();
    List<Optional<Done>> found = new ArrayList<>();
    asked.forEach(exercise -> found.add(Optional.empty()));
    List<Done> left = new ArrayList<>(trained.done());
    take(asked, found, left, (one, other) -> one.toString().equals(other.toString()));
    take(asked, found, left, ExerciseMatch::alike);
    List<ExerciseMatch> matches = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      matches.add(new ExerciseMatch(Optional.of(asked.get(i)), found.get(i)));
    }
    left.forEach(done -> matches.add(new ExerciseMatch(Optional.empty(), Optional.of(done))));
    return matches;
  }

  private static boolean alike(Setup one, Setup other) {
    return one.grip().name().equals(other.grip().name())
        && one.hands() == other.hands()
        && one.lifting() == other.lifting();
  }

  private static void take(
      List<PlannedExercise> asked,
      List<Optional<Done>> found,
      List<Done> left,
      BiPredicate<Setup, Setup> same) {
    for (int i = 0; i < asked.size(); i++) {
      if (found.get(i).isEmpty()) {
        PlannedExercise exercise = asked.get(i);
        Optional<Done> done =
            left.stream()
                .filter(d -> d.protocol().equals(exercise.protocol()))
                .filter(d -> same.test(exercise.setup(), d.setup()))
                .findFirst();
        found.set(i, done);
        done.ifPresent(left::remove);
      }
    }
  }

  /** Returns how many sets were asked: those of the plan, else those of the line. */
  public OptionalInt setsAsked() {
    return asked.isPresent()
        ? OptionalInt.of(asked.get().scheme().sets())
        : done.map(Done::setsAsked).orElse(OptionalInt.empty());
  }

  /**
   * Returns how many sets were done: 0 where no line tells of the exercise, all that were asked
   * where its line says nothing of sets; empty if neither tells.
   */
  public OptionalInt setsDone() {
    if (done.isEmpty()) {
      return OptionalInt.of(0);
    }
    return done.get().sets().isPresent() ? done.get().sets() : setsAsked();
  }

  /**
   * Tells whether as many sets were done as were asked, at no less than the load that was asked.
   */
  public boolean inFull() {
    int sets = setsDone().orElse(0);
    boolean heavyEnough =
        asked.isEmpty()
            || done.flatMap(Done::load)
                .map(load -> load.compareTo(asked.get().totalLoad().times(LEAST_SHARE)) >= 0)
                .orElse(true);
    return done.isPresent() && sets > 0 && sets >= setsAsked().orElse(1) && heavyEnough;
  }

  /** A load this close to the one asked is the same: a plate is not always at hand. */
  private static final double LEAST_SHARE = 0.98;
}
