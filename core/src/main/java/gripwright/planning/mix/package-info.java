/** The choice among several grips of one line: a linear program over shares of its sets. */
@NullMarked
package gripwright.planning.mix;

import org.jspecify.annotations.NullMarked;
