package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.TestResult;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest.Held;
import gripwright.strength.StrengthTest.Result;
import gripwright.strength.StrengthTest.Series;
import gripwright.strength.StrengthTest.ToFailure;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks the result of a test. */
final class TestCheck implements TestResult.Visitor<Optional<Result>> {

  private final Diagnostics diagnostics;
  private final Amounts amounts;

  TestCheck(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
  }

  @Override
  public Optional<Result> holdTest(TestResult.HoldTest held) {
    Optional<Duration> hold = time(held.hold(), Slot.HOLD);
    Optional<Load> load = held.force() ? force(held.load()) : amounts.load(held.load(), Slot.LOAD);
    return hold.flatMap(time -> load.map(mass -> new Held(time, mass)));
  }

  @Override
  public Optional<Result> failureTest(TestResult.FailureTest failure) {
    Optional<Load> load = load(failure.load());
    Optional<Duration> lasting = time(failure.lasting(), Slot.FAILURE);
    return load.flatMap(mass -> lasting.map(time -> new ToFailure(mass, time)));
  }

  /** Returns whether all that a test measured is written in N. */
  static boolean isInForce(TestResult result) {
    return result.accept(
        new TestResult.Visitor<>() {
          @Override
          public Boolean holdTest(TestResult.HoldTest held) {
            return held.force();
          }

          @Override
          public Boolean failureTest(TestResult.FailureTest failure) {
            return failure.load().unit() == Unit.NEWTON;
          }

          @Override
          public Boolean seriesTest(TestResult.SeriesTest series) {
            return !series.means().isEmpty()
                && series.means().stream().allMatch(mean -> mean.unit() == Unit.NEWTON);
          }
        });
  }

  /** Returns a load, or the load that a force in newtons is the weight of. */
  private Optional<Load> load(Amount written) {
    return written.unit() == Unit.NEWTON ? force(written) : amounts.load(written, Slot.LOAD);
  }

  private Optional<Load> force(Amount written) {
    return amounts
        .base(written, Slot.FORCE)
        .map(newtons -> Load.ofKilograms(newtons / Unit.NEWTONS_PER_KILOGRAM));
  }

  /**
   * Returns the hold time of a test; advises if the test can't be used as a measure of strength.
   */
  private Optional<Duration> time(Amount written, Slot slot) {
    Optional<Duration> time = amounts.time(written, slot);
    time.filter(held -> !ForceTime.inRange(held.toNanos() / 1e9))
        .ifPresent(held -> diagnostics.advice(written, "value.test-time", "time", held));
    return time;
  }

  @Override
  public Optional<Result> seriesTest(TestResult.SeriesTest series) {
    Optional<Integer> repetitions = amounts.count(series.repetitions(), Slot.REPETITIONS);
    Optional<Duration> work = time(series.work(), Slot.HOLD);
    Optional<Duration> rest = amounts.time(series.rest(), Slot.REST);
    List<Load> means = new ArrayList<>();
    for (Amount mean : series.means()) {
      load(mean).ifPresent(means::add);
    }
    if (repetitions.isPresent() && repetitions.get() != series.means().size()) {
      diagnostics.error(
          series.repetitions(),
          "value.series",
          "repetitions",
          repetitions.get(),
          "means",
          series.means().size());
      return Optional.empty();
    }
    if (!diagnostics.sound()) {
      return Optional.empty();
    }
    return work.flatMap(time -> rest.map(pause -> new Series(time, pause, means)));
  }
}
