package gripwright.planning.placement;

import gripwright.history.TestMatch;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestCount;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A log as strength is estimated from it: where a planned test says that its best attempt or the
 * mean of its attempts counts, the attempts of a day are one test. Attempts that can't be compared,
 * such as holds of different times, count each.
 */
public final class CountedTests {

  private CountedTests() {}

  /** Returns the log with the attempts of each such test as one line. */
  public static Log of(Plan plan, Log log) {
    List<PlannedTest> counting =
        plan.retests().stream().filter(test -> test.counts().isPresent()).toList();
    if (counting.isEmpty()) {
      return log;
    }
    List<LogEntry.Tested> lines = log.of(LogEntry.Tested.class);
    Set<Integer> taken = new HashSet<>();
    List<LogEntry> counted = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      LogEntry.Tested line = lines.get(i);
      Optional<PlannedTest> of =
          counting.stream().filter(test -> isOf(plan, test, line)).findFirst();
      if (taken.contains(i) || of.isEmpty()) {
        continue;
      }
      List<Integer> attempts =
          IntStream.range(i, lines.size()).filter(n -> isSame(line, lines.get(n))).boxed().toList();
      List<StrengthTest.Result> results =
          attempts.stream().map(n -> lines.get(n).test().result()).toList();
      Optional<StrengthTest.Result> one = one(results, of.get().counts().orElseThrow());
      if (attempts.size() > 1 && one.isPresent()) {
        taken.addAll(attempts);
        counted.add(
            new LogEntry.Tested(
                new StrengthTest(
                    line.date(),
                    line.test().setup(),
                    one.get(),
                    attempts.stream().allMatch(n -> lines.get(n).test().inForce())),
                line.note()));
      }
    }
    if (taken.isEmpty()) {
      return log;
    }
    Set<LogEntry> dropped = new HashSet<>();
    taken.forEach(n -> dropped.add(lines.get(n)));
    log.entries().stream().filter(entry -> !dropped.contains(entry)).forEach(counted::add);
    return new Log(log.athlete(), counted);
  }

  private static boolean isOf(Plan plan, PlannedTest test, LogEntry.Tested line) {
    return test.setups().stream().anyMatch(line::isOf)
        && TestMatch.isOf(test.kind(), line.test().result())
        && isNear(plan, test, line.date());
  }

  /** Returns whether a day is in a week with the test, or at most three days away from one. */
  private static boolean isNear(Plan plan, PlannedTest test, LocalDate day) {
    int weeks = plan.weeks();
    return IntStream.of(-LoggedRetests.DAYS, 0, LoggedRetests.DAYS)
        .map(days -> plan.weekOf(day.plusDays(days)))
        .anyMatch(week -> test.isDueIn(week, weeks));
  }

  private static boolean isSame(LogEntry.Tested one, LogEntry.Tested other) {
    return one.date().equals(other.date())
        && other.isOf(one.test().setup())
        && one.test().result().getClass().equals(other.test().result().getClass());
  }

  private static Optional<StrengthTest.Result> one(
      List<StrengthTest.Result> results, TestCount count) {
    return results
        .get(0)
        .accept(
            new StrengthTest.Result.Visitor<>() {
              @Override
              public Optional<StrengthTest.Result> held(StrengthTest.Held first) {
                List<StrengthTest.Held> all = cast(results, StrengthTest.Held.class);
                double kilograms =
                    number(count, all.stream().map(h -> h.load().kilograms()).toList());
                return all.stream().allMatch(h -> h.hold().equals(first.hold()))
                    ? Optional.of(new StrengthTest.Held(first.hold(), Load.ofKilograms(kilograms)))
                    : Optional.empty();
              }

              @Override
              public Optional<StrengthTest.Result> toFailure(StrengthTest.ToFailure first) {
                List<StrengthTest.ToFailure> all = cast(results, StrengthTest.ToFailure.class);
                double nanos =
                    number(count, all.stream().map(f -> (double) f.lasting().toNanos()).toList());
                return all.stream().allMatch(f -> f.load().equals(first.load()))
                    ? Optional.of(
                        new StrengthTest.ToFailure(
                            first.load(), Duration.ofNanos(Math.round(nanos))))
                    : Optional.empty();
              }

              @Override
              public Optional<StrengthTest.Result> series(StrengthTest.Series first) {
                return count == TestCount.BEST
                    ? cast(results, StrengthTest.Series.class).stream()
                        .max(Comparator.comparingDouble(CountedTests::sum))
                        .map(StrengthTest.Result.class::cast)
                    : meanSeries(first, cast(results, StrengthTest.Series.class));
              }
            });
  }

  private static Optional<StrengthTest.Result> meanSeries(
      StrengthTest.Series first, List<StrengthTest.Series> all) {
    boolean comparable =
        all.stream()
            .allMatch(
                s ->
                    s.work().equals(first.work())
                        && s.rest().equals(first.rest())
                        && s.means().size() == first.means().size());
    if (!comparable) {
      return Optional.empty();
    }
    List<Load> means = new ArrayList<>();
    for (int i = 0; i < first.means().size(); i++) {
      int hold = i;
      means.add(
          Load.ofKilograms(
              number(
                  TestCount.MEAN,
                  all.stream().map(s -> s.means().get(hold).kilograms()).toList())));
    }
    return Optional.of(new StrengthTest.Series(first.work(), first.rest(), means));
  }

  private static double sum(StrengthTest.Series series) {
    return series.means().stream().mapToDouble(Load::kilograms).sum();
  }

  private static double number(TestCount count, List<Double> numbers) {
    return count == TestCount.BEST
        ? numbers.stream().mapToDouble(Double::doubleValue).max().orElseThrow()
        : numbers.stream().mapToDouble(Double::doubleValue).sum() / numbers.size();
  }

  private static <T> List<T> cast(List<StrengthTest.Result> results, Class<T> kind) {
    return results.stream().map(kind::cast).toList();
  }
}
