/** From a plan to dated sessions: expansion, prescription, progression and placement. */
@NullMarked
package gripwright.planning;

import org.jspecify.annotations.NullMarked;
