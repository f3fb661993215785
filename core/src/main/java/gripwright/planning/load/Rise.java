package gripwright.planning.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The weeks of a plan in which loads may rise to what a higher test allows: those that are not
 * eased, are no return after time away, and follow a trained week. Immutable.
 *
 * @param share greatest rise in a week, as a share
 * @param weeks the plan's weeks so far, the present one last
 * @param trained true if there was training in the last of them, as far as is known
 */
public record Rise(double share, List<Week> weeks, boolean trained) {

  /** Copies the weeks. */
  public Rise {
    weeks = List.copyOf(weeks);
  }

  /**
   * A week of the plan.
   *
   * @param first its first day
   * @param open true if loads may rise in it
   * @param grips names of the grips that its block trains
   */
  public record Week(LocalDate first, boolean open, Set<String> grips) {
    /** Copies the names. */
    public Week {
      grips = Set.copyOf(grips);
    }
  }

  /** Returns the state before the first week of a plan, for a greatest weekly rise. */
  public static Rise of(double share) {
    return new Rise(share, List.of(), false);
  }

  /**
   * Returns this state with one more week.
   *
   * @param steady true if the week is not eased and no exercise returns in it
   * @param grips names of the grips that its block trains
   */
  public Rise in(LocalDate first, boolean steady, Set<String> grips) {
    List<Week> more = new ArrayList<>(weeks);
    more.add(new Week(first, steady && trained, grips));
    return new Rise(share, more, false);
  }

  /** Returns the same after its last week; one in which nothing was trained was no rise. */
  public Rise after(boolean wasTrained) {
    if (wasTrained || weeks.isEmpty()) {
      return new Rise(share, weeks, wasTrained);
    }
    List<Week> all = new ArrayList<>(weeks);
    Week last = all.remove(all.size() - 1);
    all.add(new Week(last.first(), false, last.grips()));
    return new Rise(share, all, false);
  }
}
