package gripwright.language.resolve;

import gripwright.language.source.Span;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;

/**
 * A declaration and its file.
 *
 * @param file the file
 * @param declaration the declaration
 * @param name its name
 * @param misnamed true if the name was reported as a duplicate or as one of the catalogue; the
 *     declaration is still checked, but no object is built
 * @param <D> the kind of declaration
 */
public record Declared<D extends Declaration>(
    ParsedFile file, D declaration, Word name, boolean misnamed) {

  /** Returns the place of a part of the declaration. */
  public Span span(Syntax part) {
    return file.span(part.id());
  }

  /** Returns this declaration with a name that was reported. */
  Declared<D> withWrongName() {
    return new Declared<>(file, declaration, name, true);
  }
}
