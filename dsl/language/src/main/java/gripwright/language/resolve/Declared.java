package gripwright.language.resolve;

import gripwright.language.source.Span;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;

/**
 * A declaration and the file it stands in.
 *
 * @param file the file
 * @param declaration the declaration
 * @param name the word that names it
 * @param misnamed true if the name was reported: doubled, or one of the catalogue's; the
 *     declaration is still checked, and nothing is made of it
 * @param <D> the kind of declaration
 */
public record Declared<D extends Declaration>(
    ParsedFile file, D declaration, Word name, boolean misnamed) {

  /** Returns where a part of the declaration stands. */
  public Span span(Syntax part) {
    return file.span(part.id());
  }

  /** Returns this declaration with a name that was reported. */
  Declared<D> withWrongName() {
    return new Declared<>(file, declaration, name, true);
  }
}
