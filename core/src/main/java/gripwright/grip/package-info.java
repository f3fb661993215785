/**
 * Grips: which fingers, in which posture, with which prerequisites; and a grip set up on an edge.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument. A value outside its
 * {@link gripwright.quantity.Range} is refused by an {@link IllegalArgumentException} that quotes
 * the value and the range.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.grip;

import org.jspecify.annotations.NullMarked;
