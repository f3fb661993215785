/** What differs between two schedules, as typed changes; it serves logs and comparisons. */
@NullMarked
package gripwright.change;

import org.jspecify.annotations.NullMarked;
