package gripwright.history;

import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Scheme;
import gripwright.protocol.Term;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.CompletedHold;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the holds of training that a log shows to have been completed: all sets done, with load and
 * effort written. The holds of the exercise have to be equal, since a log has one load for all, and
 * held for their whole time: a log does not show how long a hold with a bound lasted.
 */
public final class CompletedHolds {

  private CompletedHolds() {}

  /**
   * Returns the holds in a log that are known without a plan: those whose time no plan can set.
   *
   * @param protocols by name
   */
  public static List<CompletedHold> in(Log log, Map<String, Protocol> protocols) {
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(protocols, "protocols");
    return log.of(LogEntry.Trained.class).stream()
        .flatMap(
            line ->
                line.done().stream()
                    .map(done -> new ExerciseMatch(Optional.empty(), Optional.of(done)))
                    .flatMap(match -> of(line.date(), match, protocols)))
        .toList();
  }

  /**
   * Returns what an exercise shows; nothing if it was not completed.
   *
   * @param date when it was done
   * @param match what was planned and done
   * @param protocols by name, for exercises that were not planned
   */
  public static Stream<CompletedHold> of(
      LocalDate date, ExerciseMatch match, Map<String, Protocol> protocols) {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(match, "match");
    Objects.requireNonNull(protocols, "protocols");
    Optional<Done> done =
        match
            .done()
            .filter(Done::inFull)
            .filter(each -> each.sets().orElse(0) >= match.setsPlanned().orElse(1))
            .filter(each -> each.effort().isPresent());
    Optional<Duration> time =
        match.planned().isPresent()
            ? match.planned().flatMap(CompletedHolds::planned)
            : done.flatMap(each -> Optional.ofNullable(protocols.get(each.protocol())))
                .flatMap(protocol -> fixed(protocol.steps()));
    return done
        .filter(each -> each.load().isPresent())
        .flatMap(each -> time.map(of -> hold(date, each, of)))
        .stream();
  }

  private static CompletedHold hold(LocalDate date, Done done, Duration time) {
    return new CompletedHold(date, done.setup(), time, done.load().orElseThrow());
  }

  private static Optional<Duration> planned(PlannedExercise exercise) {
    return Optional.of(exercise.scheme())
        .filter(scheme -> !scheme.hasBound())
        .filter(scheme -> scheme.levels().size() == 1)
        .flatMap(Scheme::holdTime);
  }

  /** Returns the time of all holds if they are equal and no parameter sets it. */
  private static Optional<Duration> fixed(List<Part> steps) {
    List<Part.Hold> holds = holds(steps).distinct().toList();
    return holds.size() == 1
            && !holds.get(0).extent().isBound()
            && holds.get(0).time() instanceof Term.Fixed<Duration> fixed
        ? Optional.of(fixed.value())
        : Optional.empty();
  }

  private static Stream<Part.Hold> holds(List<Part> steps) {
    return steps.stream()
        .flatMap(
            step ->
                step.accept(
                    new Part.Visitor<Stream<Part.Hold>>() {
                      @Override
                      public Stream<Part.Hold> repeat(Part.Repeat part) {
                        return holds(part.steps());
                      }

                      @Override
                      public Stream<Part.Hold> hold(Part.Hold part) {
                        return Stream.of(part);
                      }

                      @Override
                      public Stream<Part.Hold> rest(Part.Rest part) {
                        return Stream.empty();
                      }
                    }));
  }
}
