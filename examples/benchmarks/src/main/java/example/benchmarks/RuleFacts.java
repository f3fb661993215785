package example.benchmarks;

import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The input of rules as flat facts for a general-purpose rule engine. Sums, levels and pairs are
 * calculated here, so that an engine need not do it; loads are in kg, edges in mm, times in s
 * unless stated otherwise.
 *
 * @param exercises every exercise of the plan
 * @param sessions every session
 * @param weeks every week
 * @param pairs all pairs of sessions less than two days apart
 */
public record RuleFacts(
    List<Exercise> exercises, List<Session> sessions, List<Week> weeks, List<Pair> pairs) {

  /** An exercise; {@code trained} is in months, {@code load} in kg s. */
  public record Exercise(
      String grip,
      String family,
      int fingers,
      double edge,
      String hands,
      double level,
      double added,
      double load,
      double time,
      int sets,
      double hold,
      double rest,
      double setRest,
      int order,
      double trained) {}

  /** A session; {@code minutes} are minutes. */
  public record Session(
      String weekday, double minutes, double load, boolean hard, List<Exercise> exercises) {}

  /** A week; {@code previousLoad} is 0 where there is no earlier week. */
  public record Week(boolean hasPrevious, double load, double previousLoad, double time) {}

  /** Two sessions; {@code gap} is in days. */
  public record Pair(
      long gap,
      double earlierLoad,
      double laterLoad,
      boolean earlierHard,
      boolean laterHard,
      boolean sharedFingers,
      double laterMinutes) {}

  /** Largest gap of a pair of sessions that a rule of the benchmark needs, in days. */
  private static final int PAIR_DAYS = 2;

  /** Returns the facts of a plan whose sessions come by date. */
  static RuleFacts of(CompiledPlan plan) {
    List<Exercise> exercises = new ArrayList<>();
    List<Session> sessions = new ArrayList<>();
    for (DatedSession dated : plan.sessions()) {
      double trained = plan.athlete().trained().monthsOn(dated.date(), plan.plan().from());
      List<Exercise> some = dated.exercises().stream().map(e -> exercise(e, trained)).toList();
      exercises.addAll(some);
      sessions.add(
          new Session(
              dated.date().getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT),
              dated.minutes(),
              dated.loadIndex(),
              dated.hard(),
              some));
    }
    return new RuleFacts(exercises, sessions, weeks(plan), pairs(plan.sessions()));
  }

  /** Returns all facts. */
  List<Record> all() {
    List<Record> all = new ArrayList<>(exercises);
    all.addAll(sessions);
    all.addAll(weeks);
    all.addAll(pairs);
    return all;
  }

  private static Exercise exercise(PlannedExercise e, double trained) {
    Grip grip = e.setup().grip();
    return new Exercise(
        grip.name(),
        grip.family().word(),
        grip.fingers().count(),
        e.setup().edge().millimetres(),
        e.setup().hands().word(),
        e.percentOfMax().orElse(Double.NaN) / 100,
        e.added().kilograms(),
        e.loadIndex(),
        e.timeUnderLoadSeconds(),
        e.scheme().sets(),
        e.steps().stream()
            .filter(PlannedExercise.LoadedStep::isHold)
            .mapToDouble(PlannedExercise.LoadedStep::seconds)
            .max()
            .orElse(Double.NaN),
        e.scheme().restBetweenHolds().toMillis() / 1e3,
        e.scheme().restBetweenSets().toMillis() / 1e3,
        e.order(),
        trained);
  }

  private static List<Week> weeks(CompiledPlan plan) {
    Map<Integer, double[]> sums = new HashMap<>();
    for (DatedSession session : plan.sessions()) {
      double[] sum = sums.computeIfAbsent(session.week(), w -> new double[2]);
      sum[0] += session.loadIndex();
      sum[1] += session.timeUnderLoadSeconds();
    }
    List<Week> weeks = new ArrayList<>();
    double previous = 0;
    for (int number : plan.weeks().stream().map(PlanWeek::number).sorted().toList()) {
      double[] sum = sums.getOrDefault(number, new double[2]);
      weeks.add(new Week(previous > 0, sum[0], previous, sum[1]));
      previous = sum[0] > 0 ? sum[0] : previous;
    }
    return weeks;
  }

  private static List<Pair> pairs(List<DatedSession> sessions) {
    List<DatedSession> byDate = new ArrayList<>(sessions);
    byDate.sort(Comparator.comparing(DatedSession::date));
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < byDate.size(); i++) {
      for (int j = i + 1; j < byDate.size(); j++) {
        long gap = ChronoUnit.DAYS.between(byDate.get(i).date(), byDate.get(j).date());
        if (gap >= PAIR_DAYS) {
          break;
        }
        pairs.add(pair(byDate.get(i), byDate.get(j), gap));
      }
    }
    return pairs;
  }

  private static Pair pair(DatedSession earlier, DatedSession later, long gap) {
    return new Pair(
        gap,
        earlier.loadIndex(),
        later.loadIndex(),
        earlier.hard(),
        later.hard(),
        (fingers(earlier) & fingers(later)) != 0,
        later.minutes());
  }

  private static int fingers(DatedSession session) {
    return session.exercises().stream()
        .map(e -> e.setup().grip().fingers())
        .mapToInt(FingerSet::bits)
        .reduce(0, (a, b) -> a | b);
  }
}
