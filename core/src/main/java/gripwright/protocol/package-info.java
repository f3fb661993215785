/**
 * Protocols: levels, holds, rests and repeats, with named parameters; and schemes, their bound
 * form.
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
package gripwright.protocol;

import org.jspecify.annotations.NullMarked;
