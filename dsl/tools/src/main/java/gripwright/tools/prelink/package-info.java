/** Jars that start quickly because their call sites are linked at build time. */
@NullMarked
package gripwright.tools.prelink;

import org.jspecify.annotations.NullMarked;
