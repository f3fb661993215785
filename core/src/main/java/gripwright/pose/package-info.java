/**
 * The pose of a loaded hand on an edge, which meets the targets of a grip and balances the
 * knuckles.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument.
 */
@NullMarked
package gripwright.pose;

import org.jspecify.annotations.NullMarked;
