/**
 * Climbing grades on the published scales, and one number to compare them by.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.ability;

import org.jspecify.annotations.NullMarked;
