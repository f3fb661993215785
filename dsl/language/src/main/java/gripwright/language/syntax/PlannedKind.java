package gripwright.language.syntax;

/** What is done in a planned test. */
public sealed interface PlannedKind extends Syntax {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a load for a set time. */
    R holdKind(HoldKind kind);

    /** Visits a load to failure. */
    R failureKind(FailureKind kind);

    /** Visits repeated all-out holds. */
    R seriesKind(SeriesKind kind);
  }

  /** {@code hold 7 s}. */
  record HoldKind(int id, Amount time) implements PlannedKind {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.holdKind(this);
    }
  }

  /** {@code to-failure at 60 % max}. */
  record FailureKind(int id, Expr level) implements PlannedKind {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.failureKind(this);
    }
  }

  /** {@code series 24 x 7 s / 3 s}. */
  record SeriesKind(int id, Amount holds, Amount work, Amount rest) implements PlannedKind {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.seriesKind(this);
    }
  }
}
