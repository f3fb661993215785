/**
 * How a loaded hand lies on an edge: the pose that meets what a grip asks and in which the flexors
 * hold the knuckles.
 *
 * <p>Null is never accepted: a {@link NullPointerException} names the argument.
 */
@NullMarked
package gripwright.pose;

import org.jspecify.annotations.NullMarked;
