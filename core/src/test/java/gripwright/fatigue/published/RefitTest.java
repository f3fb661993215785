package gripwright.fatigue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.fatigue.FatigueRates;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/** The refit for high loads, done again, with its error on what was held out. */
class RefitTest {

  private static final FatigueRates SET = FatigueRates.FINGERS_INTENSE;

  private static FatigueRates with(double[] logRates) {
    return new FatigueRates(
        "trial", Math.exp(logRates[0]), Math.exp(logRates[1]), 30, 1, 0, 1, "trial");
  }

  private static double rms(List<Observed> observed, FatigueRates rates) {
    return Math.sqrt(
        observed.stream().mapToDouble(o -> Math.pow(o.error(rates), 2)).average().orElseThrow());
  }

  private static List<Observed> observed(boolean fitted) {
    return Observed.all().stream().filter(o -> o.fitted() == fitted).toList();
  }

  private static List<Observed> heldOut(boolean maximal) {
    return observed(false).stream().filter(o -> o.maximal() == maximal).toList();
  }

  /** Least squares of logarithms, rest multiplier as published; rounded. */
  @Test
  void theFitReproducesTheRates() {
    double[] found =
        new SimplexOptimizer(new SimpleValueChecker(1e-12, 1e-14))
            .optimize(
                new MaxEval(2000),
                new ObjectiveFunction(point -> rms(observed(true), with(point))),
                GoalType.MINIMIZE,
                new InitialGuess(new double[] {Math.log(0.01), Math.log(0.001)}),
                new NelderMeadSimplex(2, 0.2))
            .getPoint();
    FatigueRates rates = with(found);
    assertEquals(rates.fatigue(), SET.fatigue(), 0.01 * rates.fatigue());
    assertEquals(rates.recovery(), SET.recovery(), 0.03 * rates.recovery());
  }

  @Test
  void theRefitIsCloserToHeldOutDataInItsRangeThanThePublishedSet() {
    List<Observed> inRange = heldOut(false);
    assertTrue(rms(observed(true), SET) < rms(observed(true), FatigueRates.HAND_2012));
    assertTrue(rms(inRange, SET) < rms(inRange, FatigueRates.HAND_2012));
    assertEquals(0.17, rms(observed(true), SET), 0.01);
    assertEquals(0.39, rms(inRange, SET), 0.01);
    assertEquals(0.61, rms(inRange, FatigueRates.HAND_2012), 0.01);
    assertTrue(SET.spread() >= Math.exp(Endurance.TO_95_PERCENT * rms(inRange, SET)));
  }

  /** The disagreement is reported on the page and not hidden by the fit. */
  @Test
  void maximalEffortsFallFasterThanInBothSets() {
    List<Observed> maximal = heldOut(true);
    assertEquals(0.75, rms(maximal, SET), 0.02);
    assertEquals(0.42, rms(maximal, FatigueRates.HAND_2012), 0.02);
  }

  @Test
  void writesTheTable() throws IOException {
    StringBuilder table =
        new StringBuilder(
            """
            | measured | source | used | published | `FINGERS_INTENSE` (interval) | error | `HAND_2012` |
            |---|---|---|---|---|---|---|
            """);
    for (Observed o : Observed.all()) {
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s (%s to %s) | %+.0f %% | %s |%n",
              o.what(),
              o.source(),
              o.fitted() ? "fitted" : "held out",
              number(o.value()),
              number(o.model().applyAsDouble(SET)),
              number(o.model().applyAsDouble(SET.pessimistic())),
              number(o.model().applyAsDouble(SET.optimistic())),
              100 * Math.expm1(o.error(SET)),
              number(o.model().applyAsDouble(FatigueRates.HAND_2012))));
    }
    ModelPage.check("fatigue.md", "refit", table.toString());
    table =
        new StringBuilder(
            """
            | root mean square of log(model / published) | `FINGERS_INTENSE` | `HAND_2012` |
            |---|---|---|
            """);
    table.append(errors("fitted", observed(true)));
    table.append(errors("held out, 60 to 80 %", heldOut(false)));
    table.append(errors("held out, maximal efforts, outside its range", heldOut(true)));
    ModelPage.check("fatigue.md", "errors", table.toString());
  }

  private static String errors(String which, List<Observed> observed) {
    return String.format(
        Locale.ROOT,
        "| %s (%d) | %.2f | %.2f |%n",
        which,
        observed.size(),
        rms(observed, SET),
        rms(observed, FatigueRates.HAND_2012));
  }

  private static String number(double value) {
    return Double.isInfinite(value)
        ? "no end"
        : String.format(Locale.ROOT, value < 2 ? "%.2f" : "%.1f", value);
  }
}
