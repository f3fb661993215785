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
 * The progress of a block: which weeks may earn a step. Immutable.
 *
 * @param since first day of the weeks that may earn the next step
 * @param grips names of the grips that were trained in them
 * @param opportunities opportunities for a step so far
 * @param withoutLogLimits the same without limits from the log
 * @param lost weeks that were not trained, as logged
 * @param last outcome of the last week
 */
record BlockProgress(
    LocalDate since,
    Set<String> grips,
    List<StepOpportunity> opportunities,
    List<StepOpportunity> withoutLogLimits,
    List<Cause> lost,
    Outcome last) {

  /** The outcome of a week. */
  enum Outcome {
    /** It has training, done or planned. */
    TRAINED,
    /** Sessions were planned, but none was trained according to the log. */
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
   * @param eased true if the week is eased and takes no step
   * @param ramp the return ramp of the week
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
   * @param before the progress before its step, which stays open if nothing was trained
   * @param week the week
   * @param outcome its outcome
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
