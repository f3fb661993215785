package gripwright.compare;

import gripwright.compare.Comparison.Match;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Exercise;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * Makes an arm equal to another one by one parameter. The quantity is taken to rise or fall with
 * the parameter throughout, as all quantities that can be matched do. Stateless but for its inputs.
 */
final class Matching {

  private static final double TOLERANCE = 1e-9;
  private static final int STEPS = 200;

  private final Programs programs;
  private final FatigueScenario scenario;
  private final Person person;

  /**
   * @param person for whom it is solved
   */
  Matching(Programs programs, FatigueScenario scenario, Person person) {
    this.programs = programs;
    this.scenario = scenario;
    this.person = person;
  }

  /**
   * The result of a match.
   *
   * @param arm the changed arm; as written if it could not be matched
   * @param matched what was reached; empty if it could not be matched
   * @param findings why not, or what was left
   */
  record Result(Arm arm, Optional<ComparisonResult.Matched> matched, List<Finding> findings) {}

  /** A value of the parameter and the quantity that it gives. */
  private record Point(double value, double quantity) {}

  /**
   * Solves a match.
   *
   * @param arm the arm to change
   * @param target the quantity to reach
   * @param path place of the match
   */
  Result solve(Match match, Arm arm, double target, ModelPath path) {
    Exercise exercise = ((Arm.Trained) arm.content()).exercise();
    Map<String, Argument> all = exercise.protocol().parameters();
    Argument now = exercise.with().getOrDefault(match.by(), all.get(match.by()));
    if (now == null) {
      return refused(arm, idle(match, path));
    }
    return now.accept(
        new Argument.Visitor<>() {
          @Override
          public Result count(Argument.Count count) {
            return whole(match, arm, target, path);
          }

          @Override
          public Result time(Argument.Time time) {
            double most = isHold(exercise, match.by()) ? Range.HOLD.high() : Range.REST.high();
            return continuous(
                match,
                arm,
                target,
                path,
                new Scale(
                    1e-3,
                    most,
                    value -> Argument.of(Duration.ofNanos(Math.round(value * 1e9))),
                    "s"));
          }

          @Override
          public Result atLevel(Argument.AtLevel level) {
            return scale(level.level())
                .map(scale -> continuous(match, arm, target, path, scale))
                .orElseGet(() -> refused(arm, idle(match, path)));
          }
        });
  }

  /**
   * A parameter that is not a whole number.
   *
   * @param low its least value
   * @param high its greatest value
   * @param argument makes the argument of a value
   * @param unit of the values
   */
  private record Scale(
      double low, double high, java.util.function.DoubleFunction<Argument> argument, String unit) {}

  private static Optional<Scale> scale(Level level) {
    if (level instanceof Level.OfMax) {
      return Optional.of(new Scale(1e-4, 1, share -> Argument.of(new Level.OfMax(share)), "% max"));
    }
    if (level instanceof Level.OfTest) {
      return Optional.of(
          new Scale(1e-4, 1, share -> Argument.of(new Level.OfTest(share)), "% of test"));
    }
    return level instanceof Level.Total
        ? Optional.of(
            new Scale(
                1e-3,
                Range.LOAD.high(),
                load -> Argument.of(Level.total(Load.ofKilograms(load))),
                "kg"))
        : Optional.empty();
  }

  /** Returns whether a parameter is the time of a hold, which has a smaller range than a rest. */
  private static boolean isHold(Exercise exercise, String parameter) {
    try {
      exercise.with(parameter, Argument.of(Duration.ofSeconds((long) Range.HOLD.high() + 1)));
      return false;
    } catch (IllegalArgumentException tooLong) {
      return true;
    }
  }

  private Result whole(Match match, Arm arm, double target, ModelPath path) {
    int most = greatest(arm, match.by());
    double low = quantity(match, arm, Argument.of(1));
    double high = quantity(match, arm, Argument.of(most));
    if (isIdle(low, high)) {
      return refused(arm, idle(match, path));
    }
    int few = 1;
    int many = most;
    boolean rising = high > low;
    while (many - few > 1) {
      int middle = (few + many) >>> 1;
      boolean below = quantity(match, arm, Argument.of(middle)) <= target;
      if (below == rising) {
        few = middle;
      } else {
        many = middle;
      }
    }
    List<Point> near = new ArrayList<>();
    for (int value : Set.of(few, many)) {
      near.add(new Point(value, quantity(match, arm, Argument.of(value))));
    }
    near.sort(java.util.Comparator.comparingDouble(Point::value));
    Point best = near.get(0);
    for (Point point : near) {
      if (Math.abs(point.quantity() - target) < Math.abs(best.quantity() - target)) {
        best = point;
      }
    }
    if (target < Math.min(low, high) * (1 - TOLERANCE)
        || target > Math.max(low, high) * (1 + TOLERANCE)) {
      return refused(arm, outOfReach(match, path, target, low, high));
    }
    double residual = best.quantity() / target - 1;
    Result result =
        matched(
            arm,
            Argument.of((int) best.value()),
            new ComparisonResult.Matched(match, best.value(), "", target, rounded(residual)));
    if (match.within().isPresent()
        && Math.abs(residual) > match.within().getAsDouble() + TOLERANCE) {
      Point lower = near.get(0);
      Point higher = near.get(near.size() - 1);
      return new Result(
          result.arm(),
          result.matched(),
          List.of(
              Finding.error("compare.match-residual", path)
                  .with("quantity", match.quantity())
                  .with("arm", match.arm())
                  .with("to", match.to())
                  .with("by", match.by())
                  .with("low", (int) lower.value())
                  .with("lowResidual", percent(lower.quantity() / target - 1))
                  .with("high", (int) higher.value())
                  .with("highResidual", percent(higher.quantity() / target - 1))
                  .with("within", percent(match.within().getAsDouble()))));
    }
    return result;
  }

  /** Returns the greatest number of repeats for which the exercise is not too long. */
  private static int greatest(Arm arm, String parameter) {
    int most = (int) Range.REPEATS.high();
    while (most > 1) {
      try {
        Programs.with(arm, parameter, Argument.of(most));
        return most;
      } catch (IllegalArgumentException tooLong) {
        most /= 2;
      }
    }
    return 1;
  }

  private Result continuous(Match match, Arm arm, double target, ModelPath path, Scale scale) {
    double low = quantity(match, arm, scale.argument().apply(scale.low()));
    double high = quantity(match, arm, scale.argument().apply(scale.high()));
    if (isIdle(low, high)) {
      return refused(arm, idle(match, path));
    }
    if (!(target >= Math.min(low, high) * (1 - TOLERANCE)
        && target <= Math.max(low, high) * (1 + TOLERANCE))) {
      return refused(arm, outOfReach(match, path, target, low, high));
    }
    DoubleUnaryOperator excess =
        value ->
            (high > low ? 1 : -1) * (quantity(match, arm, scale.argument().apply(value)) - target);
    double few = scale.low();
    double many = scale.high();
    for (int i = 0; i < STEPS && many - few > TOLERANCE * many; i++) {
      double middle = (few + many) / 2;
      if (excess.applyAsDouble(middle) < 0) {
        few = middle;
      } else {
        many = middle;
      }
    }
    double value = (few + many) / 2;
    Argument argument = scale.argument().apply(value);
    double residual = quantity(match, arm, argument) / target - 1;
    double shown = scale.unit().startsWith("%") ? value * 100 : value;
    return matched(
        arm,
        argument,
        new ComparisonResult.Matched(match, shown, scale.unit(), target, rounded(residual)));
  }

  private static Result matched(Arm arm, Argument argument, ComparisonResult.Matched matched) {
    return new Result(
        Programs.with(arm, matched.match().by(), argument), Optional.of(matched), List.of());
  }

  private static double rounded(double residual) {
    return Math.abs(residual) < TOLERANCE ? 0 : residual;
  }

  private static boolean isIdle(double low, double high) {
    return Double.isNaN(low)
        || Double.isNaN(high)
        || Math.abs(high - low) <= TOLERANCE * Math.max(Math.abs(low), Math.abs(high));
  }

  private static Result refused(Arm arm, Finding finding) {
    return new Result(arm, Optional.empty(), List.of(finding));
  }

  private static Finding idle(Match match, ModelPath path) {
    return Finding.error("compare.match-idle", path)
        .with("quantity", match.quantity())
        .with("by", match.by())
        .with("arm", match.arm());
  }

  private static Finding outOfReach(
      Match match, ModelPath path, double target, double low, double high) {
    return Finding.error("compare.match-out-of-reach", path)
        .with("quantity", match.quantity())
        .with("by", match.by())
        .with("arm", match.arm())
        .with("target", plain(target))
        .with("low", plain(Math.min(low, high)))
        .with("high", plain(Math.max(low, high)));
  }

  private static String plain(double value) {
    return gripwright.quantity.Numbers.plain(value, 2);
  }

  private static String percent(double share) {
    return gripwright.quantity.Numbers.plain(share * 100, 2) + " %";
  }

  private double quantity(Match match, Arm arm, Argument value) {
    return quantity(match.quantity(), Programs.with(arm, match.by(), value));
  }

  /** Returns a quantity of an arm; NaN if it can't be given. */
  double quantity(Measure measure, Arm arm) {
    return programs
        .of(arm, ModelPath.ROOT)
        .map(program -> new Evaluation(program, scenario, Set.of(measure)).values(person))
        .map(values -> values[measure.ordinal()])
        .orElse(Double.NaN);
  }
}
