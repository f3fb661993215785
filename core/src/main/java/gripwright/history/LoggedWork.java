package gripwright.history;

import gripwright.grip.Setup;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/**
 * What was done of an exercise on a day.
 *
 * @param date the day
 * @param done the line; empty if it was asked and not done
 * @param sets how many sets were asked, if that is known
 * @param load the greatest load, if it is known
 * @param asked the greatest load that was asked, if that is known
 */
public record LoggedWork(
    LocalDate date,
    Optional<Done> done,
    OptionalInt sets,
    Optional<Load> load,
    Optional<Load> asked) {

  private static final double LEAST_SHARE = 0.98; // a plate is not always at hand

  /**
   * Returns what was done of an exercise since the plan began and before a day, oldest first.
   *
   * @param sessions those of the plan so far, with what came of them
   * @param same tells by protocol and setup whether a line or a planned exercise is meant
   */
  public static List<LoggedWork> inPlan(
      LogTimeline timeline,
      List<DatedSession> sessions,
      LocalDate before,
      BiPredicate<String, Setup> same) {
    List<LoggedWork> facts = new ArrayList<>();
    for (LogEntry.Trained line : timeline.log().of(LogEntry.Trained.class)) {
      if (line.date().isBefore(timeline.plan().from()) || !line.date().isBefore(before)) {
        continue;
      }
      Optional<DatedSession> planned =
          sessions.stream()
              .flatMap(s -> s.happened().stream())
              .filter(h -> timeline.line(h).equals(line))
              .flatMap(h -> h.planned().stream())
              .findFirst();
      if (planned.isPresent()) {
        for (ExerciseMatch match : ExerciseMatch.of(planned.get(), line)) {
          of(same, line.date(), match).ifPresent(facts::add);
        }
      } else {
        line.done().stream()
            .filter(d -> same.test(d.protocol(), d.setup()))
            .map(
                d ->
                    new LoggedWork(
                        line.date(), Optional.of(d), d.setsAsked(), d.load(), Optional.empty()))
            .forEach(facts::add);
      }
    }
    return facts;
  }

  private static Optional<LoggedWork> of(
      BiPredicate<String, Setup> same, LocalDate date, ExerciseMatch match) {
    boolean is =
        match.done().map(d -> same.test(d.protocol(), d.setup())).orElse(false)
            || match.asked().map(e -> same.test(e.protocol(), e.setup())).orElse(false);
    if (!is) {
      return Optional.empty();
    }
    OptionalInt written = match.done().map(Done::setsAsked).orElse(OptionalInt.empty());
    Optional<Load> wanted = match.asked().map(PlannedExercise::totalLoad);
    return Optional.of(
        new LoggedWork(
            date,
            match.done(),
            written.isPresent() ? written : match.setsAsked(),
            match.done().flatMap(Done::load).or(() -> wanted),
            wanted));
  }

  public boolean lighter() {
    return load.isPresent()
        && asked.isPresent()
        && load.get().compareTo(asked.get().times(LEAST_SHARE)) < 0;
  }

  public boolean missedSets() {
    return done.isPresent()
        && sets.isPresent()
        && done.get().sets().isPresent()
        && done.get().sets().getAsInt() < sets.getAsInt();
  }

  public double effort() {
    return done.map(Done::effort).orElse(OptionalDouble.empty()).orElse(0);
  }

  public Optional<Cause> trouble(double mostEffort) {
    if (missedSets()) {
      return Optional.of(
          new Cause.MissedSets(done.orElseThrow().sets().getAsInt(), sets.getAsInt(), date));
    }
    return effort() > mostEffort
        ? Optional.of(new Cause.TooMuchEffort(effort(), mostEffort, date))
        : Optional.empty();
  }
}
