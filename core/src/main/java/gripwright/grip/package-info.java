/**
 * Grips: which fingers, in which posture, with which prerequisites; and a grip set up on an edge.
 */
@NullMarked
package gripwright.grip;

import org.jspecify.annotations.NullMarked;
