package gripwright.planning.mix;

import gripwright.planning.mix.MixSolver.Candidate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The linear program of a mix. Its unknowns are the shares, the matched part of each, the margin
 * above a floor, and the distance of each share from the demand.
 */
final class MixProgram {

  /**
   * The weight of tests and names relative to distances: of otherwise equal grips, a tested one is
   * preferred, then the first by name. The weight of names grows with the square root of the
   * position, so that pairs don't balance.
   */
  private static final double BY_NAME = 1e-3;

  private static final int ITERATIONS = 10_000;

  /** What one structure's margin is at least above: a base and the gain by each candidate. */
  record Row(double base, List<Double> gain) {}

  /** A further condition on the share of one candidate. */
  record Condition(int candidate, Relationship relation, double value) {}

  private final List<Candidate> candidates;
  private final List<Row> margins;
  private final double enough;
  private final int[] open;
  private final int size;
  private final int marginAt;
  private final int distanceAt;
  private final int unknowns;
  private final double floor;
  private final List<Double> caps;

  /**
   * Creates the program for the candidates.
   *
   * @param candidates at least one, sorted by name
   * @param margins each with a gain for every candidate; may be empty
   * @param floor least margin
   * @param enough a margin above it counts for no more
   * @param caps greatest share of each candidate; with 0 it stays out
   */
  MixProgram(
      List<Candidate> candidates,
      List<Row> margins,
      double floor,
      double enough,
      List<Double> caps) {
    this.candidates = candidates;
    this.margins = margins;
    this.floor = floor;
    this.enough = enough;
    this.caps = caps;
    open = IntStream.range(0, caps.size()).filter(i -> caps.get(i) > 0).toArray();
    size = open.length;
    marginAt = 2 * size;
    distanceAt = 2 * size + 1;
    unknowns = 3 * size + 1;
  }

  /** Returns the shares with the highest objective for these coefficients. */
  double[] reached(double ofMatch, double ofMargin, double ofCarryOver) {
    double[] coefficients = coefficients(ofMatch, ofMargin, ofCarryOver);
    return shares(optimum(coefficients, constraints(List.of()), GoalType.MAXIMIZE));
  }

  Optional<double[]> solve(
      double ofMatch, double ofMargin, double ofCarryOver, List<Condition> further) {
    if (size == 0) {
      return Optional.empty();
    }
    double[] coefficients = coefficients(ofMatch, ofMargin, ofCarryOver);
    List<LinearConstraint> constraints = constraints(further);
    PointValuePair best;
    try {
      best = optimum(coefficients, constraints, GoalType.MAXIMIZE);
    } catch (MathIllegalStateException unsolvable) {
      return Optional.empty();
    }
    return Optional.of(shares(nearest(coefficients, constraints, best)));
  }

  /** Returns the solution of equal score that is nearest to the demand. */
  private PointValuePair nearest(
      double[] coefficients, List<LinearConstraint> constraints, PointValuePair best) {
    List<LinearConstraint> asGood = new ArrayList<>(constraints);
    asGood.add(
        new LinearConstraint(
            coefficients, Relationship.GEQ, best.getValue() - MixSolver.TOLERANCE));
    double[] distance = new double[unknowns];
    Arrays.fill(distance, distanceAt, unknowns, 1);
    for (int i = 0; i < size; i++) {
      double untested = candidates.get(open[i]).tested() ? 0 : 1;
      distance[i] = BY_NAME * (Math.sqrt((double) i / size) + untested);
    }
    try {
      return optimum(distance, asGood, GoalType.MINIMIZE);
    } catch (MathIllegalStateException unsolvable) {
      return best; // so narrow a region may seem infeasible after rounding, and the best solution
      // lies in it
    }
  }

  private double[] coefficients(double ofMatch, double ofMargin, double ofCarryOver) {
    double[] coefficients = new double[unknowns];
    for (int i = 0; i < size; i++) {
      coefficients[i] = ofCarryOver * candidates.get(open[i]).carryOver();
      coefficients[size + i] = ofMatch;
    }
    coefficients[marginAt] = margins.isEmpty() ? 0 : ofMargin;
    return coefficients;
  }

  /** Returns the shares of all candidates. */
  private double[] shares(PointValuePair found) {
    double[] shares = new double[candidates.size()];
    for (int i = 0; i < size; i++) {
      shares[open[i]] = found.getPoint()[i];
    }
    return shares;
  }

  private PointValuePair optimum(
      double[] coefficients, List<LinearConstraint> constraints, GoalType goal) {
    return new SimplexSolver()
        .optimize(
            new MaxIter(ITERATIONS),
            new LinearObjectiveFunction(coefficients, 0),
            new LinearConstraintSet(constraints),
            goal,
            new NonNegativeConstraint(true));
  }

  private List<LinearConstraint> constraints(List<Condition> further) {
    List<LinearConstraint> all = new ArrayList<>();
    double[] sum = new double[unknowns];
    Arrays.fill(sum, 0, size, 1);
    all.add(new LinearConstraint(sum, Relationship.EQ, 1));
    for (int i = 0; i < size; i++) {
      Candidate candidate = candidates.get(open[i]);
      double wish = wish(candidate);
      all.add(row(i, 1, -1, 0, Relationship.LEQ, caps.get(open[i])));
      all.add(row(size + i, 1, i, -1, Relationship.LEQ, 0));
      all.add(row(size + i, 1, -1, 0, Relationship.LEQ, candidate.demand()));
      all.add(row(i, 1, distanceAt + i, -1, Relationship.LEQ, wish));
      all.add(row(i, 1, distanceAt + i, 1, Relationship.GEQ, wish));
    }
    for (Row one : margins) {
      double[] row = new double[unknowns];
      row[marginAt] = 1;
      for (int i = 0; i < size; i++) {
        row[i] = -one.gain().get(open[i]);
      }
      all.add(new LinearConstraint(row, Relationship.LEQ, one.base() - floor));
    }
    if (!margins.isEmpty() && Double.isFinite(enough)) {
      double[] row = new double[unknowns];
      row[marginAt] = 1;
      all.add(new LinearConstraint(row, Relationship.LEQ, Math.max(0, enough - floor)));
    }
    for (Condition one : further) {
      int at = Arrays.binarySearch(open, one.candidate());
      all.add(row(at, 1, -1, 0, one.relation(), one.value()));
    }
    return all;
  }

  /**
   * Returns the share that decides among equal mixes: by the demand; without any, equal shares of
   * the tested grips; without those, of all.
   */
  private double wish(Candidate candidate) {
    double demanded = Arrays.stream(open).mapToDouble(i -> candidates.get(i).demand()).sum();
    if (demanded > 0) {
      return candidate.demand() / demanded;
    }
    long tested = Arrays.stream(open).filter(i -> candidates.get(i).tested()).count();
    return tested == 0 ? 1.0 / size : candidate.tested() ? 1.0 / tested : 0;
  }

  private LinearConstraint row(
      int first, double ofFirst, int second, double ofSecond, Relationship relation, double value) {
    double[] row = new double[unknowns];
    row[first] = ofFirst;
    if (second >= 0) {
      row[second] = ofSecond;
    }
    return new LinearConstraint(row, relation, value);
  }
}
