package gripwright.compare;

import gripwright.compare.Cohort.Correlation;
import gripwright.compare.Cohort.Trait;
import java.util.List;
import java.util.Optional;

/** Normal deviates of a person's traits that go together as a cohort says. */
final class CorrelatedDeviates {

  /** A pivot below this counts as 0. */
  private static final double LEAST_PIVOT = 1e-9;

  private CorrelatedDeviates() {}

  /**
   * Returns the lower triangle that turns independent deviates into correlated ones, by Cholesky's
   * decomposition; rows and columns are in the order of {@link Trait}.
   *
   * @return empty if the matrix of correlations is not positive definite
   */
  static Optional<double[][]> factor(List<Correlation> correlations) {
    int traits = Trait.values().length;
    double[][] matrix = new double[traits][traits];
    for (int i = 0; i < traits; i++) {
      matrix[i][i] = 1;
    }
    for (Correlation each : correlations) {
      matrix[each.one().ordinal()][each.other().ordinal()] = each.value();
      matrix[each.other().ordinal()][each.one().ordinal()] = each.value();
    }
    double[][] lower = new double[traits][traits];
    for (int i = 0; i < traits; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = matrix[i][j];
        for (int k = 0; k < j; k++) {
          rest -= lower[i][k] * lower[j][k];
        }
        if (i == j) {
          if (rest < LEAST_PIVOT) {
            return Optional.empty();
          }
          lower[i][i] = Math.sqrt(rest);
        } else {
          lower[i][j] = rest / lower[j][j];
        }
      }
    }
    return Optional.of(lower);
  }
}
