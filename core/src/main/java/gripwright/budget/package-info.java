/**
 * How much work a host allows: a {@link gripwright.budget.Budget} describes it, a {@link
 * gripwright.budget.Meter} counts the work of one run. The limits are counts, so that the same
 * input ends at the same place on every machine; time and cancellation come from the host, since
 * the library has no clock.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.budget;

import org.jspecify.annotations.NullMarked;
