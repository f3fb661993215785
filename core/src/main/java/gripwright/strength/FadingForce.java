package gripwright.strength;

import gripwright.quantity.Load;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A force-time curve that follows a published law, with its share raised to an individual power.
 *
 * @param law the law
 * @param point level and fade
 */
record FadingForce(EnduranceLaw law, FadeField.Point point) implements ForceTime {

  /** The kind of test is not known here, so the less repeatable one is taken. */
  private static final double NOISE = TestReliability.PEAK_FORCE.variance();

  static Optional<ForceTime> fit(EnduranceLaw law, Collection<Effort> efforts) {
    List<Effort> served = new ArrayList<>(efforts);
    served.removeIf(effort -> !law.isValidFor(effort.seconds()));
    served.sort(Effort.ORDER);
    if (served.isEmpty()) {
      return Optional.empty();
    }
    int n = served.size();
    RealMatrix covariance = MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(NOISE);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance.addToEntry(i, j, served.get(i).driftSharedWith(served.get(j)));
      }
    }
    FadeField field =
        new FadeField(
            covariance,
            served.stream().mapToDouble(e -> Math.log(e.load().kilograms())).toArray(),
            served.stream().mapToDouble(e -> allowed(law, e.seconds())).toArray());
    return Optional.of(new FadingForce(law, field.at(new double[n], 0, 0)));
  }

  /**
   * Returns the logarithm of a law's share for a time, relative to its share for 7 s, or for its
   * shortest time if that is longer.
   */
  static double allowed(EnduranceLaw law, double seconds) {
    return Math.log(law.share(seconds) / anchor(law));
  }

  private static double anchor(EnduranceLaw law) {
    return law.share(Math.max(REFERENCE_SECONDS, law.shortestSeconds()));
  }

  @Override
  public Form form() {
    return law == EnduranceLaw.ROHMERT ? Form.ROHMERT : Form.POWER_LAW;
  }

  @Override
  public double shortestSeconds() {
    return law.shortestSeconds();
  }

  @Override
  public double longestSeconds() {
    return law.longestSeconds();
  }

  @Override
  public LoadEstimate load(double seconds) {
    double allowed = allowed(law, seconds);
    return LoadEstimate.ofLogarithm(level(allowed), variance(allowed));
  }

  private double level(double allowed) {
    return point.level() + point.fade() * allowed;
  }

  private double variance(double allowed) {
    return point.levelVariance()
        + 2 * point.covariance() * allowed
        + point.fadeVariance() * allowed * allowed;
  }

  @Override
  public HoldTime time(Load load) {
    if (!(load.kilograms() > 0)) {
      throw new IllegalArgumentException("not a load to hold: " + load);
    }
    double wanted = Math.log(load.kilograms());
    return new HoldTime(
        seconds(allowed -> curve(allowed, -LoadEstimate.LOW_DEVIATE) - wanted),
        seconds(allowed -> curve(allowed, 0) - wanted),
        seconds(allowed -> curve(allowed, LoadEstimate.LOW_DEVIATE) - wanted));
  }

  private double curve(double allowed, double deviate) {
    return level(allowed) + deviate * Math.sqrt(Math.max(0, variance(allowed)));
  }

  /** Finds the time at which a curve, which increases with the law's share, reaches a value. */
  private double seconds(DoubleUnaryOperator above) {
    double allowed =
        Rising.zero(above, allowed(law, longestSeconds()), allowed(law, shortestSeconds()));
    if (Double.isInfinite(allowed)) {
      return allowed > 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    return law.seconds(Math.min(law.greatestShare(), anchor(law) * Math.exp(allowed)));
  }
}
