/** Starts a program, and deletes a class archive that the JVM can't use. */
@NullMarked
package gripwright.launcher;

import org.jspecify.annotations.NullMarked;
