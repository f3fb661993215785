package gripwright.language.syntax;

import java.util.List;

/** What an exercise is done on. */
public sealed interface Target extends Syntax {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of target.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits one grip. */
    R onGrip(OnGrip target);

    /** Visits a choice of grips. */
    R bestOf(BestOf target);
  }

  /** {@code on half-crimp}. */
  record OnGrip(int id, Word grip) implements Target {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.onGrip(this);
    }
  }

  /** {@code on best of half-crimp, back-three}: the grip is chosen from these. */
  record BestOf(int id, List<Word> grips) implements Target {
    /** Copies the lists. */
    public BestOf {
      grips = List.copyOf(grips);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bestOf(this);
    }
  }
}
