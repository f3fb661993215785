package gripwright.compare;

import gripwright.fatigue.FatigueRates;
import gripwright.grip.Setup;
import gripwright.tissue.PulleyDraws;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The parameters of the models that are drawn, and the typical athlete with other values of them.
 * The fatigue factor is that of {@link FatigueRates#USUAL_SPREAD}: scatter between studies, so it
 * is never used between persons as well. Thread-safe.
 */
final class Parameters {

  /** Standard normal deviate of the 95th percentile. */
  private static final double DEVIATE_95 = 1.6449;

  /** Standard deviation of the logarithm of the fatigue factor. */
  static final double FATIGUE_SPREAD = Math.log(FatigueRates.USUAL_SPREAD) / DEVIATE_95;

  private static final int FATIGUE = 0;
  private static final int MAXIMA = 1;

  private final Person reference;
  private final double[] spreads;
  private final @Nullable Hangs hangs;
  private final List<String> names = new ArrayList<>();

  /**
   * @param spreads standard deviation of the logarithm of each setup's maximum
   * @param hangs the hands; null if pulleys are not measured
   */
  Parameters(Person reference, List<Setup> setups, double[] spreads, @Nullable Hangs hangs) {
    this.reference = reference;
    this.spreads = spreads.clone();
    this.hangs = hangs;
    names.add("fatigue-rate");
    setups.forEach(setup -> names.add("maximum " + setup));
    if (hangs != null) {
      names.addAll(PulleyDraws.names());
    }
  }

  Person reference() {
    return reference;
  }

  List<String> names() {
    return names;
  }

  Person drawn(double[] deviates) {
    double[] maxima = reference.maxima().clone();
    for (int i = 0; i < maxima.length; i++) {
      maxima[i] *= Math.exp(spreads[i] * deviates[MAXIMA + i]);
    }
    double fatigue = Math.exp(FATIGUE_SPREAD * deviates[FATIGUE]);
    if (hangs == null) {
      return new Person(
          reference.bodyMass(), maxima, reference.criticalForce(), fatigue, null, null);
    }
    double[] ofTissue =
        Arrays.copyOfRange(
            deviates, MAXIMA + maxima.length, MAXIMA + maxima.length + PulleyDraws.parameters());
    return new Person(
        reference.bodyMass(),
        maxima,
        reference.criticalForce(),
        fatigue,
        hangs.forces(ofTissue),
        hangs.own(ofTissue));
  }
}
