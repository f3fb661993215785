/**
 * What a log says: sessions against the plan, load, work by grip and finger, change between tests,
 * pain, and what a coach would do next.
 *
 * <p>Everything is computed from the log up to one day, and from plans where there are any. The
 * order in which lines of a log are written plays no part.
 */
@NullMarked
package gripwright.review;

import org.jspecify.annotations.NullMarked;
