/**
 * Static balance of one finger: moment arms and tensions of the flexor tendons for a load on the
 * pad, and the unbalanced moment at the knuckle.
 *
 * <p>If published values disagree, each set has a name and can be chosen.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.statics;

import org.jspecify.annotations.NullMarked;
