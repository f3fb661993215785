/**
 * Tests of strength, how long a load can be held, the effect of depth and posture, and the strength
 * map that estimates every grip from all tests.
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
package gripwright.strength;

import org.jspecify.annotations.NullMarked;
