package gripwright.strength;

import static gripwright.strength.Trials.DAY;
import static gripwright.strength.Trials.map;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import gripwright.strength.StrengthMap.Estimate;
import gripwright.strength.StrengthMap.Weight;
import gripwright.strength.Trials.Tests;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** Properties of the strength map for any tests. */
class StrengthMapProperties {

  private static Estimate estimate(List<StrengthTest> tests, Setup setup) {
    return map(tests).maximum(setup).orElseThrow();
  }

  private static List<StrengthTest> with(Tests tests, StrengthTest more) {
    List<StrengthTest> all = new ArrayList<>(tests.list());
    all.add(more);
    return all;
  }

  @Property
  void aFurtherTestNeverWidensAnInterval(
      @ForAll Tests tests, @ForAll StrengthTest more, @ForAll Setup setup) {
    ForceTime before = map(tests.list()).curve(setup).orElseThrow();
    ForceTime after = map(with(tests, more)).curve(setup).orElseThrow();
    for (double seconds : new double[] {2, 7, 45, 600}) {
      assertTrue(
          after.load(seconds).spread() <= before.load(seconds).spread() + 1e-9,
          () -> seconds + " s: " + before.load(seconds) + " then " + after.load(seconds));
    }
  }

  @Property
  void aTestThatConfirmsTheBestEstimateNeverLowersTheLoad(
      @ForAll Tests tests, @ForAll Setup setup, @ForAll @DoubleRange(min = 2, max = 600) double s) {
    double seconds = Math.round(s * 1000) / 1000.0;
    LoadEstimate before = map(tests.list()).curve(setup).orElseThrow().load(seconds);
    Assume.that(Range.LOAD.contains(before.best().kilograms()));
    StrengthTest confirms = Trials.held(setup, seconds, before.best().kilograms(), DAY);
    LoadEstimate after = map(with(tests, confirms)).curve(setup).orElseThrow().load(seconds);
    assertEquals(1, after.best().kilograms() / before.best().kilograms(), 1e-6);
    assertTrue(after.low().kilograms() >= before.low().kilograms() * (1 - 1e-6));
  }

  @Property
  void scalingAllTestsScalesAllLoads(
      @ForAll Tests tests,
      @ForAll Setup setup,
      @ForAll @DoubleRange(min = 0.1, max = 3) double factor,
      @ForAll @DoubleRange(min = 2, max = 600) double seconds) {
    List<StrengthTest> scaled =
        tests.list().stream()
            .map(
                test ->
                    new StrengthTest(
                        test.date(),
                        test.setup(),
                        scaled((StrengthTest.Held) test.result(), factor)))
            .toList();
    LoadEstimate one = map(tests.list()).curve(setup).orElseThrow().load(seconds);
    LoadEstimate other = map(scaled).curve(setup).orElseThrow().load(seconds);
    assertEquals(factor, other.best().kilograms() / one.best().kilograms(), 1e-8 * factor);
    assertEquals(factor, other.low().kilograms() / one.low().kilograms(), 1e-8 * factor);
  }

  private static StrengthTest.Held scaled(StrengthTest.Held held, double factor) {
    return new StrengthTest.Held(held.hold(), held.load().times(factor));
  }

  @Property
  void theOrderOfTestsDoesNotMatter(
      @ForAll Tests tests, @ForAll Setup setup, @ForAll Random random) {
    List<StrengthTest> shuffled = new ArrayList<>(tests.list());
    Collections.shuffle(shuffled, random);
    assertEquals(estimate(tests.list(), setup).load(), estimate(shuffled, setup).load());
  }

  @Property
  void noCurveRisesWithTime(
      @ForAll Tests tests,
      @ForAll Setup setup,
      @ForAll @DoubleRange(min = 2, max = 600) double one,
      @ForAll @DoubleRange(min = 2, max = 600) double other) {
    ForceTime curve = map(tests.list()).curve(setup).orElseThrow();
    LoadEstimate shorter = curve.load(Math.min(one, other));
    LoadEstimate longer = curve.load(Math.max(one, other));
    assertTrue(shorter.best().kilograms() >= longer.best().kilograms() * (1 - 1e-12));
    assertTrue(shorter.low().kilograms() >= longer.low().kilograms() * (1 - 1e-12));
    assertTrue(shorter.high().kilograms() >= longer.high().kilograms() * (1 - 1e-12));
  }

  @Property
  void olderTestsNeverCountForMore(@ForAll Tests tests, @ForAll Setup setup) {
    List<StrengthTest> older =
        tests.list().stream()
            .map(t -> new StrengthTest(t.date().minusDays(100), t.setup(), t.result()))
            .toList();
    assertTrue(
        estimate(older, setup).load().spread() > estimate(tests.list(), setup).load().spread());
  }

  @Property
  void sharesSumToOneAndShowHowLoadsChange(@ForAll Tests tests, @ForAll Setup setup) {
    List<Weight> basis = estimate(tests.list(), setup).basis();
    assertEquals(1, basis.stream().mapToDouble(Weight::share).sum(), 1e-9);
    assertEquals(tests.list().size(), basis.size());
  }

  @Property
  void withoutContradictionADeeperEdgeNeverHasALowerLoad(
      @ForAll StrengthTest test,
      @ForAll Setup setup,
      @ForAll @DoubleRange(min = 5, max = 60) double one,
      @ForAll @DoubleRange(min = 5, max = 60) double other) {
    StrengthMap map = map(test);
    double shallow =
        map.maximum(setup.withEdge(Length.ofMillimetres(Math.min(one, other))))
            .orElseThrow()
            .load()
            .best()
            .kilograms();
    double deep =
        map.maximum(setup.withEdge(Length.ofMillimetres(Math.max(one, other))))
            .orElseThrow()
            .load()
            .best()
            .kilograms();
    assertTrue(deep >= shallow * (1 - 1e-12), deep + " after " + shallow);
  }

  @Property
  void covariancesArePositiveSemiDefinite(@ForAll @Size(min = 1, max = 12) List<Setup> setups) {
    assertPositive(setups);
  }

  /** Many similar postures reveal a falloff that is not positive semi-definite. */
  @Property(tries = 100)
  void covariancesOfNearPosturesArePositiveSemiDefinite(
      @ForAll @Size(min = 20, max = 30) List<@IntRange(min = 0, max = 115) Integer> flexions,
      @ForAll @IntRange(min = 1, max = 15) int bits) {
    assertPositive(flexions.stream().map(f -> Trials.on(Trials.grip(bits, f), 20)).toList());
  }

  private static void assertPositive(List<Setup> setups) {
    List<Place> places = setups.stream().map(s -> Place.of(s, Trials::posture)).toList();
    RealMatrix matrix = MatrixUtils.createRealMatrix(places.size(), places.size());
    for (int i = 0; i < places.size(); i++) {
      for (int j = 0; j < places.size(); j++) {
        matrix.setEntry(i, j, places.get(i).covariance(places.get(j)));
      }
    }
    for (double value : new EigenDecompositionSymmetric(matrix).getEigenvalues()) {
      assertTrue(value >= -1e-12, () -> "eigenvalue " + value);
    }
  }
}
