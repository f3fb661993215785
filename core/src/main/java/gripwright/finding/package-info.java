/**
 * Findings as data: a stable code, the severity, the place in the model, and the arguments of the
 * sentence. The wording is in another package.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.finding;

import org.jspecify.annotations.NullMarked;
