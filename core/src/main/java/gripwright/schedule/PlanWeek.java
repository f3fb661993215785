package gripwright.schedule;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/**
 * A week of a compiled plan: seven days from the plan's first day on.
 *
 * @param number from 1 through the plan
 * @param block name of the block
 * @param blockWeek from 1 in the block
 * @param from first day
 * @param eased true if the block or the taper eases this week
 * @param away true if the athlete is away on every training day
 * @param timeUnderLoadSeconds time under tension of the week, in seconds
 * @param loadIndex load-time: sum of total load times hold time, in kg s
 * @param path its place in the model
 */
public record PlanWeek(
    int number,
    String block,
    int blockWeek,
    LocalDate from,
    boolean eased,
    boolean away,
    double timeUnderLoadSeconds,
    double loadIndex,
    ModelPath path) {

  /** Returns the last day. */
  public LocalDate to() {
    return from.plusDays(6);
  }
}
