/** A schedule as rules see it, and how each property of it is read. */
@NullMarked
package gripwright.rule.view;

import org.jspecify.annotations.NullMarked;
