package gripwright.language.check;

import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Syntax;

/** Quotes parts of a file as written, in one line and shortened if long. */
final class ExpressionText {

  private static final int LONGEST = 60;

  private final ParsedFile file;

  ExpressionText(ParsedFile file) {
    this.file = file;
  }

  String of(Syntax part) {
    String text = file.source().text(file.span(part.id())).strip().replaceAll("\\s+", " ");
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 3) + "...";
  }
}
