/** The start of a program by the launcher. */
@NullMarked
package gripwright.launcher;

import org.jspecify.annotations.NullMarked;
