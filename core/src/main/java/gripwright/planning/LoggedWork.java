package gripwright.planning;

import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
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
record LoggedWork(
    LocalDate date,
    Optional<Done> done,
    OptionalInt sets,
    Optional<Load> load,
    Optional<Load> asked) {

  private static final double LEAST_SHARE = 0.98; // a plate is not always at hand

  boolean lighter() {
    return load.isPresent()
        && asked.isPresent()
        && load.get().compareTo(asked.get().times(LEAST_SHARE)) < 0;
  }

  boolean missedSets() {
    return done.isPresent()
        && sets.isPresent()
        && done.get().sets().isPresent()
        && done.get().sets().getAsInt() < sets.getAsInt();
  }

  double effort() {
    return done.map(Done::effort).orElse(OptionalDouble.empty()).orElse(0);
  }

  Optional<String> trouble(Setbacks.Asked asked) {
    if (missedSets()) {
      return Optional.of(
          done.orElseThrow().sets().getAsInt() + " of " + sets.getAsInt() + " sets on " + date);
    }
    if (effort() > asked.mostEffort()) {
      return Optional.of(
          "effort "
              + Numbers.plain(effort(), 1)
              + " on "
              + date
              + ", above "
              + Numbers.plain(asked.mostEffort(), 1));
    }
    return Optional.empty();
  }
}
