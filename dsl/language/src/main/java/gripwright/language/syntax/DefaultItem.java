package gripwright.language.syntax;

/** A statement of a plan, block or session that applies to everything inside it. */
public sealed interface DefaultItem extends PlanItem, BlockPart, SessionPart
    permits WarmUp, RestBetween, Weigh {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default void accept(PlanItem.Visitor visitor) {
    visitor.defaultItem(this);
  }

  @Override
  default void accept(BlockPart.Visitor visitor) {
    visitor.defaultItem(this);
  }

  @Override
  default void accept(SessionPart.Visitor visitor) {
    visitor.defaultItem(this);
  }

  /**
   * One method for each kind of statement.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits the length of the warm-up. */
    R warmUp(WarmUp item);

    /** Visits the rest between exercises. */
    R restBetween(RestBetween item);

    /** Visits the weights for choosing grips. */
    R weigh(Weigh item);
  }
}
