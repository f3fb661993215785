/**
 * One layout for every plan file. It uses only the lossless tree, so that a file with unknown names
 * can be formatted too.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.language.format;

import org.jspecify.annotations.NullMarked;
