package gripwright.language.syntax;

import gripwright.language.source.Span;
import java.util.List;

/**
 * A word, number, text or sign, with the white space and comments around it. What follows on the
 * same line belongs to the token; everything else belongs to the next one. Immutable.
 *
 * @param kind its kind
 * @param text as written
 * @param readAs how it was read: a keyword or sign in its correct form, even if it is misspelt;
 *     else the text
 * @param span its place
 * @param skipped whether the parser skipped it because of a mistake
 * @param leading white space and comments before it
 * @param trailing white space and comments after it on its line
 */
public record SyntaxToken(
    TokenKind kind,
    String text,
    String readAs,
    Span span,
    boolean skipped,
    List<Trivia> leading,
    List<Trivia> trailing)
    implements SyntaxElement {

  /** Copies the lists. */
  public SyntaxToken {
    leading = List.copyOf(leading);
    trailing = List.copyOf(trailing);
  }

  void appendTo(StringBuilder text) {
    leading.forEach(t -> text.append(t.text()));
    text.append(this.text);
    trailing.forEach(t -> text.append(t.text()));
  }
}
