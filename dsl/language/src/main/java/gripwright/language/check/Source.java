package gripwright.language.check;

import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;

/**
 * A place in a text.
 *
 * @param file the file
 * @param span the characters
 */
public record Source(SourceFile file, Span span) {}
