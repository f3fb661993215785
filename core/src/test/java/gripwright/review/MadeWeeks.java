package gripwright.review;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.TreeMap;

/** Weeks of loads for tests elsewhere. */
public final class MadeWeeks {

  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private MadeWeeks() {}

  /** Returns the week whose days have these loads, Monday first. */
  public static TrainingLoad.Week of(double... loads) {
    TreeMap<LocalDate, Double> days = new TreeMap<>();
    for (int i = 0; i < loads.length; i++) {
      days.put(MONDAY.plusDays(i), loads[i]);
    }
    return TrainingLoad.of(days, MONDAY, MONDAY.plusDays(loads.length - 1L), DayOfWeek.MONDAY)
        .lastWholeWeek()
        .orElseThrow();
  }
}
