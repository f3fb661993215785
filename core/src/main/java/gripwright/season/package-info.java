/**
 * The entry point of planning: plans, athletes, logs and rules in, compiled plans out.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.season;

import org.jspecify.annotations.NullMarked;
