package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;

/** Who may train twice on a day, and what that takes. */
final class SharedDays {

  /** The age from which sessions share a day: the sixteenth birthday. */
  private static final int MONTHS = 192;

  private final Athlete athlete;

  SharedDays(Athlete athlete) {
    this.athlete = athlete;
  }

  /** Returns the hours that a session keeps to others of its day; empty if it shares none. */
  Optional<Duration> of(SessionPlan session, LocalDate day) {
    return isOldEnough(day) ? session.share() : Optional.empty();
  }

  /** Returns whether the athlete is old enough for two sessions on a day. */
  boolean isOldEnough(LocalDate day) {
    return athlete.ageInMonths(day) >= MONTHS;
  }

  /**
   * Reports sessions that share days although a time to train has no time of day: nobody knows then
   * how many hours are between them.
   *
   * @param root the place of the plan for the athlete
   */
  FindingList findings(Plan plan, ModelPath root) {
    FindingList found = new FindingList();
    boolean timed = athlete.available().stream().allMatch(slot -> slot.at().isPresent());
    if (timed || !isOldEnough(plan.to())) {
      return found;
    }
    for (Block block : plan.blocks()) {
      for (SessionPlan session : block.contentFor(athlete.name()).sessions()) {
        if (session.share().isPresent()) {
          found.add(
              Finding.error(
                      "value.slot",
                      root.then("block", block.name()).then("session", session.name()))
                  .with("session", session.name())
                  .with("athlete", athlete.name()));
        }
      }
    }
    return found;
  }
}
