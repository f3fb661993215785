/** Jars that start quickly because their call sites are linked at build time. */
@NullMarked
package gripwright.launcher.prelink;

import org.jspecify.annotations.NullMarked;
