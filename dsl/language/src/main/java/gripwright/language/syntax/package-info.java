/**
 * Text to syntax: a lossless tree with every character of a file, with or without mistakes, and
 * records that say what the file declares. One layer serves the compiler, the formatter and editors
 * alike.
 *
 * <p>{@link gripwright.language.syntax.Reader} is the entry point.
 */
@NullMarked
package gripwright.language.syntax;

import org.jspecify.annotations.NullMarked;
