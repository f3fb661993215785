/**
 * What changed in meaning between two states of the same plans: what an athlete would notice, not
 * what an editor would.
 */
@NullMarked
package gripwright.diff;

import org.jspecify.annotations.NullMarked;
