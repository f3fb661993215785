package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/**
 * A dated test of strength.
 *
 * @param date when
 * @param setup grip, edge and hands
 * @param result what was measured
 */
public record StrengthTest(LocalDate date, Setup setup, Result result) {

  /** What a test measured. */
  public sealed interface Result {}

  /**
   * The greatest load held for a set time.
   *
   * @param hold how long, above 0 s
   * @param load total load, above 0 kg
   */
  public record Held(Duration hold, Load load) implements Result {}

  /**
   * A load held until it could be held no longer.
   *
   * @param load total load, above 0 kg
   * @param lasting how long, above 0 s
   */
  public record ToFailure(Load load, Duration lasting) implements Result {}

  /**
   * Repeated all-out holds.
   *
   * @param work each hold
   * @param rest between holds
   * @param means mean load of each hold, in order
   */
  public record Series(Duration work, Duration rest, List<Load> means) implements Result {
    /** Copies the means. */
    public Series {
      means = List.copyOf(means);
    }
  }
}
