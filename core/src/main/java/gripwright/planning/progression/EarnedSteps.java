package gripwright.planning.progression;

import gripwright.athlete.PainReport;
import gripwright.history.LoggedWork;
import gripwright.log.LogEntry.Done;
import gripwright.plan.Advance;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Counts the steps that a log has earned of an exercise: one for a number of good sessions in a
 * row. After pain the next sessions don't count, and a step earned in the same week is lost.
 */
final class EarnedSteps {

  private final LocalDate planFrom;
  private final Advance.WhenLogged pace;
  private final double mostEffort;

  private int steps;
  private int row;
  private int cooling;
  private boolean farBelow;
  private Optional<LocalDate> lastStep = Optional.empty();

  /**
   * Prepares to count.
   *
   * @param mostEffort a session with more effort counts as a problem
   */
  EarnedSteps(LocalDate planFrom, Advance.WhenLogged pace, double mostEffort) {
    this.planFrom = planFrom;
    this.pace = pace;
    this.mostEffort = mostEffort;
  }

  /**
   * Returns how many steps were earned and not lost again; call it once.
   *
   * @param before the day before which they count
   * @param facts logged work of the exercise before it, oldest first
   * @param pains pain that prevents a step, before that day and oldest first
   */
  int before(LocalDate before, List<LoggedWork> facts, List<PainReport> pains) {
    int next = 0;
    for (LoggedWork fact : facts) {
      while (next < pains.size() && pains.get(next).date().isBefore(fact.date())) {
        hurt(pains.get(next++));
      }
      trained(fact);
    }
    while (next < pains.size() && pains.get(next).date().isBefore(before)) {
      hurt(pains.get(next++));
    }
    return Math.max(0, steps);
  }

  private void hurt(PainReport pain) {
    row = 0;
    cooling = ProgressionBlockers.SESSIONS_HELD;
    lose(pain.date());
  }

  private void trained(LoggedWork fact) {
    cooling = Math.max(0, cooling - 1);
    boolean trouble = fact.trouble(mostEffort).isPresent();
    // More load than planned is not the planned work, so it earns no more of it.
    boolean farBelowTwice = farBelow && fact.farBelowBound();
    farBelow = fact.done().isPresent() ? fact.farBelowBound() : farBelow;
    boolean good =
        cooling == 0
            && !farBelowTwice
            && !trouble
            && !fact.heavier()
            && fact.done().isPresent()
            && deserves(fact.done().get());
    row = good ? row + 1 : 0;
    if (trouble) {
      lose(fact.date());
    }
    if (row == pace.sessions()) {
      steps++;
      row = 0;
      lastStep = Optional.of(fact.date());
    }
  }

  /** Removes an earned step that was not taken yet after a problem in the same week. */
  private void lose(LocalDate trouble) {
    if (lastStep.isPresent() && week(lastStep.get()) == week(trouble)) {
      steps--;
      lastStep = Optional.empty();
    }
  }

  private long week(LocalDate day) {
    return Math.floorDiv(ChronoUnit.DAYS.between(planFrom, day), 7L);
  }

  private boolean deserves(Done done) {
    return (!pace.doneInFull() || done.inFull())
        && (pace.effortAtMost().isEmpty()
            || (done.effort().isPresent()
                && done.effort().getAsDouble() <= pace.effortAtMost().getAsDouble()))
        && (pace.painAtMost().isEmpty()
            || (done.pain().isPresent()
                && done.pain().getAsDouble() <= pace.painAtMost().getAsDouble()));
  }
}
