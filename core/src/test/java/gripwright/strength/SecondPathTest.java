package gripwright.strength;

import static gripwright.strength.Trials.DAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.strength.Trials.Tests;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The same numbers by other algebra: the strength map's posterior by solving one system for all
 * unknowns and Lagrange's multiplier, with LU instead of Cholesky and with independently written
 * covariances; a curve's fit as a weighted least-squares problem in which the prior is one more
 * row.
 */
class SecondPathTest {

  private static final double[] SHARES = {0.25, 0.35, 0.25, 0.14};

  private static double similarity(Setup one, Setup other) {
    Posture here = Trials.posture(one);
    Posture there = Trials.posture(other);
    double common = 0;
    double own = 0;
    double others = 0;
    for (gripwright.hand.Finger finger : gripwright.hand.Finger.values()) {
      double share = SHARES[finger.ordinal()];
      boolean in = one.grip().fingers().has(finger);
      boolean out = other.grip().fingers().has(finger);
      own += in ? share : 0;
      others += out ? share : 0;
      if (in && out) {
        double off = here.flexions().get(finger).degrees() - there.flexions().get(finger).degrees();
        common += share * Math.exp(-off * off / (2 * 30 * 30));
      }
    }
    double depth = depth(one) - depth(other);
    return common / Math.sqrt(own * others) * Math.exp(-depth * depth / 2);
  }

  private static double covariance(Setup one, Setup other) {
    boolean single = one.grip().fingers().count() == 1 || other.grip().fingers().count() == 1;
    double views =
        single && !one.grip().fingers().equals(other.grip().fingers())
            ? 0
            : views(one, 1.8, -1, 0.288) / 2 * (views(other, 1.8, -1, 0.288) / 2);
    double shallow = 0.25 * Math.max(0, Math.log(10 / one.edge().millimetres()));
    shallow *= 0.25 * Math.max(0, Math.log(10 / other.edge().millimetres()));
    return 0.15 * 0.15 * similarity(one, other)
        + views
        + shallow
        + (one.grip().name().equals(other.grip().name()) ? 0.08 * 0.08 : 0)
        + 0.08 * 0.08 * depth(one) * depth(other);
  }

  private static double depth(Setup setup) {
    return Math.log(setup.edge().millimetres() / 20);
  }

  /** The two views of lost fingers, added or subtracted; four fingers lose nothing. */
  private static double views(Setup setup, double exclusion, int sign, double deficit) {
    if (setup.grip().fingers().count() == 4) {
      return 0;
    }
    double sum = 0;
    for (gripwright.hand.Finger finger : setup.grip().fingers().fingers()) {
      sum += SHARES[finger.ordinal()] / 0.99;
    }
    return (exclusion + sign * deficit) * Math.log(sum);
  }

  private static double expected(Setup setup) {
    double bent = Math.max(0, Math.min(1, (Trials.posture(setup).meanFlexion() - 45) / 45));
    double power = 0.3 - 0.1 * bent;
    return views(setup, 1.8, 1, 0.288) / 2
        + power * Math.log(Math.min(40, setup.edge().millimetres()) / 20);
  }

  private static double months(StrengthTest test) {
    return ChronoUnit.DAYS.between(test.date(), DAY) / 30.4375;
  }

  private static double noise(StrengthTest test) {
    double variation = test.effort().orElseThrow().seconds() <= 20 ? 0.028 : 0.056;
    return variation * variation;
  }

  @Property(tries = 300)
  void theMapSolvesOneLinearSystem(@ForAll Tests generated, @ForAll Setup setup) {
    List<StrengthTest> tests = generated.list();
    int n = tests.size();
    RealMatrix system = MatrixUtils.createRealMatrix(n + 1, n + 1);
    RealVector loads = new ArrayRealVector(n + 1);
    RealVector wanted = new ArrayRealVector(n + 1);
    RealVector ofFade = new ArrayRealVector(n + 1);
    double[] allowed = new double[n];
    for (int i = 0; i < n; i++) {
      Effort effort = tests.get(i).effort().orElseThrow();
      allowed[i] =
          Math.log(EnduranceLaw.ROHMERT.share(effort.seconds()) / EnduranceLaw.ROHMERT.share(7));
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        system.setEntry(
            i,
            j,
            covariance(tests.get(i).setup(), tests.get(j).setup())
                + 0.3 * 0.3 * allowed[i] * allowed[j]
                + 0.04
                    * 0.04
                    * Math.min(months(tests.get(i)), months(tests.get(j)))
                    * (0.5 + 0.5 * similarity(tests.get(i).setup(), tests.get(j).setup()))
                + (i == j ? noise(tests.get(i)) : 0));
      }
      system.setEntry(i, n, 1);
      system.setEntry(n, i, 1);
      loads.setEntry(
          i,
          Math.log(tests.get(i).effort().orElseThrow().load().kilograms())
              - expected(tests.get(i).setup())
              - allowed[i]);
      wanted.setEntry(i, covariance(tests.get(i).setup(), setup));
      ofFade.setEntry(i, 0.3 * 0.3 * allowed[i]);
    }
    wanted.setEntry(n, 1);
    LUDecomposition lu = new LUDecomposition(system);
    RealVector weights = lu.getSolver().solve(wanted);
    double fade = 1 + lu.getSolver().solve(ofFade).dotProduct(loads);
    Assume.that(fade > 0.31); // below its bound the map gives the means at the bound
    double mean = expected(setup) + weights.dotProduct(loads);
    double variance = covariance(setup, setup) - weights.dotProduct(wanted);
    LoadEstimate map = Trials.map(tests).maximum(setup).orElseThrow().load();
    assertEquals(mean, Math.log(map.best().kilograms()), 1e-8);
    assertEquals(Math.sqrt(variance), map.spread(), 1e-8);
  }

  @Example
  void aFitIsWeightedLeastSquaresWithThePriorAsOneRowMore() {
    double[] seconds = {7, 7, 30, 90, 240};
    double[] kilograms = {82, 79, 62, 44, 27};
    RealMatrix design = MatrixUtils.createRealMatrix(6, 2);
    RealVector target = new ArrayRealVector(6);
    double[] roots = new double[6];
    List<Effort> efforts = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      design.setEntry(i, 0, 1);
      design.setEntry(
          i, 1, Math.log(EnduranceLaw.ROHMERT.share(seconds[i]) / EnduranceLaw.ROHMERT.share(7)));
      target.setEntry(i, Math.log(kilograms[i]));
      roots[i] = 1 / 0.056;
      efforts.add(new Effort(seconds[i], Load.ofKilograms(kilograms[i])));
    }
    design.setEntry(5, 1, 1);
    target.setEntry(5, 1);
    roots[5] = 1 / 0.3;
    RealMatrix weighted = new DiagonalMatrix(roots).multiply(design);
    RealVector solved =
        new QRDecomposition(weighted).getSolver().solve(new DiagonalMatrix(roots).operate(target));
    RealMatrix covariance =
        new LUDecomposition(weighted.transposeMultiply(weighted)).getSolver().getInverse();
    ForceTime curve = ForceTime.fit(ForceTime.Form.ROHMERT, efforts).orElseThrow();
    for (double time : new double[] {3, 7, 60, 600}) {
      RealVector row =
          new ArrayRealVector(
              new double[] {
                1, Math.log(EnduranceLaw.ROHMERT.share(time) / EnduranceLaw.ROHMERT.share(7))
              });
      LoadEstimate load = curve.load(time);
      assertEquals(Math.exp(row.dotProduct(solved)), load.best().kilograms(), 1e-9);
      assertEquals(Math.sqrt(row.dotProduct(covariance.operate(row))), load.spread(), 1e-10);
    }
  }
}
