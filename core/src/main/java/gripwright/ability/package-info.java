/** Climbing grades on the published scales, and one number to compare them by. */
@NullMarked
package gripwright.ability;

import org.jspecify.annotations.NullMarked;
