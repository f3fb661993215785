package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;

/**
 * A hold of training that was completed: the greatest load for its time was at least this on that
 * day. It says nothing of how much more would have been possible, so loads never rest on it.
 *
 * @param date when
 * @param setup grip, edge and hands
 * @param hold how long, above 0 s
 * @param load total load, above 0 kg
 */
public record CompletedHold(LocalDate date, Setup setup, Duration hold, Load load) {

  /** Newest first, then in an order that doesn't depend on that of the log. */
  static final Comparator<CompletedHold> ORDER =
      Comparator.comparing(CompletedHold::date, Comparator.reverseOrder())
          .thenComparing(each -> each.setup().grip().name())
          .thenComparing(each -> each.setup().edge())
          .thenComparing(CompletedHold::hold)
          .thenComparing(CompletedHold::load, Comparator.reverseOrder());

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if the hold is not above 0 s and up to 3600 s, or the load not
   *     above 0 kg and up to 1000 kg
   */
  public CompletedHold {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(load, "load");
    Range.HOLD.check(hold);
    Range.LOAD.check(load);
  }

  /** Returns how long it was held, in s. */
  double seconds() {
    return hold.toNanos() / 1e9;
  }
}
