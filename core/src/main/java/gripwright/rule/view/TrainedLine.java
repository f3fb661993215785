package gripwright.rule.view;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.hand.Side;
import gripwright.protocol.Scheme;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One exercise of a week over all its sessions, identified by protocol and grip. Lines for the left
 * and right hand are merged.
 */
final class TrainedLine {

  private static final double SLACK = 1e-6;

  /**
   * Maximum ratio of levels that count as equal if protocols have different names; the library's
   * own choice.
   */
  private static final double SAME_LEVEL = 1.1;

  private final String grip;
  private final boolean lifting;
  private final String protocol;
  private final List<Object> holds;
  private final Map<SessionView, InSession> sessions = new LinkedHashMap<>();
  private double seconds;
  private int repetitions;
  private double kilograms;
  private double maximum;
  private double load;
  private double level;
  private boolean light = true;

  /** The part of this exercise in one session. */
  private static final class InSession {
    private final Map<Side, Integer> sets = new EnumMap<>(Side.class);
    private double load;
    private double relativeLoad;

    int sets() {
      int most = 0;
      for (int each : sets.values()) {
        most = Math.max(most, each);
      }
      return most;
    }
  }

  TrainedLine(ExerciseView exercise) {
    grip = exercise.grip().name();
    lifting = exercise.setup.lifting();
    protocol = exercise.protocol;
    holds = List.of(exercise.longestHold, exercise.repetitions, exercise.rest);
  }

  /**
   * Adds an exercise.
   *
   * @param share the share of the full load, below 1 in a week that returns from time off
   */
  void add(ExerciseView exercise, double share) {
    Scheme scheme = exercise.scheme();
    seconds = Math.max(seconds, exercise.longestHold);
    repetitions = Math.max(repetitions, scheme.repetitionsPerSet());
    kilograms = Math.max(kilograms, exercise.totalLoad / share);
    maximum = Math.max(maximum, exercise.maximum());
    load += exercise.load / share;
    level = Math.max(level, exercise.work().greatest());
    light &= exercise.isLighterThan(HeldWork.MIDDLE) && !exercise.toFailure();
    InSession in = sessions.computeIfAbsent(exercise.session, s -> new InSession());
    in.load += exercise.load / share;
    in.relativeLoad += exercise.load / share / exercise.maximum();
    exercise
        .handsAtWork()
        .sides()
        .forEach(side -> in.sets.merge(side, scheme.sets(), Integer::sum));
  }

  /** Returns the protocol and the grip in words. */
  Message words() {
    return new Clause("breach.exercise", Map.of("protocol", protocol, "grip", grip));
  }

  /** Returns whether both have the same protocol name and grip. */
  boolean isSame(TrainedLine other) {
    return grip.equals(other.grip) && lifting == other.lifting && protocol.equals(other.protocol);
  }

  /**
   * Returns whether both agree in holds, rests and level, so that a new name alone hides no rise.
   */
  boolean hasSameContent(TrainedLine other) {
    return grip.equals(other.grip)
        && lifting == other.lifting
        && holds.equals(other.holds)
        && level <= SAME_LEVEL * other.level + SLACK
        && other.level <= SAME_LEVEL * level + SLACK;
  }

  /** Returns whether both are the same by name or by content. */
  boolean isLike(TrainedLine other) {
    return isSame(other) || hasSameContent(other);
  }

  /**
   * Returns whether all of it is known to be light or below 40 % of the maximum, and not to
   * failure.
   */
  boolean isLight() {
    return light;
  }

  int sessions() {
    return sessions.size();
  }

  double load() {
    return load;
  }

  /**
   * Returns the highest load of a session.
   *
   * @param relative true to express it as shares of the maximum, if that is known
   */
  double perSession(boolean relative) {
    double most = Double.NEGATIVE_INFINITY;
    for (InSession in : sessions.values()) {
      most = Math.max(most, relative ? in.relativeLoad : in.load);
    }
    return sessions.isEmpty() ? 0 : most;
  }

  /** Returns the relative rise of the load per session from another week. */
  double riseFrom(TrainedLine before, boolean relative) {
    return perSession(relative) / before.perSession(relative) - 1;
  }

  /**
   * Returns the relative rise of the load per session from another week, minus the largest rise
   * that one smallest step explains.
   *
   * @param equipmentStep the smallest change of a load, in kg
   */
  double riseBeyondAStep(TrainedLine before, double equipmentStep, boolean relative) {
    double step = 1;
    step = Math.max(step, oneStep(sets(), before.sets(), 1));
    step = Math.max(step, oneStep(repetitions, before.repetitions, 1));
    step = Math.max(step, oneStep(seconds, before.seconds, 1));
    step = Math.max(step, oneStep(kilograms(before, relative), before.kilograms, equipmentStep));
    return (1 + riseFrom(before, relative)) / step - 1;
  }

  /**
   * Returns the factor by which one smallest step changes a number; 1 if it changed differently.
   */
  private static double oneStep(double now, double before, double step) {
    return steps(now - before, step) == 1 ? now / before : 1;
  }

  /**
   * Returns the highest load, converted to another week's maximum if there was a test in between.
   */
  private double kilograms(TrainedLine before, boolean relative) {
    return relative ? kilograms / maximum * before.maximum : kilograms;
  }

  /** Returns the ratio of the maximum to that of another week; both must be known. */
  double maximumFrom(TrainedLine before) {
    return maximum / before.maximum;
  }

  /** Returns whether its highest level is below that of another. */
  boolean isMilderThan(TrainedLine other) {
    return level < other.level - SLACK;
  }

  boolean hasMaximum() {
    for (InSession in : sessions.values()) {
      if (!Double.isFinite(in.relativeLoad)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns the number of smallest steps since another week: one set, one hold, one second or one
   * step of the equipment each. A rise by more than one step counts as two.
   *
   * @param equipmentStep the smallest change of a load, in kg
   * @param relative true to compare loads as shares of the maximum, as after a test
   */
  int stepsFrom(TrainedLine before, double equipmentStep, boolean relative) {
    return steps(sets() - before.sets(), 1)
        + steps(repetitions - before.repetitions, 1)
        + steps(seconds - before.seconds, 1)
        + steps(kilograms(before, relative) - before.kilograms, equipmentStep);
  }

  private int sets() {
    int most = 0;
    for (InSession in : sessions.values()) {
      most = Math.max(most, in.sets());
    }
    return most;
  }

  private static int steps(double rise, double step) {
    return rise <= SLACK ? 0 : rise <= step + SLACK ? 1 : 2;
  }
}
