package gripwright.language.syntax;

/** A prerequisite of a grip. */
public sealed interface Need extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of prerequisite. */
  interface Visitor {
    /** Visits the required time of finger training. */
    void needTrained(NeedTrained need);

    /** Visits the required grade. */
    void needAbility(NeedAbility need);

    /** Visits the required time with another grip. */
    void needFamiliar(NeedFamiliar need);
  }

  /** Structured finger training for at least this long. */
  record NeedTrained(int id, Amount time) implements Need {
    @Override
    public void accept(Visitor visitor) {
      visitor.needTrained(this);
    }
  }

  /** Climbing at this grade at least. */
  record NeedAbility(int id, Expr.GradeLiteral grade) implements Need {
    @Override
    public void accept(Visitor visitor) {
      visitor.needAbility(this);
    }
  }

  /** Another grip trained for at least this long. */
  record NeedFamiliar(int id, Word grip, Amount time) implements Need {
    @Override
    public void accept(Visitor visitor) {
      visitor.needFamiliar(this);
    }
  }
}
