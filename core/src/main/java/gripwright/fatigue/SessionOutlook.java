package gripwright.fatigue;

import gripwright.fatigue.SessionFatigue.Miss;
import gripwright.fatigue.SessionFatigue.Witness;
import gripwright.fatigue.SessionFatigue.Work;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.quantity.Load;
import gripwright.schedule.DoneLink;
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

/**
 * Tells of every exercise of a session what it leaves, and of a hold that can't be completed what
 * would be. Each session is reckoned once, whatever the weeks and days it is trained in. Not
 * thread-safe.
 */
public final class SessionOutlook {

  /** A hold that certainly can't be completed. */
  private static final String FAILS = "plan.hold-fails";

  /** A hold that the mean of the estimate, or the athlete's own tests, say can't be completed. */
  private static final String DOUBTFUL = "plan.hold-doubtful";

  private final Map<List<Object>, Outcome> known = new HashMap<>();
  private final IdentityHashMap<ForceTime, Integer> curves = new IdentityHashMap<>();

  /** Begins with no session calculated. */
  public SessionOutlook() {}

  private record Outcome(List<Optional<EndReserve>> reserves, List<Told> told) {}

  /**
   * A missed hold and what would be completed in its place.
   *
   * @param percent the greatest level in whole per cent, where the exercise has one
   * @param less by how many whole per cent less load, where it has none
   */
  private record Told(Miss miss, OptionalInt percent, OptionalInt less) {}

  /**
   * Returns exercises with what they leave.
   *
   * @param exercises of one session, in the order of training
   * @param between rest between two of them
   * @param strength what is known of the athlete on the day
   * @param findings holds that can't be completed are added here
   */
  public List<PlannedExercise> of(
      List<PlannedExercise> exercises,
      Duration between,
      StrengthMap strength,
      FindingList findings) {
    List<Work> works = exercises.stream().map(e -> work(e, strength)).toList();
    Outcome outcome =
        known.computeIfAbsent(
            asFelt(exercises, works, between), felt -> outcome(exercises, works, between));
    outcome
        .told()
        .forEach(
            told ->
                findings.addEstimate(
                    finding(told, exercises, outcome),
                    -carried(told.miss(), exercises),
                    told.miss().witness() == Witness.OPTIMISTIC));
    List<PlannedExercise> all = new ArrayList<>();
    for (int i = 0; i < exercises.size(); i++) {
      PlannedExercise exercise = exercises.get(i);
      PlannedExercise told =
          outcome.reserves().get(i).map(reserve -> leaving(exercise, reserve)).orElse(exercise);
      all.add(told);
    }
    return all;
  }

  /** Returns all that an outcome rests on, in numbers: quickly compared. */
  private List<Object> asFelt(List<PlannedExercise> exercises, List<Work> works, Duration between) {
    List<Object> felt = new ArrayList<>();
    felt.add(between);
    for (int i = 0; i < works.size(); i++) {
      Work work = works.get(i);
      felt.add(work.hands());
      felt.add(exercises.get(i).percentOfMax());
      work.maximum()
          .ifPresent(
              m -> {
                felt.add(m.used().kilograms());
                felt.add(m.mean().kilograms());
                felt.add(m.high().kilograms());
              });
      work.curve().ifPresent(c -> felt.add(curves.computeIfAbsent(c, n -> curves.size())));
      for (LoadedStep step : work.steps()) {
        felt.add(step.seconds());
        felt.add(step.load().map(Load::kilograms).orElse(-1.0));
      }
    }
    return felt;
  }

  private static Work work(PlannedExercise exercise, StrengthMap strength) {
    return new Work(
        exercise.steps(),
        exercise.setup().hands(),
        exercise.maximum(),
        strength.curve(exercise.setup()));
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
        fatigue.misses().stream()
            .map(miss -> told(fatigue, miss, exercises.get(miss.exercise()), works))
            .toList());
  }

  private static Told told(
      SessionFatigue fatigue, Miss miss, PlannedExercise exercise, List<Work> works) {
    int index = miss.exercise();
    Work work = works.get(index);
    if (exercise.percentOfMax().isPresent() && exercise.maximum().isPresent()) {
      Load whole = exercise.maximum().get().used();
      int written = (int) Math.ceil(exercise.percentOfMax().getAsDouble() - 1e-9);
      return new Told(
          miss,
          greatest(
              written - 1,
              p -> fatigue.with(index, work.at(whole.times(p / 100.0))).completes(index)),
          OptionalInt.empty());
    }
    OptionalInt kept =
        greatest(99, p -> fatigue.with(index, work.times(p / 100.0)).completes(index));
    return new Told(
        miss,
        OptionalInt.empty(),
        kept.isPresent() ? OptionalInt.of(100 - kept.getAsInt()) : OptionalInt.empty());
  }

  /** Returns the greatest number from 1 to a limit that will do, where every smaller one does. */
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

  /** Returns how many holds of its exercise are carried, the one that fails by its part. */
  private static double carried(Miss miss, List<PlannedExercise> exercises) {
    double asked = exercises.get(miss.exercise()).scheme().holds().get(miss.hold()).seconds();
    return miss.hold() + miss.carriedSeconds() / asked;
  }

  private static Finding finding(Told told, List<PlannedExercise> exercises, Outcome outcome) {
    Miss miss = told.miss();
    PlannedExercise exercise = exercises.get(miss.exercise());
    Finding finding =
        miss.witness() == Witness.OPTIMISTIC
            ? Finding.error(FAILS, exercise.path())
            : Finding.warning(DOUBTFUL, exercise.path());
    double asked = exercise.scheme().holds().get(miss.hold()).seconds();
    finding =
        finding
            .with("grip", exercise.setup().grip().name())
            .with("setup", exercise.setup())
            .with("hold", exercise.scheme().place(miss.hold()))
            .with("carried", Math.floor(miss.carriedSeconds()))
            .with("seconds", asked);
    if (miss.witness() == Witness.CURVE) {
      finding = finding.with("curve", "");
    }
    Optional<EndReserve> reserve = outcome.reserves().get(miss.exercise());
    if (reserve.isPresent()) {
      finding =
          finding
              .with("left", percent(reserve.get().mean()) + " %")
              .with("low", percent(reserve.get().low()))
              .with("high", percent(reserve.get().high()) + " %");
    }
    if (told.percent().isPresent()) {
      return finding.with(
          "level", Clause.of("common.level-of-max", "percent", told.percent().getAsInt()));
    }
    return told.less().isPresent() ? finding.with("less", told.less().getAsInt() + " %") : finding;
  }
}
