package gripwright.planning.placement;

import java.util.Arrays;

/** A partial solution. */
final class PlacementWay {
  /** The state: everything from the past that the future depends on. */
  final int[] now;

  /** The cost, the most important part first. */
  final long[] cost;

  /** The day and slot of each session of each week, then of each test. */
  final int[] days;

  PlacementWay(int[] now, long[] cost, int[] days) {
    this.now = now;
    this.cost = cost;
    this.days = days;
  }

  PlacementWay copy() {
    return new PlacementWay(now.clone(), cost.clone(), days.clone());
  }

  int compareTo(PlacementWay other) {
    int byCost = Arrays.compare(cost, other.cost);
    return byCost != 0 ? byCost : Arrays.compare(days, other.days);
  }
}
