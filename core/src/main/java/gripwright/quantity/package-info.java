/**
 * Quantities with their units: angle, length, load, force, percent and time.
 *
 * <p>A kilogram of load and a newton of force are different dimensions here: a plan that uses one
 * where the other is meant has a mistake, which is reported.
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
package gripwright.quantity;

import org.jspecify.annotations.NullMarked;
