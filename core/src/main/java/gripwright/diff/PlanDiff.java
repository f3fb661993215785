package gripwright.diff;

import gripwright.change.BlockChange;
import gripwright.change.PlanChange;
import gripwright.change.PlanChanges;
import gripwright.change.SessionChange;
import gripwright.schedule.Caution;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The changes of one plan of one athlete. Immutable.
 *
 * @param before the earlier plan
 * @param after the later plan
 * @param changes changes by date, without those implied by another
 * @param cautionsNew added cautions
 * @param cautionsGone removed cautions
 */
public record PlanDiff(
    CompiledPlan before,
    CompiledPlan after,
    List<PlanChange> changes,
    List<Caution> cautionsNew,
    List<Caution> cautionsGone) {

  /** Copies the lists. */
  public PlanDiff {
    changes = List.copyOf(changes);
    cautionsNew = List.copyOf(cautionsNew);
    cautionsGone = List.copyOf(cautionsGone);
  }

  /**
   * Compares two compiled plans.
   *
   * @param redefined true if a grip or protocol changed, and so every block that uses it
   */
  static PlanDiff between(CompiledPlan before, CompiledPlan after, boolean redefined) {
    List<PlanChange> all = PlanChanges.between(before.schedule(), after.schedule());
    return new PlanDiff(
        before,
        after,
        all.stream()
            .filter(change -> !(redefined && change instanceof BlockChange.BlockRewritten))
            .filter(change -> !isImplied(change, all))
            .toList(),
        without(after.cautions(), before.cautions()),
        without(before.cautions(), after.cautions()));
  }

  private static List<Caution> without(List<Caution> some, List<Caution> others) {
    Set<Caution> known = new HashSet<>(others);
    return some.stream().filter(text -> !known.contains(text)).toList();
  }

  /** Returns whether nothing changed. */
  public boolean isEmpty() {
    return changes.isEmpty() && cautionsNew.isEmpty() && cautionsGone.isEmpty();
  }

  /**
   * Returns whether a change follows from another: the sessions of an added or removed block, and
   * the exercises of a grip between its old and new first day.
   */
  private static boolean isImplied(PlanChange change, List<PlanChange> all) {
    return change instanceof SessionChange ofSession && ofSession.accept(new Implied(all));
  }

  private record Implied(List<PlanChange> all) implements SessionChange.Visitor<Boolean> {
    @Override
    public Boolean sessionAdded(SessionChange.SessionAdded c) {
      return blocks(all, true).contains(c.session().block());
    }

    @Override
    public Boolean sessionDropped(SessionChange.SessionDropped c) {
      return blocks(all, false).contains(c.session().block());
    }

    @Override
    public Boolean sessionMoved(SessionChange.SessionMoved c) {
      return false;
    }

    @Override
    public Boolean sessionTimed(SessionChange.SessionTimed c) {
      return false;
    }

    @Override
    public Boolean exerciseAdded(SessionChange.ExerciseAdded c) {
      return startsAround(c.exercise().setup().grip().name(), c.date(), all, false);
    }

    @Override
    public Boolean exerciseDropped(SessionChange.ExerciseDropped c) {
      return startsAround(c.exercise().setup().grip().name(), c.date(), all, true);
    }

    @Override
    public Boolean exerciseChanged(SessionChange.ExerciseChanged c) {
      return false;
    }
  }

  private static List<String> blocks(List<PlanChange> all, boolean added) {
    List<String> names = new ArrayList<>();
    for (PlanChange change : all) {
      if (added && change instanceof BlockChange.BlockAdded c) {
        names.add(c.block());
      } else if (!added && change instanceof BlockChange.BlockDropped c) {
        names.add(c.block());
      }
    }
    return names;
  }

  private static boolean startsAround(
      String grip, LocalDate day, List<PlanChange> all, boolean later) {
    return all.stream()
        .flatMap(c -> c instanceof PlanChange.GripStarts g ? Stream.of(g) : Stream.empty())
        .filter(g -> g.grip().name().equals(grip) && g.after().isAfter(g.before()) == later)
        .anyMatch(
            g -> {
              LocalDate first = later ? g.before() : g.after();
              LocalDate end = later ? g.after() : g.before();
              return !day.isBefore(first) && day.isBefore(end);
            });
  }
}
