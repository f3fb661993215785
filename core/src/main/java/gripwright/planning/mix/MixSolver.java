package gripwright.planning.mix;

import gripwright.plan.Exercise;
import gripwright.schedule.GripMix.Blend;
import gripwright.tissue.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.hipparchus.optim.linear.Relationship;

/**
 * Finds the shares of work that score highest, by linear programming.
 *
 * <p>Each of match, margin and carry-over is the least of several linear functions of the shares,
 * or linear itself, so the optimum is that of a linear program, found and proved by the simplex
 * method (Dantzig GB 1963, Linear Programming and Extensions; Hipparchus). Among mixes of equal
 * score the one nearest to the demand is taken, and of equally near ones the one whose grips come
 * first by name, so that the result depends neither on the order of the grips nor on the last
 * digits of a load.
 *
 * <p>Margins that the model can't tell apart count as equal. What a grip adds to a margin has an
 * interval. The highest margin that a mix reaches at the low ends is enough: more doesn't score. A
 * tested grip, or one in the demand, counts with the high end up to there; an unproven one, neither
 * tested nor in the demand, with its best estimate. So margin alone has an unproven grip take part
 * only if the others fall short of it for certain, and then with the least share that makes up for
 * it.
 */
final class MixSolver {

  /** Scores that differ by less count as equal. */
  static final double TOLERANCE = 1e-9;

  /** A smaller share is an artefact of the tolerance. */
  private static final double NEGLIGIBLE = 1e-5;

  /** The least share of a grip that is new in the next best mix. */
  private static final double LEAST_SHARE = 0.1;

  /**
   * A grip that may take part.
   *
   * @param grip its name
   * @param demand how much of the climbing ahead uses it, 0 to 1
   * @param carryOver transfer of work on it to the demand, 0 to 1; its low end if the grip is
   *     unproven
   * @param tested whether the athlete was tested in it on the line's edge
   */
  record Candidate(String grip, double demand, double carryOver, boolean tested) {

    /** Tells whether the grip is neither tested nor in the demand. */
    boolean unproven() {
      return !tested && demand <= 0;
    }
  }

  /**
   * The margin of one structure in one slip: a base and the gain by each candidate with a full
   * share.
   */
  record Margin(double base, List<Estimate> gain) {}

  private final List<Candidate> candidates;
  private final List<MixProgram.Row> likely;
  private final List<MixProgram.Row> low;
  private final List<MixProgram.Row> counted;
  private final Exercise.Weights weights;
  private final Range match;
  private final Range margin;
  private final Range carryOver;

  private record Range(double low, double high) {
    double scaled(double value) {
      return high - low < TOLERANCE ? 1 : (value - low) / (high - low);
    }

    /** Returns the score of one unit of the quantity at a weight. */
    double price(double weight) {
      return high - low < TOLERANCE ? 0 : weight / (high - low);
    }
  }

  /**
   * Creates the solver. Scores of all its results can be compared, whatever their caps.
   *
   * @param candidates at least one, sorted by name
   * @param margins each with a gain for every candidate; may be empty
   */
  MixSolver(List<Candidate> candidates, List<Margin> margins, Exercise.Weights weights) {
    this.candidates = List.copyOf(candidates);
    likely = rows(margins, (candidate, gain) -> gain.value());
    low = rows(margins, (candidate, gain) -> gain.low());
    counted = rows(margins, (candidate, gain) -> candidate.unproven() ? gain.value() : gain.high());
    this.weights = weights;
    double[][] single = new double[candidates.size()][candidates.size()];
    for (int i = 0; i < single.length; i++) {
      single[i][i] = 1;
    }
    // The minimum of linear functions is smallest at a corner, which is a single grip.
    double leastMatch = Arrays.stream(single).mapToDouble(this::match).min().orElse(0);
    double leastMargin = Arrays.stream(single).mapToDouble(s -> margin(low, s)).min().orElse(0);
    double leastCarry = Arrays.stream(single).mapToDouble(this::carryOver).min().orElse(0);
    List<Double> free = Collections.nCopies(candidates.size(), 1.0);
    MixProgram program =
        new MixProgram(this.candidates, low, leastMargin, Double.POSITIVE_INFINITY, free);
    match = new Range(leastMatch, match(program.reached(1, 0, 0)));
    margin = new Range(leastMargin, margin(low, program.reached(0, 1, 0)));
    carryOver = new Range(leastCarry, carryOver(program.reached(0, 0, 1)));
  }

  private List<MixProgram.Row> rows(
      List<Margin> margins, ToDoubleBiFunction<Candidate, Estimate> end) {
    return margins.stream()
        .map(
            one ->
                new MixProgram.Row(
                    one.base(),
                    IntStream.range(0, candidates.size())
                        .mapToObj(i -> end.applyAsDouble(candidates.get(i), one.gain().get(i)))
                        .toList()))
        .toList();
  }

  /**
   * Returns the margin from which mixes count as equal: the highest that any mix under the caps
   * reaches at the low ends of the intervals.
   *
   * @param caps greatest share of each candidate, 0 to 1
   */
  double enough(List<Double> caps) {
    return new MixProgram(candidates, low, margin.low(), Double.POSITIVE_INFINITY, caps)
        .solve(0, 1, 0, List.of())
        .map(shares -> margin(low, shares))
        .orElse(margin.high());
  }

  /** Returns which of some grips are neither tested nor in the demand. */
  List<String> unproven(Collection<String> grips) {
    return candidates.stream()
        .filter(each -> each.unproven() && grips.contains(each.grip()))
        .map(Candidate::grip)
        .toList();
  }

  /**
   * Returns the best mix.
   *
   * @param caps greatest share of each candidate, 0 to 1
   * @return empty if the caps allow no mix
   */
  Optional<Blend> best(List<Double> caps) {
    double enough = enough(caps);
    return solved(caps, enough, List.of()).map(found -> blend(found, enough));
  }

  /**
   * Returns the best mix of another set of grips than the given one; empty if there is none.
   *
   * @param caps greatest share of each candidate, 0 to 1
   * @param grips grips of the mix to exclude
   */
  Optional<Blend> nextBest(List<Double> caps, Collection<String> grips) {
    List<Blend> others = new ArrayList<>();
    double enough = enough(caps);
    for (int i = 0; i < candidates.size(); i++) {
      boolean taken = grips.contains(candidates.get(i).grip());
      double least = Math.min(LEAST_SHARE, caps.get(i));
      if (least <= 0) {
        continue; // excluded
      }
      solved(
              caps,
              enough,
              List.of(
                  taken
                      ? new MixProgram.Condition(i, Relationship.EQ, 0)
                      : new MixProgram.Condition(i, Relationship.GEQ, least)))
          .map(found -> blend(found, enough))
          .ifPresent(others::add);
    }
    return others.stream()
        .filter(blend -> !blend.shares().keySet().equals(new TreeSet<>(grips)))
        .max(
            Comparator.comparingDouble((Blend b) -> Math.rint(b.score() / TOLERANCE))
                .thenComparing(b -> -unproven(b.shares().keySet()).size())
                .thenComparing(b -> b.shares().toString(), Comparator.reverseOrder()));
  }

  private Optional<double[]> solved(
      List<Double> caps, double enough, List<MixProgram.Condition> further) {
    return new MixProgram(candidates, counted, margin.low(), enough, caps)
        .solve(
            match.price(weights.match()),
            margin.price(weights.margin()),
            carryOver.price(weights.carryOver()),
            further);
  }

  /** Returns a mix with its values, no grip excluded; shares are in the order of the candidates. */
  Blend blend(double[] found) {
    return blend(found, margin.high());
  }

  /** Returns a mix with its values, of which a margin above {@code enough} scores no more. */
  Blend blend(double[] found, double enough) {
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
    double carried = carryOver(shares);
    double scored = Math.min(enough, margin(counted, shares));
    return new Blend(
        named, matched, margin(likely, shares), carried, score(matched, scored, carried));
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

  private static double margin(List<MixProgram.Row> margins, double[] shares) {
    double least = margins.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
    for (MixProgram.Row one : margins) {
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
}
