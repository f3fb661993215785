/**
 * A compiled plan for one athlete: dated sessions, weeks and tests, with the loads of every hold.
 */
@NullMarked
package gripwright.schedule;

import org.jspecify.annotations.NullMarked;
