package gripwright.planning;

import net.jqwik.api.statistics.Statistics;

/** Counts how often a property says something, so that none passes by saying nothing. */
public final class Reached {

  private Reached() {}

  /** The tries from which a share is distinguished from chance. */
  private static final int ENOUGH = 1000;

  /**
   * Counts how often a property was not empty, and fails a long enough run in which that was rarer
   * than half of what is usual.
   */
  public static void reached(boolean reached, double usualPercent) {
    Statistics.label("reached").collect(reached);
    Statistics.label("reached")
        .coverage(
            c ->
                c.check(true)
                    .count(
                        (count, all) -> all < ENOUGH || count * 100.0 / all >= usualPercent / 2));
  }
}
