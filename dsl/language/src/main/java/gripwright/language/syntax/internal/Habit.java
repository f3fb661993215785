package gripwright.language.syntax.internal;

import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripParser;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/**
 * A way of writing that is right elsewhere and is told by its own name rather than by what could
 * have stood there.
 *
 * @param kind the argument that chooses the wording: {@code decimal}, {@code remark} or {@code
 *     level-word}
 * @param written what would be right, or the word it is about
 * @param span the characters
 */
record Habit(String kind, String written, Span span) {

  /** Returns the habit that shows at a token which does not fit, or null. */
  static @Nullable Habit at(Token token, Scan scan) {
    String text = scan.source().text();
    int at = scan.start(token);
    Token before = scan.before(token);
    if (token.getType() == GripParser.COMMA && isDecimal(text, at)) {
      return decimal(text, at);
    }
    if (before != null && before.getType() == GripParser.COMMA && isDecimal(text, at - 1)) {
      return decimal(text, at - 1);
    }
    if (text.startsWith("//", at)) {
      return new Habit("remark", "#", new Span(at, 2));
    }
    if (before != null && isLevelWord(before) && token.getType() == GripParser.WORD) {
      return scan.lineOpener(token).getType() == GripParser.HOLD
          ? new Habit("level-word", scan.text(before), scan.span(token))
          : null;
    }
    return null;
  }

  private static boolean isLevelWord(Token token) {
    return token.getType() == GripParser.RESERVE || token.getType() == GripParser.EFFORT;
  }

  private static boolean isDecimal(String text, int comma) {
    return comma > 0
        && comma + 1 < text.length()
        && text.charAt(comma) == ','
        && isDigit(text.charAt(comma - 1))
        && isDigit(text.charAt(comma + 1));
  }

  private static Habit decimal(String text, int comma) {
    int start = comma;
    while (start > 0 && isDigit(text.charAt(start - 1))) {
      start--;
    }
    int end = comma + 1;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    String point = text.substring(start, comma) + "." + text.substring(comma + 1, end);
    return new Habit("decimal", point, Span.between(start, end));
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }
}
