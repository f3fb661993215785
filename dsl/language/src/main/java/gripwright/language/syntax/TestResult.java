package gripwright.language.syntax;

import java.util.List;

/** What came of a test. */
public sealed interface TestResult extends Syntax {

  /** {@code hold 7 s load 92.5 kg}: the greatest load held for a time. */
  record HoldTest(int id, Amount hold, Amount load) implements TestResult {}

  /** {@code to-failure 60 kg lasting 52 s}: how long a load was held. */
  record FailureTest(int id, Amount load, Amount lasting) implements TestResult {}

  /**
   * {@code series 24 x 7 s / 3 s mean 61, 60.5 kg}: the mean load of each hold of an all-out
   * series.
   */
  record SeriesTest(int id, Amount repetitions, Amount work, Amount rest, List<Amount> means)
      implements TestResult {
    /** Copies the lists. */
    public SeriesTest {
      means = List.copyOf(means);
    }
  }
}
