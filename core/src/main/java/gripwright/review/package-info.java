/**
 * The review of a log: planned and completed sessions, load, work by grip and finger, change
 * between tests, pain, and next steps for a coach.
 *
 * <p>Everything is calculated from the log up to one day, and from plans if there are any. The
 * order in which lines of a log are written does not matter.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.review;

import org.jspecify.annotations.NullMarked;
