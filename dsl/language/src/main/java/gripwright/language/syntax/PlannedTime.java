package gripwright.language.syntax;

import java.util.List;

/** When a planned test is due. */
public sealed interface PlannedTime extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of time. */
  interface Visitor {
    /** Visits regular tests. */
    void every(Every time);

    /** Visits weeks of the plan. */
    void inWeeks(InWeeks time);

    /** Visits the week before the plan. */
    void beforeFirst(BeforeFirst time);

    /** Visits the week after the plan. */
    void afterLast(AfterLast time);

    /** Visits a week some time after the plan. */
    void later(Later time);
  }

  /** {@code every 4 weeks}. */
  record Every(int id, Amount weeks) implements PlannedTime {
    @Override
    public void accept(Visitor visitor) {
      visitor.every(this);
    }
  }

  /** {@code in week 8, 12}. */
  record InWeeks(int id, List<Amount> weeks) implements PlannedTime {
    /** Copies the list. */
    public InWeeks {
      weeks = List.copyOf(weeks);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.inWeeks(this);
    }
  }

  /** {@code before the first week}. */
  record BeforeFirst(int id) implements PlannedTime {
    @Override
    public void accept(Visitor visitor) {
      visitor.beforeFirst(this);
    }
  }

  /** {@code after the last week}. */
  record AfterLast(int id) implements PlannedTime {
    @Override
    public void accept(Visitor visitor) {
      visitor.afterLast(this);
    }
  }

  /** {@code 6 weeks later}. */
  record Later(int id, Amount weeks) implements PlannedTime {
    @Override
    public void accept(Visitor visitor) {
      visitor.later(this);
    }
  }
}
