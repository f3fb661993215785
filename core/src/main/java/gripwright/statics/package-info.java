/**
 * One finger in balance: moment arms of the flexor tendons, what they pull for a load on the pad,
 * and what is left at the knuckle.
 *
 * <p>Where published values disagree, the set is named and can be chosen.
 */
@NullMarked
package gripwright.statics;

import org.jspecify.annotations.NullMarked;
