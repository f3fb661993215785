/**
 * Comparisons of protocols for one athlete.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.compare;

import org.jspecify.annotations.NullMarked;
