package gripwright.language.syntax;

import java.util.List;

/** What an exercise is done on. */
public sealed interface Target extends Syntax {

  /** {@code on half-crimp}. */
  record OnGrip(int id, Word grip) implements Target {}

  /** {@code on best of half-crimp, back-three}: the grip is chosen from these. */
  record BestOf(int id, List<Word> grips) implements Target {
    /** Copies the lists. */
    public BestOf {
      grips = List.copyOf(grips);
    }
  }
}
