/** Comparisons of protocols for one athlete. */
@NullMarked
package gripwright.compare;

import org.jspecify.annotations.NullMarked;
