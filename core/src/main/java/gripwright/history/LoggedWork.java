package gripwright.history;

import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

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
