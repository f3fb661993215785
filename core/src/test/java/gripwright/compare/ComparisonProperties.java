package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ComparisonProperties {

  private static final List<Measure> ALL = List.of(Measure.values());

  private static Comparison.Builder three(int size, int draws) {
    return Comparison.builder("three", Studies.cohort(size).build())
        .arm(Arm.of("a", Studies.p1()))
        .arm(Arm.of("b", Studies.p2()))
        .arm(Arm.of("c", Studies.p2().with("level", Level.ofMax(50))))
        .arm(Arm.withoutTraining("none"))
        .draws(draws)
        .measures(ALL)
        .objectives(
            List.of(
                new Objective(true, Measure.IMPULSE), new Objective(false, Measure.A2_EXPOSURE)));
  }

  private static ComparisonResult run(Comparison comparison, int threads) {
    return ComparisonRun.of(comparison, List.of(), List.of(), List.of())
        .run(RunOptions.standard().threads(threads));
  }

  @Test
  void threadsChangeNothing() {
    Comparison comparison = three(9_000, 9_000).build();
    ComparisonResult one = run(comparison, 1);
    assertEquals(one, run(comparison, 2));
    assertEquals(one, run(comparison, 8));
  }

  @Test
  void anotherStreamChangesTheDrawsAndNotTheTypicalAthlete() {
    Subject one = Studies.subject(three(100, 1000).build());
    Subject other = Studies.subject(three(100, 1000).stream(7).build());
    assertTrue(!one.differences().equals(other.differences()));
    for (int i = 0; i < one.differences().size(); i++) {
      assertEquals(one.differences().get(i).best(), other.differences().get(i).best());
    }
  }

  /** With common random numbers the first draws of a longer run are those of a shorter one. */
  @Test
  void aRunBeginsLikeAShorterOne() {
    Philox random = new Philox(2027);
    CohortPeople people = new CohortPeople(Studies.cohort(10).build(), random, Models.AS_IN_PLANS);
    People.Prepared prepared = people.prepare(List.of(Studies.SETUP), true);
    assertArrayEquals(prepared.member(3).maxima(), prepared.member(3).maxima());
    assertEquals(random.normal(0, 999, 2, 0), new Philox(2027).normal(0, 999, 2, 0));
    // The size of a cohort is no input of a person either.
    CohortPeople more = new CohortPeople(Studies.cohort(1000).build(), random, Models.AS_IN_PLANS);
    assertArrayEquals(
        prepared.member(3).maxima(), more.prepare(List.of(Studies.SETUP), true).member(3).maxima());
  }

  @Test
  void fourTimesTheDrawsHalveTheStandardError() {
    Subject few = Studies.subject(three(2, 2_000).build());
    Subject many = Studies.subject(three(2, 8_000).build());
    for (int i = 0; i < few.differences().size(); i++) {
      Difference one = few.differences().get(i);
      Difference other = many.differences().get(i);
      boolean rare = one.measure() == Measure.COMPLETED; // differs in a few draws only
      if (one.standardError() > 1e-12 && !rare) {
        assertEquals(2, one.standardError() / other.standardError(), 0.2, () -> one + "\n" + other);
      }
    }
  }

  @Property(tries = 12)
  void theOrderOfArmsAndMeasuresChangesOnlyTheOrder(@ForAll @IntRange(max = 1000) int seed) {
    Comparison comparison = three(50, 200).build();
    List<Arm> arms = new ArrayList<>(comparison.arms());
    List<Measure> measures = new ArrayList<>(comparison.measures());
    Collections.shuffle(arms, new Random(seed));
    Collections.shuffle(measures, new Random(seed));
    Subject subject = Studies.subject(comparison);
    Subject shuffled =
        Studies.subject(comparison.toBuilder().arms(arms).measures(measures).build());
    assertEquals(subject.pareto(), shuffled.pareto());
    for (Difference difference : subject.differences()) {
      Difference same =
          shuffled.differences().stream()
              .filter(d -> d.measure() == difference.measure())
              .filter(d -> List.of(d.a(), d.b()).contains(difference.a()))
              .filter(d -> List.of(d.a(), d.b()).contains(difference.b()))
              .findFirst()
              .orElseThrow();
      boolean turned = !same.a().equals(difference.a());
      double sign = turned ? -1 : 1;
      assertEquals(difference.best(), sign * same.best(), 1e-12);
      assertEquals(difference.greater(), turned ? 1 - same.greater() : same.greater(), 1e-12);
      assertEquals(difference.low90(), turned ? -same.high90() : same.low90(), 2 * Tally.STEP);
      assertEquals(difference.missing(), same.missing());
    }
  }

  /** The set of the undominated, by trying every pair. */
  @Property
  void undominatedArmsAreThoseOfBruteForce(@ForAll @IntRange(min = 1, max = 7) int arms) {
    Random random = new Random(arms);
    List<Objective> objectives =
        List.of(
            new Objective(true, Measure.IMPULSE),
            new Objective(false, Measure.MINUTES),
            new Objective(true, Measure.END_RESERVE));
    for (int attempt = 0; attempt < 50; attempt++) {
      double[][] values = new double[arms][Measure.values().length];
      for (double[] row : values) {
        for (Objective objective : objectives) {
          row[objective.measure().ordinal()] = random.nextInt(4);
        }
      }
      boolean[] all = new boolean[arms];
      java.util.Arrays.fill(all, true);
      boolean[] found = Pairs.undominated(objectives, values, all);
      for (int a = 0; a < arms; a++) {
        boolean beaten = false;
        for (int b = 0; b < arms; b++) {
          boolean atLeast = true;
          boolean better = false;
          for (Objective objective : objectives) {
            int m = objective.measure().ordinal();
            double ahead =
                objective.more() ? values[b][m] - values[a][m] : values[a][m] - values[b][m];
            atLeast &= ahead >= 0;
            better |= ahead > 0;
          }
          beaten |= atLeast && better;
        }
        assertEquals(!beaten, found[a]);
      }
    }
  }

  @Test
  void tallyOfChunksIsThatOfTheWhole() {
    Random random = new Random(5);
    Tally whole = new Tally(1);
    Tally first = new Tally(1);
    Tally second = new Tally(1);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < 4000; i++) {
      double value = random.nextGaussian();
      all.add(value);
      whole.add(value, new double[] {value});
      (i < 1500 ? first : second).add(value, new double[] {value});
    }
    first.add(second);
    Collections.sort(all);
    for (double p : new double[] {0, 0.05, 0.25, 0.5, 0.95, 1}) {
      assertEquals(whole.quantile(p), first.quantile(p));
      assertEquals(all.get((int) (p * 3999)), whole.quantile(p), Tally.STEP);
    }
    assertEquals(whole.greater(), first.greater());
    assertEquals(1, whole.driven(0), 1e-9);
    assertEquals(whole.standardError(), first.standardError(), 1e-12);
  }

  @Test
  void aHandBetweenTwoSolvedOnesIsCloseToItsOwnSolution() {
    HandTable table =
        new HandTable(List.of(Studies.SETUP), gripwright.statics.MomentArms.KETCHUM_1978);
    double[] none = new double[gripwright.tissue.PulleyDraws.parameters()];
    double worst = 0;
    for (double deviate = -2; deviate <= 2; deviate += 0.37) {
      gripwright.hand.HandShape shape = HandTable.shape(gripwright.hand.Sex.FEMALE, deviate);
      Hangs own =
          new Hangs(
              List.of(Studies.SETUP), side -> shape, gripwright.statics.MomentArms.KETCHUM_1978);
      double[] solved = own.own(none);
      double[] found = table.at(gripwright.hand.Sex.FEMALE, deviate).own();
      for (int i = 0; i < solved.length; i++) {
        if (solved[i] > 0 && found[i] > 0) {
          worst = Math.max(worst, Math.abs(found[i] / solved[i] - 1));
        }
      }
    }
    assertTrue(worst < 0.02, "off by " + worst);
  }

  @Test
  void anArmThatLosesInEveryObjectiveIsNeverAmongTheBest() {
    Exercise light = Studies.p2().with("level", Level.ofMax(30)).with("sets", 1);
    Subject subject =
        Studies.subject(
            Studies.compared(Studies.p2(), light, Measure.IMPULSE, Measure.END_RESERVE)
                .objectives(List.of(new Objective(true, Measure.IMPULSE)))
                .build());
    assertEquals(1.0, subject.pareto().get("a"));
    assertEquals(0.0, subject.pareto().get("b"));
  }
}
