/** The hand: fingers, joints, bones and what was measured of them. */
@NullMarked
package gripwright.hand;

import org.jspecify.annotations.NullMarked;
