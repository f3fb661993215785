/**
 * Tests of strength, how long a load can be held, what depth and posture do to it, and the map of
 * what all tests together say of every grip.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument. A value outside its
 * {@link gripwright.quantity.Range} is refused by an {@link IllegalArgumentException} that quotes
 * the value and the range.
 */
@NullMarked
package gripwright.strength;

import org.jspecify.annotations.NullMarked;
