/** The entry point of the command line. */
@NullMarked
package gripwright.tools;

import org.jspecify.annotations.NullMarked;
