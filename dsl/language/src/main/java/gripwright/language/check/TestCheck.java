package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.TestResult;
import gripwright.quantity.Load;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest.Held;
import gripwright.strength.StrengthTest.Result;
import gripwright.strength.StrengthTest.Series;
import gripwright.strength.StrengthTest.ToFailure;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks what came of a test. */
final class TestCheck {

  private final Ledger ledger;
  private final Amounts amounts;

  TestCheck(Ledger ledger) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
  }

  Optional<Result> check(TestResult result) {
    if (result instanceof TestResult.HoldTest held) {
      Optional<Duration> hold = time(held.hold(), Slot.HOLD);
      Optional<Load> load = amounts.load(held.load(), Slot.LOAD);
      return hold.flatMap(time -> load.map(mass -> new Held(time, mass)));
    }
    if (result instanceof TestResult.FailureTest failure) {
      Optional<Load> load = amounts.load(failure.load(), Slot.LOAD);
      Optional<Duration> lasting = time(failure.lasting(), Slot.FAILURE);
      return load.flatMap(mass -> lasting.map(time -> new ToFailure(mass, time)));
    }
    return series((TestResult.SeriesTest) result);
  }

  /** Reads how long the load was held; advises where that tells nothing of strength. */
  private Optional<Duration> time(Amount written, Slot slot) {
    Optional<Duration> time = amounts.time(written, slot);
    time.filter(held -> !ForceTime.inRange(held.toNanos() / 1e9))
        .ifPresent(held -> ledger.advice(written, "value.test-time", "time", held));
    return time;
  }

  private Optional<Result> series(TestResult.SeriesTest series) {
    Optional<Integer> repetitions = amounts.count(series.repetitions(), Slot.REPETITIONS);
    Optional<Duration> work = time(series.work(), Slot.HOLD);
    Optional<Duration> rest = amounts.time(series.rest(), Slot.REST);
    List<Load> means = new ArrayList<>();
    for (Amount mean : series.means()) {
      amounts.load(mean, Slot.LOAD).ifPresent(means::add);
    }
    if (repetitions.isPresent() && repetitions.get() != series.means().size()) {
      ledger.error(
          series.repetitions(),
          "value.series",
          "repetitions",
          repetitions.get(),
          "means",
          series.means().size());
      return Optional.empty();
    }
    if (!ledger.sound()) {
      return Optional.empty();
    }
    return work.flatMap(time -> rest.map(pause -> new Series(time, pause, means)));
  }
}
