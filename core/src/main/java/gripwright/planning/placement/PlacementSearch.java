package gripwright.planning.placement;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the best days for the sessions and tests of some weeks in a row, exactly.
 *
 * <p>Dynamic programming: goes through the days and, on each, decides for each session name whether
 * to place it. The future depends on the past only through a state: how long ago each session was,
 * how many of it are placed this week, and what is hard yesterday and today. Of two partial
 * solutions with the same state, the worse can be dropped, since both have the same continuations.
 * So the work grows with the number of states, not of solutions.
 *
 * <p>With many sessions a week there are too many states. Then only the best are kept after each
 * step. That gives a first solution: the second search drops states that must place fewer sessions
 * and keeps more of the others. If even that is not enough, the solution is not proved, and states
 * how many more sessions a better one could place at most.
 */
final class PlacementSearch {

  /** States kept in the first search, enough for a usual plan. */
  static final int FIRST_WIDTH = 1_000;

  /** States kept in the second search. */
  static final int WIDTH = 3_000;

  private static final int DAYS = 7;

  private final List<Placement.WeekDemand> weeks;
  private final PlacementMoves moves;
  private final PlacementLayout at;
  private final PlacementBound bound;
  private final int mostWidth;
  private int width;
  private long missingToBeat = Long.MAX_VALUE;
  private boolean proved = true;
  private int tries;
  private Meter meter = Meter.unbounded();

  /** Prepares to place weeks in a row. */
  PlacementSearch(List<Placement.WeekDemand> weeks) {
    this(weeks, FIRST_WIDTH, WIDTH);
  }

  /** Prepares to place weeks in a row with other numbers of states. */
  PlacementSearch(List<Placement.WeekDemand> weeks, int firstWidth, int mostWidth) {
    this.width = firstWidth;
    this.mostWidth = mostWidth;
    this.weeks = List.copyOf(weeks);
    this.moves = new PlacementMoves(this.weeks);
    this.at = new PlacementLayout(moves.names().size());
    this.bound = new PlacementBound(weeks, moves.names());
  }

  /** Searches; the same input gives the same result. */
  Placement.Found search() {
    return search(Meter.unbounded());
  }

  /**
   * Searches within a budget.
   *
   * @param counting counts the tries
   */
  Placement.Found search(Meter counting) {
    meter = counting;
    PlacementWay best = bestWay().orElseThrow();
    if (!proved) {
      missingToBeat = best.cost[0];
      width = mostWidth;
      proved = true;
      PlacementWay first = best;
      best = bestWay().filter(second -> second.compareTo(first) < 0).orElse(first);
    }
    long more = proved ? 0 : best.cost[0] - bound.missing();
    return new Placement.Found(moves.days(best), proved, (int) more, tries);
  }

  private Optional<PlacementWay> bestWay() {
    Collection<PlacementWay> ways = List.of(moves.start());
    for (int w = 0; w < weeks.size(); w++) {
      for (int d = 0; d < DAYS; d++) {
        for (PlacementMoves.Step step : moves.on(w, d)) {
          ways = step(ways, step);
        }
        ways.forEach(moves::endDay);
        ways = merged(promising(ways, w, d + 1));
      }
      int number = w;
      ways.forEach(way -> moves.endWeek(way, number));
      ways = merged(ways);
    }
    return ways.stream().min(PlacementWay::compareTo);
  }

  /** Drops partial solutions that must place fewer sessions than a known solution. */
  private Collection<PlacementWay> promising(Collection<PlacementWay> ways, int week, int day) {
    if (missingToBeat == Long.MAX_VALUE) {
      return ways;
    }
    return ways.stream()
        .filter(
            way -> way.cost[0] + bound.missing(week, day, way.now, at.count(0)) <= missingToBeat)
        .toList();
  }

  private Collection<PlacementWay> step(Collection<PlacementWay> ways, PlacementMoves.Step step) {
    meter.take(Limit.PLACEMENT, ways.size());
    List<PlacementWay> next = new ArrayList<>(ways);
    for (PlacementWay way : ways) {
      tries++;
      step.take(way).ifPresent(next::add);
    }
    return merged(next);
  }

  private Collection<PlacementWay> merged(Collection<PlacementWay> ways) {
    Map<IntBuffer, PlacementWay> best = new HashMap<>();
    for (PlacementWay way : ways) {
      best.merge(IntBuffer.wrap(way.now), way, (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }
    if (best.size() <= width) {
      return best.values();
    }
    proved = false;
    return best.values().stream()
        .sorted(
            Comparator.comparingLong(moves::missingSoFar).thenComparing(PlacementWay::compareTo))
        .limit(width)
        .toList();
  }
}
