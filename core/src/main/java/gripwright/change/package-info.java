/**
 * The differences between two schedules as typed changes, for logs and comparisons.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.change;

import org.jspecify.annotations.NullMarked;
