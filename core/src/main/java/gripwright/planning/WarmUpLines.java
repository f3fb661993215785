package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.plan.Exercise;
import gripwright.protocol.Hardness;
import gripwright.quantity.Numbers;
import gripwright.schedule.PlannedExercise;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Decides which warm-up lines of a session are too hard for a warm-up: a hard exercise is, and all
 * others are if they have over half of the session's load-time. They count as work: they are eased
 * and need a log line, and are reported.
 */
final class WarmUpLines {

  /**
   * Greatest share of a session's load-time that warm-up lines have together; the library's own
   * choice.
   */
  static final double MOST_LOAD = 0.5;

  private static final double TOLERANCE = 1e-9;

  private final Map<ModelPath, Finding> tooHard = new HashMap<>();

  private WarmUpLines() {}

  /**
   * Judges the warm-up lines of a session.
   *
   * @param exercises the exercises of a week that is not eased, with their hardness
   * @param lines the lines they come from; if one of them gave no exercise, shares of the load are
   *     unknown
   */
  static WarmUpLines of(List<PlannedExercise> exercises, List<Exercise> lines) {
    WarmUpLines judged = new WarmUpLines();
    Set<ModelPath> places = new HashSet<>();
    double all = 0;
    double warm = 0;
    for (PlannedExercise exercise : exercises) {
      places.add(exercise.path());
      all += exercise.loadIndex();
      warm += exercise.warmUp() && !exercise.hard() ? exercise.loadIndex() : 0;
    }
    boolean most = places.size() == lines.size() && warm > all * MOST_LOAD * (1 + TOLERANCE);
    for (PlannedExercise exercise : exercises) {
      if (exercise.warmUp() && exercise.hard()) {
        judged.tooHard.putIfAbsent(exercise.path(), hard(exercise));
      } else if (exercise.warmUp() && most) {
        judged.tooHard.putIfAbsent(
            exercise.path(), finding(exercise).with("share", percent(warm / all * 100)));
      }
    }
    return judged;
  }

  /**
   * Judges the warm-up lines of a test, which has no load-time: too hard is a hard exercise, and
   * all others if they have over half of the load-time of a session.
   *
   * @param exercises its exercises
   * @param session the greatest load-time of a session of that week, in kg s; 0 if it has none
   */
  static WarmUpLines ofTest(List<PlannedExercise> exercises, double session) {
    WarmUpLines judged = new WarmUpLines();
    double warm =
        exercises.stream()
            .filter(exercise -> !exercise.hard())
            .mapToDouble(PlannedExercise::loadIndex)
            .sum();
    boolean most = session > 0 && warm > session * MOST_LOAD * (1 + TOLERANCE);
    for (PlannedExercise exercise : exercises) {
      if (exercise.hard()) {
        judged.tooHard.putIfAbsent(exercise.path(), hard(exercise).with("test", ""));
      } else if (most) {
        judged.tooHard.putIfAbsent(
            exercise.path(),
            finding(exercise).with("ofSession", percent(warm / session * 100)).with("test", ""));
      }
    }
    return judged;
  }

  private static Finding hard(PlannedExercise exercise) {
    OptionalDouble level = exercise.percentOfMax();
    return level.orElse(0) >= Hardness.SHARE_OF_MAX * 100 - TOLERANCE
        ? finding(exercise).with("percent", percent(level.getAsDouble()))
        : finding(exercise);
  }

  private static Finding finding(PlannedExercise exercise) {
    return Finding.warning("plan.warm-up-hard", exercise.path()).with("setup", exercise.setup());
  }

  private static String percent(double number) {
    return Numbers.plain(number, 1) + " %";
  }

  /** Returns whether the line at a place counts as work. */
  boolean isWork(ModelPath place) {
    return tooHard.containsKey(place);
  }

  /** Returns exercises with those lines as work, and reports them. */
  List<PlannedExercise> mark(List<PlannedExercise> exercises, FindingList into) {
    tooHard.values().forEach(into::add);
    return exercises.stream()
        .map(e -> isWork(e.path()) ? e.toBuilder().warmUp(false).build() : e)
        .toList();
  }
}
