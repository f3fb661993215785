package gripwright.language.syntax;

/** A statement of a planned test. */
public sealed interface TestPart extends Syntax
    permits Note,
        WarmUp,
        SessionPart.DoItem,
        TestPart.Attempts,
        TestPart.AttemptsCount,
        TestPart.Rested,
        OnlyOn,
        OnlyAt {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a test. */
  interface Visitor {
    /** Visits a note. */
    void note(Note part);

    /** Visits the warm-up. */
    void warmUp(WarmUp part);

    /** Visits an exercise of the warm-up. */
    void doItem(SessionPart.DoItem part);

    /** Visits the attempts. */
    void attempts(Attempts part);

    /** Visits which attempts count. */
    void attemptsCount(AttemptsCount part);

    /** Visits the rest before the test. */
    void rested(Rested part);

    /** Visits the weekdays. */
    void onlyOn(OnlyOn part);

    /** Visits the places that the test may be at. */
    void onlyAt(OnlyAt part);
  }

  /** {@code attempts 3 resting 5 min}: how often each setup is tried. */
  record Attempts(int id, Amount number, Amount resting) implements TestPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.attempts(this);
    }
  }

  /** {@code best counts} or {@code mean counts}: which attempts count. */
  record AttemptsCount(int id, boolean best) implements TestPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.attemptsCount(this);
    }
  }

  /** {@code rested 72 h}: time without hard work before the test. */
  record Rested(int id, Amount time) implements TestPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.rested(this);
    }
  }
}
