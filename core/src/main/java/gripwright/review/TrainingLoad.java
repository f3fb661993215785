package gripwright.review;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;

/**
 * Session load, effort (0 to 10) times minutes, of every calendar day and week, days without
 * training included as 0.
 *
 * <p>Sources: session load, monotony and strain: Foster C 1998, Med Sci Sports Exerc
 * 30(7):1164-1168; Foster C et al. 2001, J Strength Cond Res 15(1):109-115. Weighted loads:
 * Williams S et al. 2017, Br J Sports Med 51(3):209-210. They describe the training done. None of
 * them predicts an injury.
 *
 * @param days every day from the first with a load to the day of the review
 * @param weeks every week that has one of these days
 */
public record TrainingLoad(List<Day> days, List<Week> weeks) {

  /** Days of the acute weighted load, by common practice. */
  public static final int ACUTE_DAYS = 7;

  /** Days of the chronic weighted load, by common practice. */
  public static final int CHRONIC_DAYS = 28;

  private static final int DAYS_OF_WEEK = 7;

  /**
   * A spread this small relative to the mean counts as none: the days are equal except for
   * rounding.
   */
  private static final double NO_SPREAD = 1e-9;

  /**
   * A day.
   *
   * @param date the day
   * @param load effort times minutes of all training; 0 or more
   * @param acute exponentially weighted load over {@value #ACUTE_DAYS} days, per day
   * @param chronic the same over {@value #CHRONIC_DAYS} days
   * @param response fitness and fatigue by {@link ImpulseResponse#STANDARD}
   */
  public record Day(
      LocalDate date, double load, double acute, double chronic, ImpulseResponse.State response) {}

  /**
   * A week.
   *
   * @param from first day
   * @param load sum of its days
   * @param whole true if all seven days are known; monotony needs a complete week
   * @param monotony mean of the daily loads divided by their standard deviation; empty in an
   *     incomplete week, in one without load, and if all days are equal
   * @param strain load times monotony; empty if monotony is
   */
  public record Week(
      LocalDate from, double load, boolean whole, OptionalDouble monotony, OptionalDouble strain) {}

  /** Copies the lists. */
  public TrainingLoad {
    days = List.copyOf(days);
    weeks = List.copyOf(weeks);
  }

  /**
   * Calculates the load of days and weeks.
   *
   * @param loads effort times minutes by day
   * @param kept day of the first line of the log: a week is complete only if the log was kept then
   * @param until last day; later loads are left out
   * @param weekStart day on which weeks begin
   */
  static TrainingLoad of(
      SortedMap<LocalDate, Double> loads, LocalDate kept, LocalDate until, DayOfWeek weekStart) {
    SortedMap<LocalDate, Double> known = loads.headMap(until.plusDays(1));
    if (known.isEmpty()) {
      return new TrainingLoad(List.of(), List.of());
    }
    LocalDate monday = known.firstKey().with(TemporalAdjusters.previousOrSame(weekStart));
    LocalDate first = kept.isAfter(monday) ? kept : monday;
    double[] daily = new double[(int) ChronoUnit.DAYS.between(first, until) + 1];
    known.forEach((day, load) -> daily[(int) ChronoUnit.DAYS.between(first, day)] = load);
    double[] acute = weighted(daily, ACUTE_DAYS);
    double[] chronic = weighted(daily, CHRONIC_DAYS);
    List<ImpulseResponse.State> states = ImpulseResponse.STANDARD.of(daily);
    List<Day> days = new ArrayList<>(daily.length);
    for (int i = 0; i < daily.length; i++) {
      days.add(new Day(first.plusDays(i), daily[i], acute[i], chronic[i], states.get(i)));
    }
    List<Week> weeks = new ArrayList<>();
    for (LocalDate from = monday; !from.isAfter(until); from = from.plusDays(DAYS_OF_WEEK)) {
      weeks.add(week(from, first, daily));
    }
    return new TrainingLoad(days, weeks);
  }

  private static Week week(LocalDate from, LocalDate first, double[] daily) {
    int start = (int) ChronoUnit.DAYS.between(first, from);
    boolean whole = start >= 0 && start + DAYS_OF_WEEK <= daily.length;
    int low = Math.max(0, start);
    int high = Math.min(daily.length, start + DAYS_OF_WEEK);
    double[] loads = java.util.Arrays.copyOfRange(daily, low, high);
    double sum = 0;
    for (double load : loads) {
      sum += load;
    }
    OptionalDouble monotony = whole ? monotony(loads) : OptionalDouble.empty();
    return new Week(
        from,
        sum,
        whole,
        monotony,
        monotony.isPresent()
            ? OptionalDouble.of(sum * monotony.getAsDouble())
            : OptionalDouble.empty());
  }

  /**
   * Returns the mean of daily loads divided by their standard deviation. The days of a week are the
   * whole population, so the deviation divides by their number; dividing by one less gives a 7 %
   * lower monotony.
   *
   * @param loads loads of consecutive days, each 0 or more
   * @return empty if there is no load, or all days are equal, so that the number has no meaning
   */
  public static OptionalDouble monotony(double[] loads) {
    double sum = 0;
    for (double load : loads) {
      sum += load;
    }
    double mean = sum / Math.max(1, loads.length);
    double squares = 0;
    for (double load : loads) {
      squares += (load - mean) * (load - mean);
    }
    double deviation = Math.sqrt(squares / Math.max(1, loads.length));
    return deviation > NO_SPREAD * mean && mean > 0
        ? OptionalDouble.of(mean / deviation)
        : OptionalDouble.empty();
  }

  /**
   * Returns the exponentially weighted load on the evening of each day. The weight of a day is 2 /
   * (N + 1); the loads before the first day are unknown, and the first day's load replaces them.
   *
   * @param loads loads of consecutive days
   * @param days N, 1 or more
   */
  public static double[] weighted(double[] loads, int days) {
    double weight = 2.0 / (days + 1);
    double[] weighted = new double[loads.length];
    for (int i = 0; i < loads.length; i++) {
      weighted[i] = i == 0 ? loads[0] : weight * loads[i] + (1 - weight) * weighted[i - 1];
    }
    return weighted;
  }

  /** Returns the last complete week, if there is one. */
  public Optional<Week> lastWholeWeek() {
    return weeks.stream().filter(Week::whole).reduce((first, second) -> second);
  }

  /** Returns the last day, if there is one. */
  public Optional<Day> lastDay() {
    return days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1));
  }
}
