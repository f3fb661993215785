package gripwright.history;

import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.CompletedHold;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the holds of training that a log shows to have been completed: all sets done, with load and
 * effort written. The holds of the exercise have to be alike, since a log has one load for all.
 */
public final class CompletedHolds {

  private CompletedHolds() {}

  /**
   * Returns the holds in a log that are known without a plan: those of protocols without
   * parameters, since a plan may set these.
   *
   * @param protocols by name
   */
  public static List<CompletedHold> in(Log log, Map<String, Protocol> protocols) {
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
    Optional<Done> done =
        match
            .done()
            .filter(Done::inFull)
            .filter(each -> each.sets().orElse(0) >= match.setsAsked().orElse(1))
            .filter(each -> each.effort().isPresent());
    Optional<Scheme> scheme =
        match
            .asked()
            .map(PlannedExercise::scheme)
            .or(
                () ->
                    done.map(each -> protocols.get(each.protocol()))
                        .filter(protocol -> protocol.parameters().isEmpty())
                        .map(protocol -> protocol.bind(Map.of())))
            .filter(each -> each.levels().size() == 1);
    return done.flatMap(
            each ->
                each.load()
                    .flatMap(
                        load ->
                            scheme
                                .flatMap(Scheme::holdTime)
                                .map(
                                    time -> new CompletedHold(date, each.setup(), time, load))))
        .stream();
  }
}
