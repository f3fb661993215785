/** The differences between two schedules as typed changes, for logs and comparisons. */
@NullMarked
package gripwright.change;

import org.jspecify.annotations.NullMarked;
