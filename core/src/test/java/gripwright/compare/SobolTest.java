package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.compare.ComparisonResult.Interval;
import gripwright.compare.Sobol.Index;
import gripwright.compare.Sobol.Indices;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * The function of Ishigami T, Homma T 1990, Proc. ISUMA '90, with a = 7 and b = 0.1; indices in
 * closed form, as printed in Saltelli A et al. 2008, Global Sensitivity Analysis, The Primer.
 */
class SobolTest {

  private static final double[] EXPECTED = {0.3139, 0.4424, 0, 0.5576, 0.4424, 0.2437};

  private static List<Index> ishigami(long stream, int rows, int resamples) {
    Philox random = new Philox(stream);
    Indices indices =
        Sobol.of(
            3,
            new Resampling(rows, resamples, random, 2),
            (row, input, second) ->
                Math.PI * (2 * random.uniform(0, row, input, second ? 1 : 0) - 1),
            x ->
                Math.sin(x[0])
                    + 7 * Math.pow(Math.sin(x[1]), 2)
                    + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]));
    List<Index> all = new ArrayList<>(indices.first());
    all.addAll(indices.total());
    return all;
  }

  private static double width(Index index) {
    return index.interval().high() - index.interval().low();
  }

  @Test
  void indicesOfIshigamisFunction() {
    List<Index> indices = ishigami(1990, 100_000, 0);
    for (int i = 0; i < EXPECTED.length; i++) {
      assertEquals(EXPECTED[i], indices.get(i).value(), 0.02, "index " + i);
      assertEquals(
          new Interval(indices.get(i).value(), indices.get(i).value()), indices.get(i).interval());
    }
  }

  /** In this stream all six have; how many of all streams' intervals do is the next test. */
  @Test
  void theIntervalsOfIshigamisFunctionHaveItsIndices() {
    List<Index> indices = ishigami(1, 10_000, 500);
    for (int i = 0; i < EXPECTED.length; i++) {
      Index index = indices.get(i);
      assertTrue(
          index.interval().low() <= EXPECTED[i] && EXPECTED[i] <= index.interval().high(),
          "index " + i + ": " + index);
      assertTrue(
          index.interval().low() < index.value() && index.value() < index.interval().high(),
          "index " + i + ": " + index);
      assertTrue(width(index) < 0.1, "index " + i + ": " + index);
    }
  }

  /** Of one stream, one interval in ten misses its index; over many streams, no more than that. */
  @Test
  void ninetyPerCentOfTheIntervalsHaveTheIndex() {
    int streams = 200;
    double covered = 0;
    for (int stream = 0; stream < streams; stream++) {
      List<Index> indices = ishigami(stream, 1_000, 200);
      for (int i = 0; i < EXPECTED.length; i++) {
        Interval interval = indices.get(i).interval();
        covered += interval.low() <= EXPECTED[i] && EXPECTED[i] <= interval.high() ? 1 : 0;
      }
    }
    assertEquals(0.9, covered / (streams * EXPECTED.length), 0.03);
  }

  /** A fourth of the variance is half the width; the width itself varies from stream to stream. */
  @Property(tries = 20)
  void fourTimesTheRowsHalveTheIntervals(@ForAll @IntRange(min = 1) int stream) {
    double few = ishigami(stream, 1_000, 200).stream().mapToDouble(SobolTest::width).sum();
    double many = ishigami(stream, 4_000, 200).stream().mapToDouble(SobolTest::width).sum();
    assertEquals(0.5, many / few, 0.15, few + " and " + many);
  }

  @Property(tries = 20)
  void resamplingChangesNoIndexAndComesAgain(
      @ForAll int stream, @ForAll @IntRange(min = 2, max = 300) int rows) {
    List<Index> without = ishigami(stream, rows, 0);
    List<Index> with = ishigami(stream, rows, 50);
    for (int i = 0; i < without.size(); i++) {
      assertEquals(without.get(i).value(), with.get(i).value());
    }
    assertEquals(with, ishigami(stream, rows, 50));
  }

  @Property(tries = 20)
  void everySampleHasAsManyRows(
      @ForAll int stream, @ForAll @IntRange(min = 1, max = 500) int rows) {
    Resampling resampling = new Resampling(rows, 10, new Philox(stream), 4);
    double[] sums = new double[11];
    for (int row = 0; row < rows; row++) {
      double[] weights = resampling.weights(row);
      assertEquals(1, weights[0]);
      for (int sample = 0; sample < sums.length; sample++) {
        sums[sample] += weights[sample];
      }
    }
    for (double sum : sums) {
      assertEquals(rows, sum);
    }
  }

  @Test
  void aConstantHasNoIndexAndNoInterval() {
    Indices indices =
        Sobol.of(
            2,
            new Resampling(100, 50, new Philox(1), 4),
            (row, input, second) -> row + input,
            x -> 5);
    assertEquals(new Index(0, new Interval(0, 0)), indices.first().get(0));
    assertEquals(new Index(0, new Interval(0, 0)), indices.total().get(1));
  }
}
