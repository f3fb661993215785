package gripwright.strength;

import static gripwright.strength.Trials.DAY;
import static gripwright.strength.Trials.grip;
import static gripwright.strength.Trials.held;
import static gripwright.strength.Trials.on;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.strength.Trials.Tests;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

class StrengthCourseTest {

  private static final Setup FOUR = on(grip(0b1111, 90), 20);
  private static final Setup OPEN = on(grip(0b1111, 30), 20);

  private static StrengthCourse course(List<StrengthTest> tests, List<CompletedHold> holds) {
    return StrengthCourse.of(tests, holds, Trials::posture, DAY);
  }

  private static CompletedHold hold(Setup setup, double kilograms, LocalDate day) {
    return new CompletedHold(day, setup, Duration.ofSeconds(7), Load.ofKilograms(kilograms));
  }

  /** Tests of 7 s, four weeks apart, the last on the day. */
  private static List<StrengthTest> fourWeeksApart(double... kilograms) {
    List<StrengthTest> tests = new ArrayList<>();
    for (int i = 0; i < kilograms.length; i++) {
      tests.add(held(FOUR, 7, kilograms[i], DAY.minusDays(28L * (kilograms.length - 1 - i))));
    }
    return tests;
  }

  private static StrengthChange change(List<StrengthTest> tests) {
    return course(tests, List.of()).change(FOUR, tests.get(0).date(), DAY).orElseThrow();
  }

  @Example
  void sixRisingTestsAreProgress() {
    StrengthChange change = change(fourWeeksApart(100, 102, 105, 107, 109, 112));
    assertEquals(StrengthChange.Verdict.HIGHER, change.verdict());
    assertEquals(10.5, change.percent(), 1);
    assertTrue(change.lowPercent() > 3 && change.highPercent() < 18, change::toString);
    assertTrue(change.probabilityOfRise() > 0.98, change::toString);
    StrengthChange fall = change(fourWeeksApart(112, 109, 107, 105, 102, 100));
    assertEquals(StrengthChange.Verdict.LOWER, fall.verdict());
    assertEquals(change.mean(), -fall.mean(), 1e-9);
    assertEquals(change.probability(), fall.probability(), 1e-9);
  }

  @Example
  void equalTestsAreNoChange() {
    StrengthChange change = change(fourWeeksApart(100, 100, 100));
    assertEquals(0, change.mean(), 1e-9);
    assertEquals(0.5, change.probability(), 1e-6);
    assertEquals(StrengthChange.Verdict.OPEN, change.verdict());
  }

  /** By hand: the prior variance is the drift, and the difference of two tests has both noises. */
  @Example
  void twoTestsHaveAClosedForm() {
    StrengthChange change = change(fourWeeksApart(100, 110));
    double drift = 0.04 * 0.04 * 28 / 30.4375;
    double noise = 2 * 0.028 * 0.028;
    assertEquals(Math.log(1.1) * drift / (drift + noise), change.mean(), 1e-9);
    assertEquals(Math.sqrt(drift * noise / (drift + noise)), change.spread(), 1e-9);
  }

  /** A random walk by weighted least squares: one row a test, one row a step between two. */
  @Example
  void allTestsTogetherAreWeightedLeastSquares() {
    double[] kilograms = {100, 102, 105, 107, 109, 112};
    int n = kilograms.length;
    RealMatrix design = MatrixUtils.createRealMatrix(2 * n - 1, n);
    RealVector target = new ArrayRealVector(2 * n - 1);
    double[] roots = new double[2 * n - 1];
    for (int i = 0; i < n; i++) {
      design.setEntry(i, i, 1);
      target.setEntry(i, Math.log(kilograms[i]));
      roots[i] = 1 / 0.028;
      if (i > 0) {
        design.setEntry(n + i - 1, i, 1);
        design.setEntry(n + i - 1, i - 1, -1);
        roots[n + i - 1] = 1 / (0.04 * Math.sqrt(28 / 30.4375));
      }
    }
    RealMatrix weighted = new DiagonalMatrix(roots).multiply(design);
    RealVector solved =
        new QRDecomposition(weighted).getSolver().solve(new DiagonalMatrix(roots).operate(target));
    RealMatrix covariance =
        new LUDecomposition(weighted.transposeMultiply(weighted)).getSolver().getInverse();
    StrengthChange change = change(fourWeeksApart(kilograms));
    assertEquals(solved.getEntry(n - 1) - solved.getEntry(0), change.mean(), 1e-9);
    double variance =
        covariance.getEntry(0, 0)
            + covariance.getEntry(n - 1, n - 1)
            - 2 * covariance.getEntry(0, n - 1);
    assertEquals(Math.sqrt(variance), change.spread(), 1e-9);
  }

  @Example
  void testsOfAnotherGripCountForLess() {
    List<StrengthTest> tests = fourWeeksApart(80, 80);
    double alone = change(tests).mean();
    tests.add(held(OPEN, 7, 70, DAY.minusDays(28)));
    tests.add(held(OPEN, 7, 80, DAY));
    StrengthCourse both = course(tests, List.of());
    double four = both.change(FOUR, DAY.minusDays(28), DAY).orElseThrow().mean();
    double open = both.change(OPEN, DAY.minusDays(28), DAY).orElseThrow().mean();
    assertEquals(0, alone, 1e-9);
    assertTrue(four > 0 && four < 0.5 * open, four + " and " + open);
  }

  /** With one bound the moments are exact: by the trapezoidal rule over the same density. */
  @Property(tries = 50)
  void oneCompletedHoldIsExact(@ForAll @DoubleRange(min = 50, max = 95) double kilograms) {
    assertMoments(List.of(kilograms), 1e-6);
  }

  /**
   * With several bounds on one number the density is still one-dimensional: the mean is met to 1 %,
   * the spread to an eighth of it, since overlapping bounds are not independent.
   */
  @Example
  void severalBoundsAreNearlyExact() {
    double[] logs = {Math.log(70), Math.log(74), Math.log(78)};
    double variance = 0.04;
    RealMatrix prior = MatrixUtils.createRealMatrix(3, 3).scalarAdd(variance);
    double[] means = {Math.log(80), Math.log(80), Math.log(80)};
    double noise = 0.028 * 0.028;
    LowerBounds.Effect effect =
        new LowerBounds(means, prior, logs, new double[] {noise, noise, noise})
            .effectOn(new double[] {variance, variance, variance});
    double[] exact = moments(means[0], Math.sqrt(variance), List.of(70.0, 74.0, 78.0));
    assertEquals(exact[0], means[0] + effect.mean(), 0.01);
    assertEquals(exact[1], Math.sqrt(variance + effect.variance()), exact[1] / 8);
  }

  /** Repeating a hold shows nothing new. */
  @Example
  void ofEqualHoldsInFourWeeksOneCounts() {
    List<StrengthTest> tests = List.of(held(FOUR, 7, 80, DAY));
    LoadEstimate once = course(tests, List.of(hold(OPEN, 75, DAY))).maximum(OPEN).orElseThrow();
    List<CompletedHold> often = new ArrayList<>();
    for (int i = 0; i < 27; i++) {
      often.add(hold(OPEN, 75 - i % 3, DAY.minusDays(i)));
    }
    assertEquals(once, course(tests, often).maximum(OPEN).orElseThrow());
  }

  private static void assertMoments(List<Double> kilograms, double tolerance) {
    List<StrengthTest> tests = List.of(held(FOUR, 7, 80, DAY));
    LoadEstimate prior = Trials.map(tests).maximum(OPEN).orElseThrow().load();
    LoadEstimate effect =
        course(tests, kilograms.stream().map(kg -> hold(OPEN, kg, DAY)).toList())
            .maximum(OPEN)
            .orElseThrow();
    double centre = Math.log(prior.best().kilograms());
    double[] exact = moments(centre, prior.spread(), kilograms);
    assertEquals(exact[0], Math.log(effect.best().kilograms()), tolerance);
    assertEquals(exact[1], effect.spread(), tolerance);
  }

  /** Mean and spread of a normal number that with each noise was at least a load. */
  private static double[] moments(double centre, double spread, List<Double> kilograms) {
    NormalDistribution normal = new NormalDistribution(centre, spread);
    DoubleUnaryOperator density =
        level -> {
          double weight = normal.density(level);
          for (double kg : kilograms) {
            weight *= new NormalDistribution(Math.log(kg), 0.028).cumulativeProbability(level);
          }
          return weight;
        };
    double[] moments = new double[3];
    double step = spread / 500;
    for (int i = -4000; i <= 4000; i++) {
      double level = centre + i * step;
      double weight = density.applyAsDouble(level);
      moments[0] += weight;
      moments[1] += weight * level;
      moments[2] += weight * level * level;
    }
    double mean = moments[1] / moments[0];
    return new double[] {mean, Math.sqrt(moments[2] / moments[0] - mean * mean)};
  }

  @Property(tries = 200)
  void withoutHoldsTheMaximumIsThatOfTheMap(@ForAll Tests tests, @ForAll Setup setup) {
    LoadEstimate map = Trials.map(tests.list()).maximum(setup).orElseThrow().load();
    LoadEstimate course = course(tests.list(), List.of()).maximum(setup).orElseThrow();
    assertEquals(Math.log(map.best().kilograms()), Math.log(course.best().kilograms()), 1e-9);
    assertEquals(map.spread(), course.spread(), 1e-9);
  }

  @Property(tries = 200)
  void aCompletedHoldNeverLowersOrWidensItsOwnSetup(
      @ForAll Tests tests,
      @ForAll Setup setup,
      @ForAll @DoubleRange(min = 5, max = 150) double kilograms,
      @ForAll @IntRange(min = 0, max = 400) int days) {
    LoadEstimate before = course(tests.list(), List.of()).maximum(setup).orElseThrow();
    LoadEstimate after =
        course(tests.list(), List.of(hold(setup, kilograms, DAY.minusDays(days))))
            .maximum(setup)
            .orElseThrow();
    assertTrue(after.best().kilograms() >= before.best().kilograms() * (1 - 1e-9));
    assertTrue(after.spread() <= before.spread() + 1e-9);
  }

  @Example
  void heavyHoldsNarrowAnUntestedGripAndLightOnesDoNot() {
    List<StrengthTest> tests = List.of(held(FOUR, 7, 80, DAY));
    LoadEstimate without = course(tests, List.of()).maximum(OPEN).orElseThrow();
    LoadEstimate light = course(tests, List.of(hold(OPEN, 40, DAY))).maximum(OPEN).orElseThrow();
    LoadEstimate heavy = course(tests, List.of(hold(OPEN, 80, DAY))).maximum(OPEN).orElseThrow();
    assertEquals(without.low().kilograms(), light.low().kilograms(), 0.3);
    assertTrue(heavy.low().kilograms() > without.low().kilograms() + 5, heavy::toString);
    assertTrue(heavy.spread() < 0.75 * without.spread(), heavy::toString);
  }

  @Example
  void aHoldThatIsFarAboveTheTestsIsAMistakeAndIsLeftOut() {
    List<StrengthTest> tests = List.of(held(FOUR, 7, 80, DAY));
    assertTrue(!course(tests, List.of(hold(OPEN, 300, DAY))).hasHolds(OPEN));
    assertTrue(course(tests, List.of(hold(OPEN, 80, DAY))).hasHolds(OPEN));
  }

  @Example
  void withoutATestNothingIsKnownAndDaysHaveAnOrder() {
    StrengthCourse course = course(List.of(), List.of(hold(FOUR, 80, DAY)));
    assertEquals(Optional.empty(), course.maximum(FOUR));
    assertEquals(Optional.empty(), course.change(FOUR, DAY.minusDays(1), DAY));
    assertThrows(IllegalArgumentException.class, () -> course.change(FOUR, DAY, DAY));
    assertThrows(IllegalArgumentException.class, () -> course.change(FOUR, DAY, DAY.plusDays(1)));
  }
}
