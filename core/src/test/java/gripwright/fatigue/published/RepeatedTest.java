package gripwright.fatigue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.FatigueSet;
import gripwright.fatigue.PoolRates;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Test;

/** Repeated and all-out holds: two pools and three compartments beside what was published. */
class RepeatedTest {

  private static final PoolRates SET = PoolRates.SHORT_RESTS;

  private static List<Repeated> ten() {
    return Repeated.all().stream().filter(Repeated::fitted).toList();
  }

  private static Repeated row(String id) {
    return Repeated.all().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static double rms(List<Repeated> rows, FatigueSet set) {
    return Math.sqrt(rows.stream().mapToDouble(r -> Math.pow(r.error(set), 2)).average().orElse(0));
  }

  /** Arithmetic on critical force: 10.9, 14.7 and 22.4. */
  @Test
  void criticalForceGivesTheRepetitions() {
    assertEquals(10.88, row("giles19.80").value(), 0.005);
    assertEquals(14.63, row("giles19.70").value(), 0.005);
    assertEquals(22.33, row("giles19.60").value(), 0.005);
  }

  @Test
  void twoPoolsGiveTheRepetitionsOfSevenAndThreeSecondsWithinTheirSpread() {
    assertEquals(7.84, row("giles19.80").model().applyAsDouble(SET), 0.01);
    assertEquals(16.10, row("giles19.70").model().applyAsDouble(SET), 0.01);
    assertEquals(27.67, row("giles19.60").model().applyAsDouble(SET), 0.01);
    for (String id : List.of("giles19.80", "giles19.70", "giles19.60")) {
      assertTrue(row(id).inside(SET), id);
    }
    assertEquals(
        List.of("giles19.80"),
        List.of("giles19.80", "giles19.70", "giles19.60").stream()
            .filter(id -> !row(id).inside(FatigueRates.FINGERS_INTENSE))
            .toList());
  }

  /** What is missed is listed, so that it can't grow unseen. */
  @Test
  void theseRowsAreMissedAndNoOthers() {
    assertEquals(
        "vigouroux06.others cf.share int.grip.fatigueindex nolan20.aerobic",
        Repeated.all().stream()
            .filter(row -> !row.inside(SET))
            .map(Repeated::id)
            .collect(Collectors.joining(" ")));
  }

  /** The spread covers all rows, so that the optimistic and pessimistic ends mean something. */
  @Test
  void theIntervalCoversTheScatter() {
    assertTrue(SET.spread() >= Math.exp(Endurance.TO_95_PERCENT * rms(Repeated.all(), SET)));
  }

  @Test
  void twoPoolsAreCloserThanTheBestThreeCompartments() {
    assertEquals(10, ten().size());
    assertEquals(0.23, rms(ten(), SET), 0.01);
    assertEquals(0.33, rms(ten(), bestCompartments()), 0.01);
  }

  /** The best of any F, R and r. */
  private static FatigueRates bestCompartments() {
    double[] found =
        new SimplexOptimizer(new SimpleValueChecker(1e-7, 1e-8))
            .optimize(
                new MaxEval(600),
                new ObjectiveFunction(logs -> rms(ten(), compartments(logs))),
                GoalType.MINIMIZE,
                new InitialGuess(new double[] {Math.log(0.006), Math.log(0.0002), Math.log(30)}),
                new NelderMeadSimplex(3, 0.2))
            .getPoint();
    return compartments(found);
  }

  private static FatigueRates compartments(double[] logs) {
    double recovery = Math.min(0.02, Math.exp(logs[1]));
    double multiplier = Math.min(1 / recovery, Math.max(1, Math.exp(logs[2])));
    return new FatigueRates(
        "trial", Math.min(1, Math.exp(logs[0])), recovery, multiplier, 1, 0, 1, "trial");
  }

  @Test
  void writesTheTable() throws IOException {
    StringBuilder table =
        new StringBuilder(
            """
            | measured | source | published (90 %) | `SHORT_RESTS` | ratio | inside | `FINGERS_INTENSE` | `HAND_2012` |
            |---|---|---|---|---|---|---|---|
            """);
    for (Repeated row : Repeated.all()) {
      double model = row.model().applyAsDouble(SET);
      table.append(
          String.format(
              Locale.ROOT,
              "| %s%s | %s | %s (%s to %s) | %s | %.2f | %s | %s | %s |%n",
              row.what(),
              row.fitted() ? "*" : "",
              row.source(),
              number(row.value()),
              number(row.low()),
              number(row.high()),
              number(model),
              model / row.value(),
              row.inside(SET) ? "yes" : "**no**",
              number(row.model().applyAsDouble(FatigueRates.FINGERS_INTENSE)),
              number(row.model().applyAsDouble(FatigueRates.HAND_2012))));
    }
    ModelPage.check("fatigue.md", "repeated", table.toString());
    ModelPage.check(
        "fatigue.md",
        "repeated errors",
        """
        | root mean square of log(model / published) | `SHORT_RESTS` | `FINGERS_INTENSE` | `HAND_2012` |
        |---|---|---|---|
        """
            + errors("ten rows marked *", ten())
            + errors("all rows", Repeated.all()));
  }

  private static String errors(String which, List<Repeated> rows) {
    return String.format(
        Locale.ROOT,
        "| %s | %.2f | %.2f | %s |%n",
        which,
        rms(rows, SET),
        rms(rows, FatigueRates.FINGERS_INTENSE),
        number(rms(rows, FatigueRates.HAND_2012)));
  }

  private static String number(double value) {
    return Double.isInfinite(value)
        ? "no end"
        : String.format(Locale.ROOT, value < 2 ? "%.2f" : "%.1f", value);
  }
}
