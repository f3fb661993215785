package gripwright.fatigue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a set of rates says of a session, with its interval. After every hold the optimistic end has
 * no less capacity than the mean, and the mean no less than the pessimistic end.
 *
 * @param rates the set
 * @param optimistic with less fatigue
 * @param mean with the rates as published or fitted
 * @param pessimistic with more fatigue
 */
public record Forecast(FatigueRates rates, Course optimistic, Course mean, Course pessimistic) {

  /**
   * A hold that can't be completed.
   *
   * @param hold its place among the holds of the session, from 0
   * @param seconds how far into it the load can be carried, 0 s or more, by the end that fails
   * @param certain true if even the optimistic end fails there, and no hold so far was heavier than
   *     the set serves for, nor this one lighter; otherwise only the mean need fail
   */
  public record Shortfall(int hold, double seconds, boolean certain) {}

  /**
   * Simulates a session with all three ends.
   *
   * @param rates the set
   * @param bouts holds and rests in the order they happen, from fresh fingers on
   */
  public static Forecast of(FatigueRates rates, List<Bout> bouts) {
    return new Forecast(
        rates,
        Course.of(rates.optimistic(), bouts),
        Course.of(rates, bouts),
        Course.of(rates.pessimistic(), bouts));
  }

  /** Returns the hold to tell the coach about: the certain one, or else where the mean fails. */
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
