/**
 * Training, tests, pain and body mass as dated entries.
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
package gripwright.log;

import org.jspecify.annotations.NullMarked;
