package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/**
 * Tests on a day. They count as hard.
 *
 * @param date the day
 * @param week plan week, from 1
 * @param block name of the block
 * @param setups what is tested, in order
 * @param hold how long each is held
 * @param insteadOf name of the session whose place it took; empty if it has a day of its own
 * @param placedBecause why it is on this day
 * @param path where it stands
 */
public record DatedRetest(
    LocalDate date,
    int week,
    String block,
    List<Setup> setups,
    Duration hold,
    String insteadOf,
    PlacementReason placedBecause,
    ModelPath path) {

  /** Copies the setups. */
  public DatedRetest {
    setups = List.copyOf(setups);
  }
}
