package gripwright.language.syntax;

import java.util.List;

/** {@code weigh match 40 %, margin 60 %}: what counts how much when a grip is chosen. */
public record Weigh(int id, List<Share> weights) implements PlanItem, BlockPart, SessionPart {
  /** Copies the lists. */
  public Weigh {
    weights = List.copyOf(weights);
  }
}
