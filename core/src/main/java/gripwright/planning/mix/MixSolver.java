package gripwright.planning.mix;

import gripwright.plan.Exercise;
import gripwright.schedule.GripMix.Blend;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
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
 * Finds the shares of work that score highest, by linear programming.
 *
 * <p>Each of match, margin and carry-over is the least of several linear functions of the shares,
 * or linear itself, so the optimum is that of a linear program, found and proved by the simplex
 * method (Dantzig GB 1963, Linear Programming and Extensions; Hipparchus). Among mixes of equal
 * score the one nearest to the demand is taken, and of those as near the one whose grips come first
 * by name, so the answer does not hang on the order of the grips, nor on the last digits of a load.
 */
final class MixSolver {

  /** Scores that differ by less count as equal. */
  private static final double TOLERANCE = 1e-9;

  /** A smaller share is an artefact of the tolerance; a set is never split so finely. */
  private static final double NEGLIGIBLE = 1e-5;

  /**
   * What names weigh beside distances, so that of grips alike in all that counts the first by name
   * is taken; a thousandth, and by the square root of the place, so that pairs don't balance.
   */
  private static final double BY_NAME = 1e-3;

  /** What a grip that joins a mix takes at least, when the next best is looked for. */
  private static final double LEAST_SHARE = 0.1;

  private static final int ITERATIONS = 10_000;

  /**
   * A grip that may take part.
   *
   * @param grip its name
   * @param demand how much of the climbing ahead uses it, 0 to 1
   * @param carryOver transfer of work on it to the demand, 0 to 1
   */
  record Candidate(String grip, double demand, double carryOver) {}

  /**
   * The margin of one structure in one slip: a base and what each candidate adds to it with a full
   * share.
   */
  record Margin(double base, List<Double> gain) {}

  private final List<Candidate> candidates;
  private final List<Margin> margins;
  private final Exercise.Weights weights;
  private final Range match;
  private final Range margin;
  private final Range carryOver;

  private record Range(double low, double high) {
    double scaled(double value) {
      return high - low < TOLERANCE ? 1 : (value - low) / (high - low);
    }

    /** Returns what one unit of the quantity adds to the score at a weight. */
    double price(double weight) {
      return high - low < TOLERANCE ? 0 : weight / (high - low);
    }
  }

  /**
   * Poses the question. Scores of all its answers, whatever caps they keep to, can be compared.
   *
   * @param candidates at least one, sorted by name
   * @param margins each with a gain for every candidate; may be empty
   */
  MixSolver(List<Candidate> candidates, List<Margin> margins, Exercise.Weights weights) {
    this.candidates = List.copyOf(candidates);
    this.margins = List.copyOf(margins);
    this.weights = weights;
    double[][] single = new double[candidates.size()][candidates.size()];
    for (int i = 0; i < single.length; i++) {
      single[i][i] = 1;
    }
    // A least of linear functions has its own least at a corner, which is a single grip.
    double leastMatch = Arrays.stream(single).mapToDouble(this::match).min().orElse(0);
    double leastMargin = Arrays.stream(single).mapToDouble(this::margin).min().orElse(0);
    double leastCarry = Arrays.stream(single).mapToDouble(this::carryOver).min().orElse(0);
    Goal goal = new Goal(leastMargin, Collections.nCopies(candidates.size(), 1.0));
    match = new Range(leastMatch, match(goal.reached(1, 0, 0)));
    margin = new Range(leastMargin, margin(goal.reached(0, 1, 0)));
    carryOver = new Range(leastCarry, carryOver(goal.reached(0, 0, 1)));
  }

  /**
   * Returns the best mix.
   *
   * @param caps greatest share of each candidate, 0 to 1
   * @return empty if the caps leave no mix
   */
  Optional<Blend> best(List<Double> caps) {
    return solved(caps, List.of()).map(this::blend);
  }

  /**
   * Returns the best mix of another set of grips than the given one; empty if there is none.
   *
   * @param caps greatest share of each candidate, 0 to 1
   * @param grips those of the mix that is not to be found again
   */
  Optional<Blend> nextBest(List<Double> caps, Collection<String> grips) {
    List<Blend> others = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      boolean taken = grips.contains(candidates.get(i).grip());
      double least = Math.min(LEAST_SHARE, caps.get(i));
      if (least <= 0) {
        continue; // stays out
      }
      solved(
              caps,
              List.of(
                  taken
                      ? new Condition(i, Relationship.EQ, 0)
                      : new Condition(i, Relationship.GEQ, least)))
          .map(this::blend)
          .ifPresent(others::add);
    }
    return others.stream()
        .filter(blend -> !blend.shares().keySet().equals(new TreeSet<>(grips)))
        .max(
            Comparator.comparingDouble((Blend b) -> Math.rint(b.score() / TOLERANCE))
                .thenComparing(b -> b.shares().toString(), Comparator.reverseOrder()));
  }

  /** A further condition on the share of one candidate. */
  private record Condition(int candidate, Relationship relation, double value) {}

  private Optional<double[]> solved(List<Double> caps, List<Condition> further) {
    Goal goal = new Goal(margin.low(), caps);
    return goal.solve(
        match.price(weights.match()),
        margin.price(weights.margin()),
        carryOver.price(weights.carryOver()),
        further);
  }

  /** Returns what shares are worth, in the order of the candidates. */
  Blend blend(double[] found) {
    double[] shares = found.clone();
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = shares[i] < NEGLIGIBLE ? 0 : shares[i];
      sum += shares[i];
    }
    TreeMap<String, Double> named = new TreeMap<>();
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
      if (shares[i] > 0) {
        named.put(candidates.get(i).grip(), shares[i]);
      }
    }
    double matched = match(shares);
    double left = margin(shares);
    double carried = carryOver(shares);
    return new Blend(named, matched, left, carried, score(matched, left, carried));
  }

  private double score(double matched, double left, double carried) {
    return weights.match() * match.scaled(matched)
        + weights.margin() * margin.scaled(left)
        + weights.carryOver() * carryOver.scaled(carried);
  }

  private double match(double[] shares) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += Math.min(shares[i], candidates.get(i).demand());
    }
    return sum;
  }

  private double margin(double[] shares) {
    double least = margins.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
    for (Margin one : margins) {
      double left = one.base();
      for (int i = 0; i < shares.length; i++) {
        left += one.gain().get(i) * shares[i];
      }
      least = Math.min(least, left);
    }
    return least;
  }

  private double carryOver(double[] shares) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += candidates.get(i).carryOver() * shares[i];
    }
    return sum;
  }

  /**
   * The linear program. Unknowns: shares, matched part of each, margin above a floor, distance of
   * each share from the demand.
   */
  private final class Goal {
    private final int[] open;
    private final int size;
    private final int marginAt;
    private final int distanceAt;
    private final int unknowns;
    private final double floor;
    private final List<Double> caps;

    /**
     * Poses it for the candidates that may take part.
     *
     * @param floor least margin
     * @param caps greatest share of each candidate; with 0 it stays out
     */
    Goal(double floor, List<Double> caps) {
      this.floor = floor;
      this.caps = caps;
      open = IntStream.range(0, caps.size()).filter(i -> caps.get(i) > 0).toArray();
      size = open.length;
      marginAt = 2 * size;
      distanceAt = 2 * size + 1;
      unknowns = 3 * size + 1;
    }

    /** Returns shares that reach the most with these prices. */
    double[] reached(double ofMatch, double ofMargin, double ofCarryOver) {
      double[] prices = prices(ofMatch, ofMargin, ofCarryOver);
      return shares(optimum(prices, constraints(List.of()), GoalType.MAXIMIZE));
    }

    Optional<double[]> solve(
        double ofMatch, double ofMargin, double ofCarryOver, List<Condition> further) {
      if (size == 0) {
        return Optional.empty();
      }
      double[] prices = prices(ofMatch, ofMargin, ofCarryOver);
      List<LinearConstraint> constraints = constraints(further);
      PointValuePair best;
      try {
        best = optimum(prices, constraints, GoalType.MAXIMIZE);
      } catch (MathIllegalStateException unsolvable) {
        return Optional.empty();
      }
      return Optional.of(shares(nearest(prices, constraints, best)));
    }

    /** Returns the solution of the same worth that is nearest to the demand. */
    private PointValuePair nearest(
        double[] prices, List<LinearConstraint> constraints, PointValuePair best) {
      List<LinearConstraint> alike = new ArrayList<>(constraints);
      alike.add(new LinearConstraint(prices, Relationship.GEQ, best.getValue() - TOLERANCE));
      double[] distance = new double[unknowns];
      Arrays.fill(distance, distanceAt, unknowns, 1);
      for (int i = 0; i < size; i++) {
        distance[i] = BY_NAME * Math.sqrt((double) i / size);
      }
      try {
        return optimum(distance, alike, GoalType.MINIMIZE);
      } catch (MathIllegalStateException unsolvable) {
        return best; // what is so narrow may seem empty after rounding, and the best is in it
      }
    }

    private double[] prices(double ofMatch, double ofMargin, double ofCarryOver) {
      double[] prices = new double[unknowns];
      for (int i = 0; i < size; i++) {
        prices[i] = ofCarryOver * candidates.get(open[i]).carryOver();
        prices[size + i] = ofMatch;
      }
      prices[marginAt] = margins.isEmpty() ? 0 : ofMargin;
      return prices;
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
        double[] prices, List<LinearConstraint> constraints, GoalType goal) {
      return new SimplexSolver()
          .optimize(
              new MaxIter(ITERATIONS),
              new LinearObjectiveFunction(prices, 0),
              new LinearConstraintSet(constraints),
              goal,
              new NonNegativeConstraint(true));
    }

    private List<LinearConstraint> constraints(List<Condition> further) {
      List<LinearConstraint> all = new ArrayList<>();
      double[] sum = new double[unknowns];
      Arrays.fill(sum, 0, size, 1);
      all.add(new LinearConstraint(sum, Relationship.EQ, 1));
      double demanded = Arrays.stream(open).mapToDouble(i -> candidates.get(i).demand()).sum();
      for (int i = 0; i < size; i++) {
        Candidate candidate = candidates.get(open[i]);
        double wish = demanded > 0 ? candidate.demand() / demanded : 1.0 / size;
        all.add(row(i, 1, -1, 0, Relationship.LEQ, caps.get(open[i])));
        all.add(row(size + i, 1, i, -1, Relationship.LEQ, 0));
        all.add(row(size + i, 1, -1, 0, Relationship.LEQ, candidate.demand()));
        all.add(row(i, 1, distanceAt + i, -1, Relationship.LEQ, wish));
        all.add(row(i, 1, distanceAt + i, 1, Relationship.GEQ, wish));
      }
      for (Margin one : margins) {
        double[] row = new double[unknowns];
        row[marginAt] = 1;
        for (int i = 0; i < size; i++) {
          row[i] = -one.gain().get(open[i]);
        }
        all.add(new LinearConstraint(row, Relationship.LEQ, one.base() - floor));
      }
      for (Condition one : further) {
        int at = Arrays.binarySearch(open, one.candidate());
        all.add(row(at, 1, -1, 0, one.relation(), one.value()));
      }
      return all;
    }

    private LinearConstraint row(
        int first,
        double ofFirst,
        int second,
        double ofSecond,
        Relationship relation,
        double value) {
      double[] row = new double[unknowns];
      row[first] = ofFirst;
      if (second >= 0) {
        row[second] = ofSecond;
      }
      return new LinearConstraint(row, relation, value);
    }
  }
}
