package gripwright.language.syntax;

/** Something an athlete must bring before a grip is trained. */
public sealed interface Need extends Syntax {

  /** Structured finger training for at least this long. */
  record NeedTrained(int id, Amount time) implements Need {}

  /** Climbing at this grade at least. */
  record NeedAbility(int id, Expr.GradeLiteral grade) implements Need {}

  /** Another grip trained for at least this long. */
  record NeedFamiliar(int id, Word grip, Amount time) implements Need {}
}
