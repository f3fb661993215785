/**
 * Plans as written by a coach.
 *
 * <p>In these types ({@link Plan}, {@link Block}, {@link SessionPlan}, {@link Exercise}, {@link
 * Advance}) null is never accepted: a {@link NullPointerException} names the argument. A value
 * outside its {@link gripwright.quantity.Range} is refused by an {@link IllegalArgumentException}
 * that quotes the value and the range. A required value that is empty, or a name of something
 * missing, is refused in the same way.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.plan;

import org.jspecify.annotations.NullMarked;
