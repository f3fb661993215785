package gripwright.planning;

import gripwright.planning.progression.Progression.StepOpportunity;
import gripwright.planning.progression.ReturnRamp;
import gripwright.schedule.Cause;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How far a block has come: which weeks may earn a step. Immutable.
 *
 * @param since first day of the weeks that may earn the next step
 * @param grips names of the grips that were trained in them
 * @param opportunities steps that could have been taken so far
 * @param withoutLogLimits the same if the log had limited nothing
 * @param lost weeks that were not trained, as logged
 * @param last what became of the last week
 */
record BlockProgress(
    LocalDate since,
    Set<String> grips,
    List<StepOpportunity> opportunities,
    List<StepOpportunity> withoutLogLimits,
    List<Cause> lost,
    Outcome last) {

  /** What became of a week. */
  enum Outcome {
    /** Something was trained in it or is planned. */
    TRAINED,
    /** Sessions were planned, and none was trained, as logged. */
    SKIPPED,
    /** Nothing was planned. */
    EMPTY
  }

  BlockProgress {
    grips = Set.copyOf(grips);
    opportunities = List.copyOf(opportunities);
    withoutLogLimits = List.copyOf(withoutLogLimits);
    lost = List.copyOf(lost);
  }

  /** Returns the progress of a block before its first week. */
  static BlockProgress start(LocalDate from) {
    return new BlockProgress(from, Set.of(), List.of(), List.of(), List.of(), Outcome.EMPTY);
  }

  /**
   * Returns the progress with the step that a week may take.
   *
   * @param first first day of the week
   * @param eased true if the week is eased: it takes none
   * @param ramp the return that the week is part of
   * @param allGrips names of all grips of the block
   */
  BlockProgress offering(LocalDate first, boolean eased, ReturnRamp ramp, Set<String> allGrips) {
    List<StepOpportunity> now = new ArrayList<>(opportunities);
    List<StepOpportunity> without = new ArrayList<>(withoutLogLimits);
    if (last != Outcome.EMPTY && !eased && (ramp.steady() || ramp.byLog())) {
      without.add(new StepOpportunity(since, first, allGrips));
    }
    if (last == Outcome.TRAINED && !eased && ramp.steady()) {
      now.add(new StepOpportunity(since, first, grips));
    }
    return new BlockProgress(since, grips, now, without, lost, last);
  }

  /**
   * Returns the progress after a week.
   *
   * @param before the progress before it took its step, which stays open if nothing was trained
   * @param week the week
   * @param outcome what became of it
   * @param trained names of the grips that were trained in it
   */
  BlockProgress after(
      BlockProgress before, WeekContext week, Outcome outcome, Set<String> trained) {
    if (outcome == Outcome.TRAINED) {
      Set<String> all = new TreeSet<>(trained);
      if (week.eased()) {
        all.addAll(grips);
      }
      return new BlockProgress(
          week.eased() ? since : week.first(), all, opportunities, withoutLogLimits, lost, outcome);
    }
    List<Cause> lostNow = new ArrayList<>(lost);
    if (outcome == Outcome.SKIPPED) {
      lostNow.add(new Cause.WeekNotTrained(week.number()));
    }
    return new BlockProgress(
        since, grips, before.opportunities, withoutLogLimits, lostNow, outcome);
  }
}
