package gripwright.language.syntax;

/**
 * A named value, such as {@code level 88 % max}: a default of a protocol or what an exercise sets
 * instead.
 */
public record Parameter(int id, Word name, Expr value) implements Syntax {}
