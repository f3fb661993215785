package gripwright.language.check;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.SessionPart;
import java.util.List;

/** Finds parts that could not be parsed, so that nothing is reported as missing there. */
final class Damage {

  private Damage() {}

  /**
   * Returns whether something in a plan could not be parsed.
   *
   * @param meter counts the statements visited
   */
  static boolean in(Declaration.Plan plan, Meter meter) {
    meter.take(Limit.WORK, plan.items().size());
    return plan.damaged()
        || plan.items().stream()
            .anyMatch(
                item ->
                    item instanceof PlanItem.BlockItem block
                        && (block.damaged() || in(block.parts())));
  }

  /** Returns whether something in the statements of a block could not be parsed. */
  static boolean in(List<BlockPart> parts) {
    BlockParts sorted = BlockParts.of(parts);
    return sorted.sessions().stream()
            .anyMatch(session -> session.damaged() || inSession(session.parts()))
        || sorted.onlyFor().stream().anyMatch(only -> only.damaged() || in(only.parts()));
  }

  private static boolean inSession(List<SessionPart> parts) {
    return SessionParts.of(parts).onlyFor().stream()
        .anyMatch(only -> only.damaged() || inSession(only.parts()));
  }
}
