package gripwright.published;

import gripwright.strength.EnduranceLaw;
import org.hipparchus.analysis.polynomials.PolynomialFunctionLagrangeForm;

/** How long a share of maximal force is held. Rohmert's law is the one that plans use. */
final class EnduranceComparisons {

  private static final double SECONDS_OF_MINUTE = 60;

  private EnduranceComparisons() {}

  static void into(Comparisons all) {
    for (int power = 0; power <= 3; power++) {
      int coefficient = power;
      all.constant("et.rohmert.a" + power, () -> rohmertInMinutes()[coefficient]);
    }
    for (int percent : new int[] {20, 30, 50, 80}) {
      all.arithmetic("et.rohmert." + percent, () -> rohmert(percent));
      all.model("et.hincapie." + percent, () -> rohmert(percent));
    }
    all.model("et.hincapie.asymptote", () -> 100 * EnduranceLaw.UNLIMITED_SHARE);
    all.constant("et.freylaw.handgrip.b1", EnduranceComparisons::power);
    all.constant("et.freylaw.handgrip.b0", () -> powerLaw(50) * Math.pow(2, power()));
    for (int percent = 20; percent <= 80; percent += 10) {
      int share = percent;
      all.arithmetic("et.freylaw.handgrip." + percent, () -> powerLaw(share));
    }
    for (int percent : new int[] {20, 50, 80}) {
      all.model("et.manenica.handgrip." + percent, () -> rohmert(percent));
    }
  }

  private static double rohmert(int percent) {
    return EnduranceLaw.ROHMERT.seconds(percent / 100.0);
  }

  private static double powerLaw(int percent) {
    return EnduranceLaw.FREY_LAW_AVIN.seconds(percent / 100.0);
  }

  /** The exponent, from two of the law's times. */
  private static double power() {
    return Math.log(powerLaw(80) / powerLaw(40)) / Math.log(2);
  }

  /** The coefficients of the polynomial in 1 by the share, from four of the law's times. */
  private static double[] rohmertInMinutes() {
    double[] inverse = {1, 1.25, 2, 4};
    double[] minutes = new double[inverse.length];
    for (int i = 0; i < inverse.length; i++) {
      minutes[i] = EnduranceLaw.ROHMERT.seconds(1 / inverse[i]) / SECONDS_OF_MINUTE;
    }
    return new PolynomialFunctionLagrangeForm(inverse, minutes).getCoefficients();
  }
}
