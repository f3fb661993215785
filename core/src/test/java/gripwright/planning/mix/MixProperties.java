package gripwright.planning.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.plan.Exercise;
import gripwright.schedule.GripMix.Blend;
import gripwright.tissue.Estimate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** The mix of grips is a proved optimum; brute force over a grid finds none better. */
class MixProperties {

  private static final Exercise.Weights MATCH_ALONE = new Exercise.Weights(1, 0, 0);
  private static final int STEPS = 12;

  /** A problem in whole numbers, so that a failing one is readable. */
  record Question(
      List<Integer> demand,
      List<Integer> carryOver,
      List<Integer> caps,
      List<List<Integer>> gains,
      List<Integer> bases,
      List<Integer> doubts,
      int match,
      int margin) {

    List<MixSolver.Candidate> candidates() {
      List<MixSolver.Candidate> all = new ArrayList<>();
      double sum = Math.max(100, demand.stream().mapToInt(d -> d).sum());
      for (int i = 0; i < demand.size(); i++) {
        all.add(
            new MixSolver.Candidate(
                "grip-" + (char) ('a' + i),
                demand.get(i) / sum,
                carryOver.get(i) / 100.0,
                tested(i)));
      }
      return all;
    }

    /** An odd doubt stands for a grip without a test. */
    boolean tested(int grip) {
      return doubts.get(grip) % 2 == 0;
    }

    private static Estimate gain(int percent, int doubt) {
      return new Estimate(percent / 100.0, (percent - doubt) / 100.0, (percent + doubt) / 100.0);
    }

    List<MixSolver.Margin> margins() {
      List<MixSolver.Margin> all = new ArrayList<>();
      for (int k = 0; k < bases.size(); k++) {
        List<Integer> means = gains.get(k);
        List<Estimate> gain =
            IntStream.range(0, demand.size())
                .mapToObj(i -> gain(means.get(i), doubts.get(i)))
                .toList();
        all.add(new MixSolver.Margin(bases.get(k) / 100.0, gain));
      }
      return all;
    }

    List<Double> shareCaps() {
      return caps.stream().map(c -> c / 100.0).toList();
    }

    Blend best() {
      return solver().best(shareCaps()).orElseThrow();
    }

    Exercise.Weights weights() {
      double first = match / 100.0;
      double second = (1 - first) * margin / 100.0;
      return new Exercise.Weights(first, second, Math.max(0, 1 - first - second));
    }

    MixSolver solver() {
      return new MixSolver(candidates(), margins(), weights());
    }
  }

  @Provide
  Arbitrary<Question> questions() {
    return Arbitraries.integers()
        .between(1, 5)
        .flatMap(
            n ->
                Combinators.combine(
                        percents(0).list().ofSize(n),
                        percents(0).list().ofSize(n),
                        Arbitraries.of(100, 100, 60, 40, 0).list().ofSize(n),
                        percents(-20).list().ofSize(n).list().ofSize(4),
                        percents(-50).list().ofSize(4),
                        Arbitraries.of(0, 0, 4, 11, 30, 41).list().ofSize(n),
                        percents(0),
                        percents(0))
                    .as(Question::new))
        .filter(q -> q.caps().stream().mapToInt(c -> c).sum() >= 100);
  }

  private static Arbitrary<Integer> percents(int least) {
    return Arbitraries.integers().between(least, 100);
  }

  @Property
  void noMixOnAGridScoresHigher(@ForAll("questions") Question question) {
    MixSolver solver = question.solver();
    Blend best = solver.best(question.shareCaps()).orElseThrow();
    Statistics.label("grips in the mix").collect(best.shares().size());
    assertEquals(1, best.shares().values().stream().mapToDouble(s -> s).sum(), 1e-9);
    assertTrue(best.shares().values().stream().allMatch(s -> s > 1e-6), best.toString());
    int n = question.demand().size();
    grid(new int[n], 0, STEPS, question, solver, best.score());
  }

  private static void grid(
      int[] parts, int at, int left, Question question, MixSolver solver, double best) {
    if (at == parts.length - 1) {
      parts[at] = left;
      double[] shares = new double[parts.length];
      for (int i = 0; i < shares.length; i++) {
        shares[i] = parts[i] / (double) STEPS;
        if (shares[i] > question.shareCaps().get(i)) {
          return;
        }
      }
      double enough = solver.enough(question.shareCaps());
      assertTrue(solver.blend(shares, enough).score() <= best + 1e-7);
      return;
    }
    for (int i = 0; i <= left; i++) {
      parts[at] = i;
      grid(parts, at + 1, left - i, question, solver, best);
    }
  }

  /**
   * What counts as equal is chosen by the demand; a grip that is neither wins only by certainty.
   */
  @Property
  void anUnprovenGripDoesNotWinByNoise(
      @ForAll("questions") Question question, @ForAll @IntRange(min = 0, max = 60) int behind) {
    List<MixSolver.Candidate> candidates = new ArrayList<>(question.candidates());
    int n = candidates.size();
    MixSolver.Candidate tested =
        new MixSolver.Candidate("tested", 0, candidates.get(0).carryOver(), true);
    MixSolver.Candidate unproven =
        new MixSolver.Candidate("a-first-by-name", 0, tested.carryOver(), false);
    candidates.add(tested);
    candidates.add(unproven);
    List<MixSolver.Margin> margins = new ArrayList<>();
    for (MixSolver.Margin margin : question.margins()) {
      List<Estimate> gain = new ArrayList<>(margin.gain());
      double likely = margin.gain().get(0).value();
      gain.add(new Estimate(likely - behind / 100.0, likely - 0.6, likely + 0.1));
      gain.add(new Estimate(likely, likely - 0.6, likely + 0.6));
      margins.add(new MixSolver.Margin(margin.base(), gain));
    }
    List<Double> caps = new ArrayList<>(Collections.nCopies(n, 0.0));
    caps.addAll(List.of(1.0, 1.0));
    Blend best = new MixSolver(candidates, margins, question.weights()).best(caps).orElseThrow();
    assertEquals(Set.of("tested"), best.shares().keySet(), best.toString());
  }

  @Property
  void capsAreKept(@ForAll("questions") Question question) {
    Blend best = question.best();
    for (int i = 0; i < question.candidates().size(); i++) {
      String grip = question.candidates().get(i).grip();
      double cap = question.shareCaps().get(i);
      assertTrue(best.shares().getOrDefault(grip, 0.0) <= cap + 1e-4, grip);
    }
  }

  @Property
  void theNextBestIsAnotherSetOfGripsAndNoBetter(@ForAll("questions") Question question) {
    MixSolver solver = question.solver();
    Blend best = solver.best(question.shareCaps()).orElseThrow();
    Optional<Blend> next = solver.nextBest(question.shareCaps(), best.shares().keySet());
    Statistics.label("has a next best").collect(next.isPresent());
    next.ifPresent(
        other -> {
          assertNotEquals(best.shares().keySet(), other.shares().keySet());
          assertTrue(other.score() <= best.score() + 1e-7);
        });
  }

  @Property
  void moreDemandNeverLowersAShareWhereMatchAloneCounts(
      @ForAll("questions") Question question,
      @ForAll @IntRange(min = 0, max = 4) int which,
      @ForAll @IntRange(min = 1, max = 100) int more) {
    int grip = which % question.demand().size();
    List<MixSolver.Candidate> before = question.candidates();
    // With one grip's gain, the demand still adds up to at most 100 %.
    double rest = 1 + more / 100.0;
    List<MixSolver.Candidate> after = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      MixSolver.Candidate c = before.get(i);
      double demand = (c.demand() + (i == grip ? more / 100.0 : 0)) / rest;
      after.add(new MixSolver.Candidate(c.grip(), demand, c.carryOver(), true));
    }
    String name = before.get(grip).grip();
    double share = share(before, name);
    double now = share(after, name);
    Statistics.label("share").collect(now > share + 1e-9 ? "rises" : "stays");
    assertTrue(now >= share - 1e-7, share + " then " + now);
  }

  private static double share(List<MixSolver.Candidate> candidates, String name) {
    return new MixSolver(candidates, List.of(), MATCH_ALONE)
        .best(Collections.nCopies(candidates.size(), 1.0))
        .orElseThrow()
        .shares()
        .getOrDefault(name, 0.0);
  }

  @Property
  void theOrderOfGripsDoesNotChangeTheMix(
      @ForAll("questions") Question question, @ForAll long seed) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < question.demand().size(); i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(seed));
    List<MixSolver.Candidate> candidates = question.candidates();
    List<MixSolver.Candidate> other = order.stream().map(candidates::get).toList();
    List<MixSolver.Margin> margins =
        question.margins().stream()
            .map(
                m ->
                    new MixSolver.Margin(
                        m.base(), order.stream().map(i -> m.gain().get(i)).toList()))
            .toList();
    assertEquals(
        question.best().score(),
        new MixSolver(other, margins, question.weights())
            .best(order.stream().map(question.shareCaps()::get).toList())
            .orElseThrow()
            .score(),
        1e-7);
  }

  /**
   * One grip carries over best, up to half of the work; the others are equal. Rounding in a load's
   * last digits, as between kg and lb, must not choose among them.
   */
  @Property
  void equalGripsAreChosenByName(
      @ForAll @IntRange(min = 2, max = 5) int others, @ForAll Random random) {
    Blend exact = withOthersAlike(others, () -> 1);
    Blend noisy = withOthersAlike(others, () -> 1 + random.nextInt(-3, 4) * 1e-15);
    Statistics.label("grips in the mix").collect(exact.shares().size());
    assertEquals(0.5, exact.shares().getOrDefault("best", 0.0), 1e-6);
    double before = 1;
    for (int i = 0; i < others; i++) {
      double share = exact.shares().getOrDefault("other-" + i, 0.0);
      assertTrue(share <= before + 1e-6, exact.shares().toString());
      assertEquals(share, noisy.shares().getOrDefault("other-" + i, 0.0), 1e-6);
      before = share;
    }
  }

  private static Blend withOthersAlike(int others, DoubleSupplier noise) {
    List<MixSolver.Candidate> candidates = new ArrayList<>();
    List<Double> caps = new ArrayList<>();
    candidates.add(new MixSolver.Candidate("best", 0.1, 0.9, true));
    caps.add(0.5);
    for (int i = 0; i < others; i++) {
      candidates.add(
          new MixSolver.Candidate(
              "other-" + i, 0.9 / others * noise.getAsDouble(), 0.4 * noise.getAsDouble(), true));
      caps.add(1.0);
    }
    return new MixSolver(candidates, List.of(), new Exercise.Weights(0, 0, 1))
        .best(caps)
        .orElseThrow();
  }
}
