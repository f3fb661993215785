/**
 * Files as text: where they come from, how much of them is read, where lines begin, and stretches
 * of characters in them.
 *
 * <p>{@link gripwright.language.source.Folder} is the only class of the language that reads the
 * text of files.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.language.source;

import org.jspecify.annotations.NullMarked;
