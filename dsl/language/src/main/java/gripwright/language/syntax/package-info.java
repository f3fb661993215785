/**
 * Text to syntax: a lossless tree that holds every character of a file, broken or not, and records
 * that say what the file declares. One layer serves the compiler, the formatter and editors alike.
 *
 * <p>{@link gripwright.language.syntax.Reader} is the way in.
 */
@NullMarked
package gripwright.language.syntax;

import org.jspecify.annotations.NullMarked;
