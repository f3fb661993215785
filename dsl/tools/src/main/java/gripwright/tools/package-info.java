/** The way in from a shell. */
@NullMarked
package gripwright.tools;

import org.jspecify.annotations.NullMarked;
