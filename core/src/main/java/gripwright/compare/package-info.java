/** Protocols side by side on one athlete. */
@NullMarked
package gripwright.compare;

import org.jspecify.annotations.NullMarked;
