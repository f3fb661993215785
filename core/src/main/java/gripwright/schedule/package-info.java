/**
 * A compiled plan for one athlete: dated sessions, weeks and tests, with the loads of every hold.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.schedule;

import org.jspecify.annotations.NullMarked;
