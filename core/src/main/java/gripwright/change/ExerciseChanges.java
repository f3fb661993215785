package gripwright.change;

import gripwright.change.SessionChange.Measure;
import gripwright.finding.ModelPath;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds the changes between the exercises of two corresponding sessions. */
final class ExerciseChanges {

  private ExerciseChanges() {}

  /** Returns the differences between two corresponding sessions, except for their days. */
  static List<PlanChange> between(Pair<DatedSession> sessions) {
    List<PlanChange> changes = new ArrayList<>();
    List<PlannedExercise> olds = new ArrayList<>(sessions.before().exercises());
    List<PlannedExercise> news = new ArrayList<>(sessions.after().exercises());
    List<Pair<PlannedExercise>> pairs = new ArrayList<>();
    pairs.addAll(
        Pair.taken(olds, news, (o, n) -> o.protocol().equals(n.protocol()) && sameHold(o, n)));
    pairs.addAll(
        Pair.taken(
            olds,
            news,
            (o, n) ->
                o.protocol().equals(n.protocol())
                    && o.setup().grip().name().equals(n.setup().grip().name())));
    pairs.addAll(
        Pair.taken(
            olds,
            news,
            (o, n) ->
                o.order() == n.order() && (o.protocol().equals(n.protocol()) || sameHold(o, n))));
    pairs.sort(Comparator.comparingInt(p -> p.after().order()));
    for (Pair<PlannedExercise> pair : pairs) {
      List<Measure> found = differences(pair.before(), pair.after());
      Optional<Pair<PlannedExercise>> ofLevel = ofLevel(sessions, pair);
      if (!found.contains(Measure.LOAD)) {
        ofLevel.ifPresent(p -> note(found, Measure.LEVEL, p.before(), p.after(), e -> level(e)));
      }
      if (found.isEmpty()) {
        note(found, Measure.HARDNESS, pair.before(), pair.after(), PlannedExercise::hard);
      }
      for (Measure measure : found) {
        Pair<PlannedExercise> shown = measure == Measure.LEVEL ? ofLevel.orElse(pair) : pair;
        changes.add(
            new SessionChange.ExerciseChanged(
                sessions.after(), shown.before(), shown.after(), measure));
      }
    }
    boolean reordered = !sorted(pairs, p -> p.before().order());
    if (reordered) {
      pairs.stream()
          .filter(p -> p.before().order() != p.after().order())
          .forEach(
              p ->
                  changes.add(
                      new SessionChange.ExerciseChanged(
                          sessions.after(), p.before(), p.after(), Measure.ORDER)));
    }
    olds.forEach(e -> changes.add(new SessionChange.ExerciseDropped(sessions.after(), e)));
    news.forEach(e -> changes.add(new SessionChange.ExerciseAdded(sessions.after(), e)));
    if (changes.isEmpty() && sessions.before().minutes() != sessions.after().minutes()) {
      changes.add(new SessionChange.SessionTimed(sessions.before(), sessions.after()));
    }
    return changes;
  }

  private static <T> boolean sorted(List<T> list, Function<T, Integer> key) {
    for (int i = 1; i < list.size(); i++) {
      if (key.apply(list.get(i - 1)) > key.apply(list.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameHold(PlannedExercise one, PlannedExercise other) {
    return one.setup().grip().name().equals(other.setup().grip().name())
        && one.setup().hands() == other.setup().hands()
        && one.setup().lifting() == other.setup().lifting();
  }

  /** Returns the differences between two corresponding exercises, except for the level. */
  private static List<Measure> differences(PlannedExercise was, PlannedExercise is) {
    List<Measure> found = new ArrayList<>();
    note(found, Measure.PROTOCOL, was, is, PlannedExercise::protocol);
    note(found, Measure.GRIP, was, is, e -> e.setup().grip().name());
    note(found, Measure.EDGE, was, is, e -> e.setup().edge());
    note(found, Measure.HANDS, was, is, e -> List.of(e.setup().hands(), e.setup().lifting()));
    note(found, Measure.SETS, was, is, e -> e.scheme().sets());
    note(found, Measure.REPETITIONS, was, is, e -> e.scheme().repetitionsPerSet());
    note(found, Measure.HOLD, was, is, e -> e.scheme().holds().get(0).time());
    note(found, Measure.REST, was, is, e -> e.scheme().restBetweenHolds());
    note(found, Measure.SET_REST, was, is, e -> e.scheme().restBetweenSets());
    note(found, Measure.LOAD, was, is, e -> rounded(e.totalLoad()));
    note(found, Measure.BOUND, was, is, ExerciseChanges::bounds);
    note(found, Measure.WARM_UP, was, is, PlannedExercise::warmUp);
    note(found, Measure.REHABILITATION, was, is, PlannedExercise::rehabilitation);
    if (found.isEmpty() && !course(was).equals(course(is))) {
      found.add(Measure.COURSE);
    }
    return found;
  }

  private static List<Object> bounds(PlannedExercise exercise) {
    return List.of(
        exercise.scheme().setsUpTo(),
        exercise.steps().stream()
            .filter(LoadedStep::isHold)
            .map(LoadedStep::extent)
            .distinct()
            .toList());
  }

  /** Returns two exercises as planned; empty if one of them was not planned. */
  private static Optional<Pair<PlannedExercise>> ofLevel(
      Pair<DatedSession> sessions, Pair<PlannedExercise> exercises) {
    Optional<PlannedExercise> was = ofLevel(sessions.before(), exercises.before());
    return ofLevel(sessions.after(), exercises.after())
        .flatMap(is -> was.map(w -> new Pair<>(w, is)));
  }

  /**
   * Returns an exercise as planned, since a trained one has its own load but the level of the plan.
   */
  private static Optional<PlannedExercise> ofLevel(DatedSession session, PlannedExercise exercise) {
    return session.happened().isEmpty()
        ? Optional.of(exercise)
        : session
            .happened()
            .flatMap(Happened::planned)
            .flatMap(
                planned ->
                    planned.exercises().stream()
                        .filter(e -> number(e).equals(number(exercise)))
                        .filter(e -> e.protocol().equals(exercise.protocol()))
                        .filter(e -> sameHold(e, exercise))
                        .findFirst());
  }

  /** Returns the number of an exercise in its session, from its place. */
  private static String number(PlannedExercise exercise) {
    List<ModelPath.Step> steps = exercise.path().steps();
    return steps.isEmpty() ? "" : steps.get(steps.size() - 1).name();
  }

  /** Returns a load as documents write it: less than 0.1 g is rounding noise. */
  private static BigDecimal rounded(Load load) {
    return Numbers.rounded(load.kilograms(), 4);
  }

  /** Returns the level in per cent as documents write it. */
  private static Optional<BigDecimal> level(PlannedExercise exercise) {
    return exercise.percentOfMax().isPresent()
        ? Optional.of(Numbers.rounded(exercise.percentOfMax().getAsDouble(), 3))
        : Optional.empty();
  }

  private static List<Object> course(PlannedExercise exercise) {
    return exercise.steps().stream()
        .<Object>map(s -> List.of(s.seconds(), s.load().map(ExerciseChanges::rounded)))
        .toList();
  }

  private static void note(
      List<Measure> found,
      Measure measure,
      PlannedExercise was,
      PlannedExercise is,
      Function<PlannedExercise, Object> read) {
    if (!read.apply(was).equals(read.apply(is))) {
      found.add(measure);
    }
  }
}
