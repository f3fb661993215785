/**
 * The changes in meaning between two states of the same plans: what an athlete would notice, not a
 * text editor.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.diff;

import org.jspecify.annotations.NullMarked;
