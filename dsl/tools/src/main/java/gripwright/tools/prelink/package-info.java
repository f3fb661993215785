/** Jars that start quickly: what Java links when a program runs, linked beforehand. */
@NullMarked
package gripwright.tools.prelink;

import org.jspecify.annotations.NullMarked;
