/**
 * The changes in meaning between two states of the same plans: what an athlete would notice, not a
 * text editor.
 */
@NullMarked
package gripwright.diff;

import org.jspecify.annotations.NullMarked;
