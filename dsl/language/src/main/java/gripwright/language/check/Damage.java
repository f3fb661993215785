package gripwright.language.check;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.SessionPart;
import java.util.List;

/** Tells where something did not parse, so that nobody complains about what is missing there. */
final class Damage {

  private Damage() {}

  /**
   * Tells whether something in a plan did not parse.
   *
   * @param meter counts the statements that are looked at
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

  /** Tells whether something in the statements of a block did not parse. */
  static boolean in(List<BlockPart> parts) {
    for (BlockPart part : parts) {
      if (part instanceof BlockPart.SessionItem session
          && (session.damaged() || inSession(session.parts()))) {
        return true;
      }
      if (part instanceof BlockPart.BlockOnlyFor only && (only.damaged() || in(only.parts()))) {
        return true;
      }
    }
    return false;
  }

  private static boolean inSession(List<SessionPart> parts) {
    return parts.stream()
        .anyMatch(
            part ->
                part instanceof SessionPart.SessionOnlyFor only
                    && (only.damaged() || inSession(only.parts())));
  }
}
