package gripwright.language.syntax;

import gripwright.language.source.Span;
import java.util.List;

/**
 * A word, number, text or sign, with the white space and comments around it. What follows on the
 * same line trails the token; everything else leads the next one. Immutable.
 *
 * @param kind what it is
 * @param text as it is written
 * @param readAs what it counts as: a keyword or sign in its proper form, even where it is misspelt;
 *     else the text
 * @param span where it stands
 * @param skipped whether it was left out in reading, since something was wrong there
 * @param leading what stands before it
 * @param trailing what follows it on its line
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
