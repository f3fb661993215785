package gripwright.language.format;

import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.TokenKind;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A word, number, text or sign of a statement.
 *
 * @param token as written
 * @param in the innermost part of the statement that contains it
 * @param gap the text before it
 */
record Word(SyntaxToken token, NodeKind in, Gap gap) {

  /** Whether a line may be broken before a word. */
  enum Break {
    /** Not at all. */
    NEVER,
    /** If the clause it belongs to is too long for a line. */
    ITEM,
    /** If the statement is too long for a line. */
    CLAUSE
  }

  /** Words that begin a part of a statement. */
  private static final Set<String> CLAUSES =
      Set.of("with", "on", "resting", "then", "when", "because", "rehabilitation", "cleared");

  private static final Set<NodeKind> CALLS =
      EnumSet.of(NodeKind.AGGREGATE, NodeKind.COUNT, NodeKind.QUANTIFIER);
  private static final Set<NodeKind> SIGNED = EnumSet.of(NodeKind.AMOUNT, NodeKind.UNARY);
  private static final Set<NodeKind> JOINED =
      EnumSet.of(NodeKind.EXPR, NodeKind.CONJUNCTION, NodeKind.CONDITION);

  String text() {
    return token.text();
  }

  private boolean is(String sign) {
    return token.kind() == TokenKind.SIGN && token.text().equals(sign);
  }

  private boolean isKeyword(String... words) {
    return token.kind() == TokenKind.KEYWORD && Set.of(words).contains(token.text());
  }

  private boolean beginsClause() {
    boolean means = isKeyword("mean") && in == NodeKind.SERIES_TEST;
    return means || (token.kind() == TokenKind.KEYWORD && CLAUSES.contains(token.text()));
  }

  /** Returns whether there is a space between the previous word and this one. */
  boolean spaced(@Nullable Word before) {
    if (before == null || is(",") || is(")") || is(":") || is(".")) {
      return false;
    }
    if (before.is(":") && before.in == NodeKind.CLOCK) {
      return false;
    }
    if (before.is("(") || before.is(".") || (before.is("-") && SIGNED.contains(before.in))) {
      return false;
    }
    return !(is("(") && CALLS.contains(in));
  }

  /**
   * Returns whether a line may be broken before this word.
   *
   * @param before the previous word
   * @param second whether it follows the first word of its statement
   */
  Break mayBreak(Word before, boolean second) {
    if (second || is("{")) {
      return Break.NEVER;
    }
    if (beginsClause()) {
      return Break.CLAUSE;
    }
    if (token.kind() == TokenKind.TEXT
        && before.token.kind() != TokenKind.SIGN
        && !before.beginsClause()) {
      return Break.CLAUSE;
    }
    boolean joins = isKeyword("and", "or") && JOINED.contains(in);
    boolean listed = before.is(",") || (before.is(":") && before.in == NodeKind.DONE_LINE);
    return joins || listed ? Break.ITEM : Break.NEVER;
  }
}
