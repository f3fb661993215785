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
 * One exercise of a week, in all its sessions: a protocol on a grip. Left and right lines of one
 * exercise are one.
 */
final class TrainedLine {

  private static final double SLACK = 1e-6;

  /** Levels that differ by less are the same, where protocols have other names; our own number. */
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

  /** What a session has of it. */
  private static final class InSession {
    private final Map<Side, Integer> sets = new EnumMap<>(Side.class);
    private double load;
    private double relativeLoad;

    int sets() {
      return sets.values().stream().mapToInt(n -> n).max().orElse(0);
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
   * @param share the share of its load that a week on the way back from time off has
   */
  void add(ExerciseView exercise, double share) {
    Scheme scheme = exercise.scheme();
    seconds = Math.max(seconds, exercise.longestHold);
    repetitions = Math.max(repetitions, scheme.repetitionsPerSet());
    kilograms = Math.max(kilograms, exercise.totalLoad / share);
    maximum = Math.max(maximum, exercise.maximum());
    load += exercise.load / share;
    level = Math.max(level, exercise.work().greatest());
    light &= exercise.isLighterThan(HeldWork.MIDDLE);
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

  /** Tells whether this is the same protocol, by its name, on the same grip. */
  boolean isSame(TrainedLine other) {
    return grip.equals(other.grip) && lifting == other.lifting && protocol.equals(other.protocol);
  }

  /** Tells whether this is the same by its holds, rests and level, so that no name hides it. */
  boolean isAlike(TrainedLine other) {
    return grip.equals(other.grip)
        && lifting == other.lifting
        && holds.equals(other.holds)
        && level <= SAME_LEVEL * other.level + SLACK
        && other.level <= SAME_LEVEL * level + SLACK;
  }

  /** Tells whether this is the same as another, by name or by what it is. */
  boolean isLike(TrainedLine other) {
    return isSame(other) || isAlike(other);
  }

  /** Tells whether all of it is known to be light, or below 40 % of the maximum. */
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
   * Returns the greatest load of a session.
   *
   * @param relative true to count it in shares of the maximum, where that is known
   */
  double perSession(boolean relative) {
    return sessions.values().stream()
        .mapToDouble(in -> relative ? in.relativeLoad : in.load)
        .max()
        .orElse(0);
  }

  /** Returns by what share the load of a session is above that of another week. */
  double riseFrom(TrainedLine before, boolean relative) {
    return perSession(relative) / before.perSession(relative) - 1;
  }

  /**
   * Returns by what share the load of a session is above that of another week but for one smallest
   * step: that one without which least is left.
   *
   * @param equipmentStep the least by which a load can change, in kg
   */
  double riseBeyondAStep(TrainedLine before, double equipmentStep, boolean relative) {
    double step = 1;
    step = Math.max(step, oneStep(sets(), before.sets(), 1));
    step = Math.max(step, oneStep(repetitions, before.repetitions, 1));
    step = Math.max(step, oneStep(seconds, before.seconds, 1));
    step = Math.max(step, oneStep(kilograms(before, relative), before.kilograms, equipmentStep));
    return (1 + riseFrom(before, relative)) / step - 1;
  }

  /** Returns what one smallest step makes of a number, as a factor; 1 where it is no such step. */
  private static double oneStep(double now, double before, double step) {
    return steps(now - before, step) == 1 ? now / before : 1;
  }

  /** Returns the greatest load, in terms of another week's maximum where a test came between. */
  private double kilograms(TrainedLine before, boolean relative) {
    return relative ? kilograms / maximum * before.maximum : kilograms;
  }

  /** Returns what today's maximum is of that of another week; where both are known. */
  double maximumFrom(TrainedLine before) {
    return maximum / before.maximum;
  }

  /** Tells whether its greatest level is below that of another. */
  boolean isMilderThan(TrainedLine other) {
    return level < other.level - SLACK;
  }

  boolean hasMaximum() {
    return sessions.values().stream().allMatch(in -> Double.isFinite(in.relativeLoad));
  }

  /**
   * Counts what got harder since another week in smallest steps: one set, one hold, one second, one
   * step of the equipment. A rise by more than a step counts two.
   *
   * @param equipmentStep the least by which a load can change, in kg
   * @param relative true where a test came between: loads are then compared as shares of the
   *     maximum
   */
  int stepsFrom(TrainedLine before, double equipmentStep, boolean relative) {
    return steps(sets() - before.sets(), 1)
        + steps(repetitions - before.repetitions, 1)
        + steps(seconds - before.seconds, 1)
        + steps(kilograms(before, relative) - before.kilograms, equipmentStep);
  }

  private int sets() {
    return sessions.values().stream().mapToInt(InSession::sets).max().orElse(0);
  }

  private static int steps(double rise, double step) {
    return rise <= SLACK ? 0 : rise <= step + SLACK ? 1 : 2;
  }
}
