package gripwright.language.syntax;

import java.util.List;

/** A statement about equipment. */
public sealed interface EquipmentPart extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement about equipment. */
  interface Visitor {
    /** Visits edges. */
    void edges(Edges part);

    /** Visits weights. */
    void loadSteps(LoadSteps part);
  }

  /** {@code edges 20 mm, 15 mm}: the edges owned. */
  record Edges(int id, List<Amount> depths) implements EquipmentPart {
    /** Copies the lists. */
    public Edges {
      depths = List.copyOf(depths);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.edges(this);
    }
  }

  /** {@code added 1.25 kg steps to 60 kg}, or {@code assist}: weights that can be made up. */
  record LoadSteps(int id, Word kind, Amount step, Amount limit) implements EquipmentPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.loadSteps(this);
    }
  }
}
