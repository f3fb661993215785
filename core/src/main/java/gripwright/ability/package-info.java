/**
 * Climbing grades on the published scales, and one number to compare them by.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument.
 */
@NullMarked
package gripwright.ability;

import org.jspecify.annotations.NullMarked;
