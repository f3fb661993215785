package gripwright.compare;

import org.jspecify.annotations.Nullable;

/**
 * Somebody who trains, as numbers: an athlete, a person of a cohort, or either with other model
 * parameters. Immutable by agreement.
 *
 * @param bodyMass kg; NaN if it isn't known
 * @param maxima kg, by setup; NaN where it isn't known
 * @param criticalForce share of the maximum, by setup; NaN where it isn't known
 * @param fatigue factor on the rate of fatigue; 1 for the published one
 * @param pulleys force on each pulley in N for 1 N on the hand, by setup; null where the hand does
 *     not take the grip, or where pulleys are not measured
 * @param ownHang the same for the own hang; null if pulleys are not measured
 */
@SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
record Person(
    double bodyMass,
    double[] maxima,
    double[] criticalForce,
    double fatigue,
    double @Nullable [] @Nullable [] pulleys,
    double @Nullable [] ownHang) {

  double maximum(int setup) {
    return maxima[setup];
  }
}
