/**
 * Quantities with their units: angle, length, load, force, percent and time.
 *
 * <p>A kilogram of load and a newton of force are different dimensions here: a coach who writes one
 * where the other is meant has made a mistake that is worth hearing about.
 */
@NullMarked
package gripwright.quantity;

import org.jspecify.annotations.NullMarked;
