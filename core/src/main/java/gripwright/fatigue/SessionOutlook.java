package gripwright.fatigue;

import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.fatigue.SessionFatigue.Violation;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.quantity.Load;
import gripwright.schedule.DoneLink;
import gripwright.schedule.HandsInTurn;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthMap;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Estimates the capacity left after every exercise of a session and, for a hold that can't be
 * completed, what could be. Each session is calculated once for all weeks and days on which it is
 * trained. Not thread-safe.
 */
public final class SessionOutlook {

  /** A hold that certainly can't be completed. */
  private static final String FAILS = "plan.hold-fails";

  /** A hold that can't be completed by the mean of the estimate or by the athlete's own tests. */
  private static final String DOUBTFUL = "plan.hold-doubtful";

  private final Map<List<Object>, Outcome> known = new HashMap<>();
  private final IdentityHashMap<ForceTime, Integer> curves = new IdentityHashMap<>();
  private final IdentityHashMap<List<LoadedStep>, Integer> seen = new IdentityHashMap<>();
  private final Map<List<LoadedStep>, Integer> numbers = new HashMap<>();

  /** Creates an outlook with no session calculated. */
  public SessionOutlook() {}

  /**
   * What a session leaves.
   *
   * @param reserves capacity left after each exercise
   * @param failing whether each exercise has a bound beyond what can be held
   * @param reported holds that can't be completed
   */
  private record Outcome(
      List<Optional<EndReserve>> reserves,
      List<Boolean> failing,
      List<ReportedViolation> reported) {}

  /**
   * A missed hold and a change that could be completed.
   *
   * @param percent the greatest possible level in whole per cent, if the exercise has a level
   * @param less the needed reduction of load in whole per cent, if it has none
   */
  private record ReportedViolation(Violation violation, OptionalInt percent, OptionalInt less) {}

  /**
   * Returns exercises with the capacity left after them.
   *
   * @param exercises of one session, in the order of training
   * @param between rest between two of them
   * @param strength the athlete's strength as known on the day
   * @param findings holds that can't be completed are added here
   */
  public List<PlannedExercise> of(
      List<PlannedExercise> exercises,
      Duration between,
      StrengthMap strength,
      FindingList findings) {
    List<Work> works = new ArrayList<>();
    for (int i = 0; i < exercises.size(); i++) {
      works.add(work(exercises.get(i), turn(exercises, i), strength));
    }
    Outcome outcome =
        known.computeIfAbsent(
            asFelt(exercises, works, between), felt -> outcome(exercises, works, between));
    outcome
        .reported()
        .forEach(
            reported ->
                findings.addEstimate(
                    finding(reported, exercises, outcome),
                    -carried(reported.violation(), exercises),
                    reported.violation().evidence() == Evidence.OPTIMISTIC));
    List<PlannedExercise> all = new ArrayList<>();
    for (int i = 0; i < exercises.size(); i++) {
      PlannedExercise exercise = exercises.get(i);
      PlannedExercise reported =
          outcome.reserves().get(i).map(reserve -> leaving(exercise, reserve)).orElse(exercise);
      all.add(outcome.failing().get(i) ? reported.toFailure() : reported);
    }
    return all;
  }

  /** Returns all inputs of the estimate as a key for fast comparison. */
  private List<Object> asFelt(List<PlannedExercise> exercises, List<Work> works, Duration between) {
    List<Object> felt = new ArrayList<>();
    felt.add(between);
    for (int i = 0; i < works.size(); i++) {
      Work work = works.get(i);
      felt.add(work.hands());
      felt.add(work.turn());
      felt.add(exercises.get(i).percentOfMax());
      work.maximum()
          .ifPresent(
              m -> {
                felt.add(m.used().kilograms());
                felt.add(m.mean().kilograms());
                felt.add(m.high().kilograms());
              });
      work.curve().ifPresent(c -> felt.add(curves.computeIfAbsent(c, n -> curves.size())));
      felt.add(work.allOut());
      felt.add(number(work.steps()));
    }
    return felt;
  }

  /** Returns a number that equal steps share. */
  private Integer number(List<LoadedStep> steps) {
    return seen.computeIfAbsent(
        steps, same -> numbers.computeIfAbsent(same, others -> numbers.size()));
  }

  private static Work.Turn turn(List<PlannedExercise> exercises, int index) {
    PlannedExercise exercise = exercises.get(index);
    boolean later =
        index > 0
            && HandsInTurn.areOfOneLine(exercises.get(index - 1), exercise)
            && exercises.get(index - 1).setup().hands() != exercise.setup().hands();
    return later ? Work.Turn.LATER : exercise.alternating() ? Work.Turn.FIRST : Work.Turn.NONE;
  }

  private static Work work(PlannedExercise exercise, Work.Turn turn, StrengthMap strength) {
    return new Work(
        exercise.steps(),
        exercise.setup().hands(),
        exercise.maximum(),
        strength.curve(exercise.setup()),
        strength.allOut(exercise.setup()),
        turn);
  }

  private static PlannedExercise leaving(PlannedExercise exercise, EndReserve reserve) {
    return exercise.leaving(
        reserve, new DoneLink.CapacityLeft(reserve), reserve.mean() < EndReserve.LITTLE);
  }

  private static int percent(double share) {
    return (int) Math.rint(share * 100);
  }

  private static Outcome outcome(
      List<PlannedExercise> exercises, List<Work> works, Duration between) {
    SessionFatigue fatigue = new SessionFatigue(works, between.toNanos() / 1e9);
    return new Outcome(
        fatigue.reserves(),
        IntStream.range(0, works.size()).mapToObj(fatigue::failsBeforeBound).toList(),
        fatigue.violations().stream()
            .map(
                violation ->
                    reported(fatigue, violation, exercises.get(violation.exercise()), works))
            .toList());
  }

  private static ReportedViolation reported(
      SessionFatigue fatigue, Violation violation, PlannedExercise exercise, List<Work> works) {
    int index = violation.exercise();
    Work work = works.get(index);
    if (exercise.percentOfMax().isPresent() && exercise.maximum().isPresent()) {
      Load whole = exercise.maximum().get().used();
      int written = (int) Math.ceil(exercise.percentOfMax().getAsDouble() - 1e-9);
      return new ReportedViolation(
          violation,
          greatest(
              written - 1,
              p -> fatigue.with(index, work.at(whole.times(p / 100.0))).completes(index)),
          OptionalInt.empty());
    }
    OptionalInt kept =
        greatest(99, p -> fatigue.with(index, work.times(p / 100.0)).completes(index));
    return new ReportedViolation(
        violation,
        OptionalInt.empty(),
        kept.isPresent() ? OptionalInt.of(100 - kept.getAsInt()) : OptionalInt.empty());
  }

  /**
   * Returns the greatest number from 1 to a limit that satisfies a condition, if all smaller ones
   * do.
   */
  private static OptionalInt greatest(int limit, IntPredicate will) {
    int does = 0;
    int doesNot = limit + 1;
    while (doesNot - does > 1) {
      int middle = (does + doesNot) >>> 1;
      if (will.test(middle)) {
        does = middle;
      } else {
        doesNot = middle;
      }
    }
    return does == 0 ? OptionalInt.empty() : OptionalInt.of(does);
  }

  /** Returns how many holds of its exercise are carried, counting the failing hold in part. */
  private static double carried(Violation violation, List<PlannedExercise> exercises) {
    double asked =
        exercises.get(violation.exercise()).scheme().holds().get(violation.hold()).seconds();
    return violation.hold() + violation.carriedSeconds() / asked;
  }

  private static Finding finding(
      ReportedViolation reported, List<PlannedExercise> exercises, Outcome outcome) {
    Violation violation = reported.violation();
    PlannedExercise exercise = exercises.get(violation.exercise());
    Finding finding =
        violation.evidence() == Evidence.OPTIMISTIC
            ? Finding.error(FAILS, exercise.path())
            : Finding.warning(DOUBTFUL, exercise.path());
    double asked = exercise.scheme().holds().get(violation.hold()).seconds();
    finding =
        finding
            .with("grip", exercise.setup().grip().name())
            .with("setup", exercise.setup())
            .with("hold", exercise.scheme().place(violation.hold()))
            .with("carried", Math.floor(violation.carriedSeconds()))
            .with("seconds", asked);
    if (violation.evidence() == Evidence.CURVE) {
      finding = finding.with("curve", "");
    }
    if (violation.evidence() == Evidence.ALL_OUT) {
      finding = finding.with("all-out", "");
    }
    Optional<EndReserve> reserve = outcome.reserves().get(violation.exercise());
    if (reserve.isPresent()) {
      finding =
          finding
              .with("left", percent(reserve.get().mean()) + " %")
              .with("low", percent(reserve.get().low()))
              .with("high", percent(reserve.get().high()) + " %");
    }
    if (reported.percent().isPresent()) {
      return finding.with(
          "level", Clause.of("common.level-of-max", "percent", reported.percent().getAsInt()));
    }
    return reported.less().isPresent()
        ? finding.with("less", reported.less().getAsInt() + " %")
        : finding;
  }
}
