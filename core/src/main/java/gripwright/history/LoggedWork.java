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
 * The logged work of an exercise on a day.
 *
 * @param date the day
 * @param done the log entry; empty if the exercise was planned and not done
 * @param sets the number of planned sets, if known
 * @param load the highest load, if known
 * @param plannedLoad the highest planned load, if known
 */
public record LoggedWork(
    LocalDate date,
    Optional<Done> done,
    OptionalInt sets,
    Optional<Load> load,
    Optional<Load> plannedLoad) {

  private static final double LEAST_SHARE = 0.98; // the exact plate is not always available

  /**
   * Returns the logged work of an exercise since the plan began and before a day, oldest first.
   *
   * @param sessions the past sessions of the plan, with their log entries
   * @param same selects logged and planned work by protocol and setup
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
                        line.date(), Optional.of(d), d.setsPlanned(), d.load(), Optional.empty()))
            .forEach(facts::add);
      }
    }
    return facts;
  }

  private static Optional<LoggedWork> of(
      BiPredicate<String, Setup> same, LocalDate date, ExerciseMatch match) {
    boolean is =
        match.done().map(d -> same.test(d.protocol(), d.setup())).orElse(false)
            || match.planned().map(e -> same.test(e.protocol(), e.setup())).orElse(false);
    if (!is) {
      return Optional.empty();
    }
    OptionalInt written = match.done().map(Done::setsPlanned).orElse(OptionalInt.empty());
    Optional<Load> wanted = match.planned().map(PlannedExercise::totalLoad);
    return Optional.of(
        new LoggedWork(
            date,
            match.done(),
            written.isPresent() ? written : match.setsPlanned(),
            match.done().flatMap(Done::load).or(() -> wanted),
            wanted));
  }

  public boolean lighter() {
    return load.isPresent()
        && plannedLoad.isPresent()
        && load.get().compareTo(plannedLoad.get().times(LEAST_SHARE)) < 0;
  }

  /** Returns whether clearly more than the planned load was used. */
  public boolean heavier() {
    return load.isPresent()
        && plannedLoad.isPresent()
        && ExerciseMatch.isMore(load.get(), plannedLoad.get());
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
