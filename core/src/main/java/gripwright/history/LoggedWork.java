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
 * The logged work of an exercise on a day. Warm-ups are left out.
 *
 * @param date the day
 * @param done the log entry; empty if the exercise was planned and not done
 * @param sets the number of planned sets, if known
 * @param upTo true if that number is a bound, so that fewer are not missed
 * @param load the highest load, if known
 * @param plannedLoad the highest planned load, if known
 */
public record LoggedWork(
    LocalDate date,
    Optional<Done> done,
    OptionalInt sets,
    boolean upTo,
    Optional<Load> load,
    Optional<Load> plannedLoad) {

  /** Creates work whose number of sets is no bound. */
  public LoggedWork(
      LocalDate date,
      Optional<Done> done,
      OptionalInt sets,
      Optional<Load> load,
      Optional<Load> plannedLoad) {
    this(date, done, sets, false, load, plannedLoad);
  }

  private static final double LEAST_SHARE = 0.98; // the exact plate is not always available

  /**
   * Returns the logged work of an exercise since the plan began and before a day, oldest first.
   *
   * @param sessions the past sessions of the plan, with their log entries
   * @param same selects logged and planned work by protocol and setup
   * @param upTo true if its number of sets is a bound, so that fewer are not missed
   */
  public static List<LoggedWork> inPlan(
      LogTimeline timeline,
      List<DatedSession> sessions,
      LocalDate before,
      BiPredicate<String, Setup> same,
      boolean upTo) {
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
          of(same, line.date(), match, upTo).ifPresent(facts::add);
        }
      } else {
        line.done().stream()
            .filter(d -> same.test(d.protocol(), d.setup()))
            .map(
                d ->
                    new LoggedWork(
                        line.date(),
                        Optional.of(d),
                        d.setsPlanned(),
                        upTo,
                        d.load(),
                        Optional.empty()))
            .forEach(facts::add);
      }
    }
    return facts;
  }

  private static Optional<LoggedWork> of(
      BiPredicate<String, Setup> same, LocalDate date, ExerciseMatch match, boolean upTo) {
    if (match.planned().filter(PlannedExercise::warmUp).isPresent()) {
      return Optional.empty();
    }
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
            upTo,
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
    return !upTo
        && done.isPresent()
        && sets.isPresent()
        && done.get().sets().isPresent()
        && done.get().sets().getAsInt() < sets.getAsInt();
  }

  /** Returns whether less than half of the sets were done where their number is a bound. */
  public boolean farBelowBound() {
    return upTo
        && done.isPresent()
        && sets.isPresent()
        && done.get().sets().isPresent()
        && done.get().sets().getAsInt() * 2 < sets.getAsInt();
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
