package gripwright.fatigue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The forecast of a session by a set of rates, with an interval. After every hold the optimistic
 * end has at least the capacity of the mean, and the mean at least that of the pessimistic end.
 *
 * @param rates the set
 * @param optimistic with less fatigue
 * @param mean with the rates as published or fitted
 * @param pessimistic with more fatigue
 */
public record Forecast(FatigueSet rates, Course optimistic, Course mean, Course pessimistic) {

  /**
   * A hold that can't be completed.
   *
   * @param hold its position among the holds of the session, from 0
   * @param seconds how long the load can be carried in it, 0 s or more, by the failing end of the
   *     interval
   * @param certain true if even the optimistic end fails there, no hold so far was above the valid
   *     range of the set, and this one is not below it; otherwise at least the mean fails
   */
  public record Shortfall(int hold, double seconds, boolean certain) {}

  /**
   * Simulates a session with the mean and both ends.
   *
   * @param rates the set
   * @param bouts holds and rests in the order they happen, starting from fresh fingers
   */
  public static Forecast of(FatigueSet rates, List<Bout> bouts) {
    return new Forecast(
        rates,
        Course.of(rates.optimistic(), bouts),
        Course.of(rates, bouts),
        Course.of(rates.pessimistic(), bouts));
  }

  /** Returns the hold to report: the certain one, or else the one where the mean fails. */
  public Optional<Shortfall> shortfall() {
    OptionalInt missed = optimistic.firstMissed();
    if (missed.isPresent() && servesUpTo(missed.getAsInt())) {
      return Optional.of(shortfall(optimistic, missed.getAsInt(), true));
    }
    missed = mean.firstMissed();
    return missed.isPresent()
        ? Optional.of(shortfall(mean, missed.getAsInt(), false))
        : Optional.empty();
  }

  private boolean servesUpTo(int last) {
    return rates.validAt(optimistic.holds().get(last).bout().ofMvc())
        && optimistic.holds().subList(0, last).stream()
            .allMatch(hold -> hold.bout().ofMvc() <= rates.to());
  }

  private static Shortfall shortfall(Course course, int hold, boolean certain) {
    return new Shortfall(hold, course.holds().get(hold).carriedSeconds(), certain);
  }
}
