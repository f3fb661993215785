package gripwright.planning;

import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.planning.progression.Progression;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.util.List;

/**
 * A week of a plan with its block and the progress so far. Immutable.
 *
 * @param block the block that it belongs to
 * @param number from 1 through the plan
 * @param blockWeek from 1 in the block
 * @param first first day
 * @param path place of the week
 * @param standing state of progression
 */
record WeekContext(
    Block block,
    int number,
    int blockWeek,
    LocalDate first,
    ModelPath path,
    Progression.Week standing) {

  /** Returns whether the block or the taper eases the week. */
  boolean eased() {
    return standing.easedTo().isPresent();
  }

  /** Returns the place of a session on a day. */
  ModelPath path(String session, LocalDate day) {
    return path.then("session", session).then("date", day.toString());
  }

  /** Returns this week as if it were not eased. */
  WeekContext notEased() {
    return eased() ? with(standing.notEased()) : this;
  }

  /** Returns this week with another state. */
  WeekContext with(Progression.Week other) {
    return new WeekContext(block, number, blockWeek, first, path, other);
  }

  /** Returns this week after sessions in it. */
  WeekContext after(List<DatedSession> sessions) {
    return new WeekContext(block, number, blockWeek, first, path, standing.after(sessions));
  }
}
