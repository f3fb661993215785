package gripwright.planning.placement;

import gripwright.athlete.Slot;
import java.time.LocalDate;
import java.util.List;

/**
 * A lower bound on the number of sessions without a day, by three fast counts that are never too
 * high: each name by itself with its gap, all together by the time of the days, and those that are
 * hard on one finger by every other day.
 */
final class PlacementBound {

  private static final int DAYS = 7;

  private final int names;

  /** Requested sessions of each name in each week. */
  private final int[][] wanted;

  /**
   * Most sessions of a name that can follow from a day of a week on, by the days since the last
   * one.
   */
  private final int[][][][] more;

  /** Fingers that a name works hard in a week. */
  private final int[][] hard;

  /** Most sessions of any name that fit into the time of a week's days from each day on. */
  private final int[][] room;

  /** Sessions that must be missing from each week on, if nothing came before. */
  private final long[] later;

  PlacementBound(List<Placement.WeekDemand> weeks, List<String> names) {
    this.names = names.size();
    this.wanted = new int[weeks.size()][this.names];
    this.more = new int[weeks.size()][this.names][][];
    this.hard = new int[weeks.size()][this.names];
    this.room = new int[weeks.size()][DAYS + 1];
    this.later = new long[weeks.size() + 1];
    for (int w = weeks.size() - 1; w >= 0; w--) {
      Placement.WeekDemand week = weeks.get(w);
      int shortest = week.requests().stream().mapToInt(Placement.Request::minutes).min().orElse(1);
      for (int d = DAYS - 1; d >= 0; d--) {
        LocalDate day = week.week().first().plusDays(d);
        room[w][d] = room[w][d + 1] + room(week.week().slots().apply(day), shortest);
      }
      for (Placement.Request request : week.requests()) {
        int name = names.indexOf(request.name());
        wanted[w][name]++;
        hard[w][name] = request.hardFingers().map(f -> f.bits()).orElse(0);
        more[w][name] = follow(week.week(), request);
      }
      int[] rested = new int[2 * this.names];
      java.util.Arrays.fill(rested, 0, this.names, Integer.MAX_VALUE);
      later[w] = missing(w, 0, rested, this.names);
    }
  }

  /** Returns the most sessions that fit into a day: a slot with a time begins one. */
  private static int room(List<Slot> slots, int shortest) {
    int room = 0;
    for (Slot slot : slots) {
      int fit = (int) (slot.time().toMinutes() / Math.max(1, shortest));
      room += slot.at().isPresent() ? Math.min(1, fit) : fit;
    }
    return room;
  }

  /**
   * Calculates how many sessions of one name can follow; for one name alone, the earliest day is
   * always best.
   */
  private static int[][] follow(Placement.Week week, Placement.Request request) {
    int gap = request.gapDays();
    int[][] follow = new int[DAYS + 1][gap + 1];
    for (int d = DAYS - 1; d >= 0; d--) {
      boolean open = Placement.isOpen(week, request, week.first().plusDays(d));
      for (int age = 0; age <= gap; age++) {
        follow[d][age] =
            open && age == gap
                ? 1 + follow[d + 1][Math.min(1, gap)]
                : follow[d + 1][Math.min(gap, age + 1)];
      }
    }
    return follow;
  }

  /**
   * Returns the number of sessions that must be missing from the first day on if nothing came
   * before.
   */
  long missing() {
    return later[0];
  }

  /**
   * Returns the number of sessions that must be missing in a week and those after it.
   *
   * @param day the first day that is still open, 0 to 7
   * @param now days since the last of each name, and from {@code counts} on the number placed
   */
  long missing(int week, int day, int[] now, int counts) {
    int missing = 0;
    int left = 0;
    int[] leftOfFinger = new int[4];
    for (int n = 0; n < names; n++) {
      if (wanted[week][n] > 0) {
        int open = wanted[week][n] - now[counts + n];
        int[] byAge = more[week][n][day];
        missing += Math.max(0, open - byAge[Math.min(byAge.length - 1, now[n])]);
        left += open;
        for (int f = 0; f < leftOfFinger.length; f++) {
          leftOfFinger[f] += ((hard[week][n] >> f) & 1) * open;
        }
      }
    }
    int hardDays = (DAYS - day + 1) / Placement.HARD_GAP_DAYS;
    for (int ofFinger : leftOfFinger) {
      missing = Math.max(missing, ofFinger - hardDays);
    }
    return Math.max(missing, left - room[week][day]) + later[week + 1];
  }
}
