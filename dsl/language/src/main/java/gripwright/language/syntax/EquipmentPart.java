package gripwright.language.syntax;

import java.util.List;

/** A statement about equipment. */
public sealed interface EquipmentPart extends Syntax {

  /** {@code edges 20 mm, 15 mm}: the edges owned. */
  record Edges(int id, List<Amount> depths) implements EquipmentPart {
    /** Copies the lists. */
    public Edges {
      depths = List.copyOf(depths);
    }
  }

  /** {@code added 1.25 kg steps to 60 kg}, or {@code assist}: weights that can be made up. */
  record LoadSteps(int id, Word kind, Amount step, Amount limit) implements EquipmentPart {}
}
