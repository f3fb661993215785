package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A dated test of strength.
 *
 * @param date when
 * @param setup grip, edge and hands
 * @param result what was measured
 * @param inForce true if a sensor showed forces in N, which are the weight of these loads
 */
public record StrengthTest(LocalDate date, Setup setup, Result result, boolean inForce) {
  /** Refuses null. */
  public StrengthTest {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(result, "result");
  }

  /** Creates a test of loads. */
  public StrengthTest(LocalDate date, Setup setup, Result result) {
    this(date, setup, result, false);
  }

  /** Returns this test on another day. */
  public StrengthTest on(LocalDate day) {
    return new StrengthTest(day, setup, result, inForce);
  }

  /** Returns this test with another result. */
  public StrengthTest with(Result other) {
    return new StrengthTest(date, setup, other, inForce);
  }

  /**
   * Returns a test of the greatest load held for a set time.
   *
   * @param date when
   * @param setup grip, edge and hands
   * @param hold how long, above 0 s and up to 3600 s
   * @param load total load, above 0 kg and up to 1000 kg
   * @throws IllegalArgumentException if hold or load is outside its range
   */
  public static StrengthTest held(LocalDate date, Setup setup, Duration hold, Load load) {
    return new StrengthTest(date, setup, new Held(hold, load));
  }

  /**
   * Returns a test of the greatest force held for a set time, as a sensor showed it.
   *
   * @param date when
   * @param setup grip, edge and hands
   * @param hold how long, above 0 s and up to 3600 s
   * @param newtons above 0 N and up to that of 1000 kg; 9.80665 N are 1 kg
   * @throws IllegalArgumentException if hold or force is outside its range
   * @since 1.0.0
   */
  public static StrengthTest ofForce(LocalDate date, Setup setup, Duration hold, double newtons) {
    Range.FORCE.check(newtons);
    Load load = Load.ofKilograms(newtons / Unit.NEWTONS_PER_KILOGRAM);
    return new StrengthTest(date, setup, new Held(hold, load), true);
  }

  /**
   * Returns the effort behind the greatest load by time: for a hold to failure its duration, for a
   * series the best mean. Empty if there was no load.
   */
  public Optional<Effort> effort() {
    return effort(result.time(), result.greatest());
  }

  private static Optional<Effort> effort(Duration time, Load load) {
    return load.kilograms() > 0 && time.toNanos() > 0
        ? Optional.of(new Effort(time.toNanos() / 1e9, load))
        : Optional.empty();
  }

  /** Returns whether it is the greatest load held for 7 s, the hold that maxima refer to. */
  public boolean heldForReference() {
    return result instanceof Held held
        && held.hold().toNanos() == Math.round(ForceTime.REFERENCE_SECONDS * 1e9);
  }

  /**
   * Returns this test with a share of every load.
   *
   * @param share above 0; every load must stay within its range
   * @throws IllegalArgumentException if one does not
   */
  public StrengthTest atShare(double share) {
    return with(
        result.accept(
            new Result.Visitor<>() {
              @Override
              public Result held(Held held) {
                return new Held(held.hold(), held.load().times(share));
              }

              @Override
              public Result toFailure(ToFailure failure) {
                return new ToFailure(failure.load().times(share), failure.lasting());
              }

              @Override
              public Result series(Series series) {
                return new Series(
                    series.work(),
                    series.rest(),
                    series.means().stream().map(mean -> mean.times(share)).toList());
              }
            }));
  }

  /** What a test measured. */
  public sealed interface Result {
    /** Returns the time of the hold, the time to failure, or the time of each hold of a series. */
    Duration time();

    /** Returns the greatest load; for a series the best mean. */
    Load greatest();

    /** Returns what the visitor returns for this kind of result. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of result.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a load held for a set time. */
      R held(Held held);

      /** Visits a load held to failure. */
      R toFailure(ToFailure failure);

      /** Visits repeated all-out holds. */
      R series(Series series);
    }
  }

  /**
   * The greatest load held for a set time.
   *
   * @param hold how long, above 0 s
   * @param load total load, above 0 kg
   */
  public record Held(Duration hold, Load load) implements Result {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the hold is not above 0 s and up to 3600 s, or the load
     *     not above 0 kg and up to 1000 kg
     */
    public Held {
      Objects.requireNonNull(hold, "hold");
      Objects.requireNonNull(load, "load");
      Range.HOLD.check(hold);
      Range.LOAD.check(load);
    }

    @Override
    public Duration time() {
      return hold;
    }

    @Override
    public Load greatest() {
      return load;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.held(this);
    }
  }

  /**
   * A load held until it could be held no longer.
   *
   * @param load total load, above 0 kg
   * @param lasting how long, above 0 s
   */
  public record ToFailure(Load load, Duration lasting) implements Result {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the load is not above 0 kg and up to 1000 kg, or the time
     *     not above 0 s and up to 2 h
     */
    public ToFailure {
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(lasting, "lasting");
      Range.LOAD.check(load);
      Range.FAILURE.check(lasting);
    }

    @Override
    public Duration time() {
      return lasting;
    }

    @Override
    public Load greatest() {
      return load;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.toFailure(this);
    }
  }

  /**
   * Repeated all-out holds.
   *
   * @param work each hold
   * @param rest between holds
   * @param means mean load of each hold, in order
   */
  public record Series(Duration work, Duration rest, List<Load> means) implements Result {
    /**
     * Copies the means and checks the range.
     *
     * @throws IllegalArgumentException if a hold is not above 0 s and up to 3600 s, a rest not 0 s
     *     to a day, a mean not above 0 kg and up to 1000 kg, or there are not 1 to 200 means
     */
    public Series {
      Objects.requireNonNull(work, "work");
      Objects.requireNonNull(rest, "rest");
      Objects.requireNonNull(means, "means");
      means = List.copyOf(means);
      Range.HOLD.check(work);
      Range.REST.check(rest);
      Range.REPETITIONS.check(means.size());
      means.forEach(Range.LOAD::check);
    }

    @Override
    public Duration time() {
      return work;
    }

    @Override
    public Load greatest() {
      return means.stream().max(Load::compareTo).orElse(Load.ZERO);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.series(this);
    }
  }
}
