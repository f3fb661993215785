/**
 * Findings with their place in a file, their wording, and their text form.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.language.finding;

import org.jspecify.annotations.NullMarked;
