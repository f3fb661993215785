package gripwright.language.syntax;

import java.util.List;

/** The result of a test. */
public sealed interface TestResult extends Syntax {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of result.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a load held for a time. */
    R holdTest(HoldTest result);

    /** Visits a hold to failure. */
    R failureTest(FailureTest result);

    /** Visits a series of holds. */
    R seriesTest(SeriesTest result);
  }

  /**
   * {@code hold 7 s load 92.5 kg} or {@code hold 7 s force 402 N}: the greatest load held for a
   * time, or the force that a sensor showed.
   */
  record HoldTest(int id, Amount hold, Amount load, boolean force) implements TestResult {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.holdTest(this);
    }
  }

  /** {@code to-failure 60 kg lasting 52 s}: how long a load was held. */
  record FailureTest(int id, Amount load, Amount lasting) implements TestResult {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.failureTest(this);
    }
  }

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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.seriesTest(this);
    }
  }
}
