package gripwright.compare;

import gripwright.grip.Setup;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Sex;
import gripwright.statics.MomentArms;
import gripwright.tissue.PulleyDraws;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Pulley forces by size of the hand: solved for some hands of each sex and interpolated between
 * them, since a pose takes a millisecond and a cohort has up to ten million hands. Length and
 * breadth go by one percentile. Immutable by agreement.
 */
final class HandTable {

  private static final int KNOTS = 17;
  private static final double OUTERMOST = 2.3263; // deviate of the 99th percentile

  private final Map<Sex, Forces[]> knots = new EnumMap<>(Sex.class);

  /**
   * Forces for 1 N on the hand.
   *
   * @param setups by setup; null where the hand does not take the grip
   * @param own those of the own hang
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
  record Forces(double @Nullable [] @Nullable [] setups, double[] own) {}

  HandTable(List<Setup> setups, MomentArms arms) {
    double[] none = new double[PulleyDraws.parameters()];
    for (Sex sex : Sex.values()) {
      Forces[] row = new Forces[KNOTS];
      for (int i = 0; i < KNOTS; i++) {
        HandShape shape = shape(sex, deviate(i));
        Hangs hangs = new Hangs(setups, side -> shape, arms);
        row[i] = new Forces(hangs.forces(none), hangs.own(none));
      }
      knots.put(sex, row);
    }
  }

  private static double deviate(int knot) {
    return OUTERMOST * (2.0 * knot / (KNOTS - 1) - 1);
  }

  /** Returns the hand of a percentile, given as a standard normal deviate. */
  static HandShape shape(Sex sex, double deviate) {
    double percentile = CohortPeople.percentile(deviate);
    return HandShape.of(
        Hand.ofLength(HandMeasure.LENGTH.percentile(sex, percentile))
            .withBreadth(HandMeasure.BREADTH.percentile(sex, percentile)),
        Optional.of(sex));
  }

  /** Returns the forces of a hand. */
  Forces at(Sex sex, double deviate) {
    Forces[] row = knots.get(sex);
    if (row == null) {
      throw new IllegalArgumentException("no hands of " + sex);
    }
    double place =
        (Math.max(-OUTERMOST, Math.min(OUTERMOST, deviate)) / OUTERMOST + 1) / 2 * (KNOTS - 1);
    int low = Math.min(KNOTS - 2, (int) place);
    double part = place - low;
    double[][] below = known(row[low].setups());
    double[][] above = known(row[low + 1].setups());
    double[][] setups = new double[below.length][];
    for (int i = 0; i < setups.length; i++) {
      if (below[i] != null && above[i] != null) {
        setups[i] = between(below[i], above[i], part);
      }
    }
    return new Forces(setups, between(row[low].own(), row[low + 1].own(), part));
  }

  private static double[][] known(double @Nullable [] @Nullable [] forces) {
    return forces == null ? new double[0][] : forces;
  }

  /** Interpolates; a pulley that either hand does not judge is not judged. */
  private static double[] between(double[] low, double[] high, double part) {
    double[] between = new double[low.length];
    for (int i = 0; i < between.length; i++) {
      between[i] = low[i] > 0 && high[i] > 0 ? low[i] + part * (high[i] - low[i]) : 0;
    }
    return between;
  }
}
