package gripwright.season;

import gripwright.change.PlanChange;
import gripwright.schedule.Cause;
import java.util.List;

/**
 * What a log changed in the days ahead, and why. Immutable.
 *
 * @param change what is another than it would be without the log's lines since the plan began
 * @param because why, the most severe first; at least one
 */
public record LogChange(PlanChange change, List<Cause> because) {

  /**
   * Copies the reasons.
   *
   * @throws IllegalArgumentException if there is none
   */
  public LogChange {
    because = List.copyOf(because);
    if (because.isEmpty()) {
      throw new IllegalArgumentException("no reason for " + change);
    }
  }
}
