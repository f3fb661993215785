package gripwright.season;

import gripwright.change.PlanChange;
import gripwright.schedule.Cause;
import java.util.List;

/**
 * A change in the days ahead that the log caused, with its reasons. Immutable.
 *
 * @param change difference from the plan without log entries since its start
 * @param because reasons, the most severe first; at least one
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
