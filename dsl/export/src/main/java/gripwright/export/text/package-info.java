/**
 * Plain text for people: a season as a coach reads it, on a phone or a terminal.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.text;

import org.jspecify.annotations.NullMarked;
