/**
 * What the coach wrote, and the dated sessions that came of it.
 *
 * <p>In what a coach writes ({@link Plan}, {@link Block}, {@link SessionPlan}, {@link Exercise},
 * {@link Advance}) null is never accepted: a {@link NullPointerException} names the argument. A
 * value outside its {@link gripwright.quantity.Range} is refused by an {@link
 * IllegalArgumentException} that quotes the value and the range. What is empty that has to have
 * something in it, or is named and not there, is refused alike.
 */
@NullMarked
package gripwright.plan;

import org.jspecify.annotations.NullMarked;
