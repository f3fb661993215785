/** Steps from week to week: what advances, what is eased, and what prevents a step. */
@NullMarked
package gripwright.planning.progression;

import org.jspecify.annotations.NullMarked;
