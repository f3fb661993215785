package gripwright.language.format;

import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.Trivia;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The text between two words of a file.
 *
 * @param trailing a comment on the line of the previous word
 * @param comments comments on lines of their own
 * @param blank whether a blank line comes right before the next word
 */
record Gap(Optional<String> trailing, List<Comment> comments, boolean blank) {

  /**
   * A comment on a line of its own.
   *
   * @param text with its {@code #}, without trailing blanks
   * @param blank whether a blank line comes right before it
   */
  record Comment(String text, boolean blank) {}

  /** Returns whether there is a comment between the two words. */
  boolean breaks() {
    return trailing.isPresent() || !comments.isEmpty();
  }

  static Gap between(@Nullable SyntaxToken before, SyntaxToken after) {
    List<Trivia> pieces = new ArrayList<>(after.leading());
    if (before != null) {
      pieces.addAll(0, before.trailing());
    }
    Optional<String> trailing = Optional.empty();
    List<Comment> comments = new ArrayList<>();
    int lines = before == null ? 1 : 0;
    for (Trivia piece : pieces) {
      if (piece.kind() == Trivia.Kind.WHITE_SPACE) {
        lines += lineEnds(piece.text());
      } else if (piece.kind() == Trivia.Kind.COMMENT) {
        String text = withoutBlanksAtEnd(piece.text());
        if (lines == 0 && trailing.isEmpty() && comments.isEmpty()) {
          trailing = Optional.of(text);
        } else {
          comments.add(new Comment(text, lines > 1));
        }
        lines = 0;
      }
    }
    return new Gap(trailing, List.copyOf(comments), lines > 1);
  }

  /** Counts line ends; a single carriage return is one too. */
  private static int lineEnds(String space) {
    int ends = 0;
    for (int i = 0; i < space.length(); i++) {
      char c = space.charAt(i);
      boolean alone = c == '\r' && (i + 1 == space.length() || space.charAt(i + 1) != '\n');
      if (c == '\n' || alone) {
        ends++;
      }
    }
    return ends;
  }

  private static String withoutBlanksAtEnd(String text) {
    int end = text.length();
    while (end > 0 && " \t\f".indexOf(text.charAt(end - 1)) >= 0) {
      end--;
    }
    return text.substring(0, end);
  }
}
