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
 * @param setups setups to test, in order
 * @param hold how long each is held
 * @param insteadOf name of the session it replaces; empty if it has a day of its own
 * @param placedBecause the reason for its day
 * @param path its place in the model
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

  /** Returns whether a setup is one of those that are tested. */
  public boolean tests(Setup setup) {
    return setups.stream().anyMatch(s -> s.toString().equals(setup.toString()));
  }

  /** Returns whether it was done according to the log. */
  public boolean done() {
    return placedBecause instanceof PlacementReason.TestedOnDay;
  }
}
