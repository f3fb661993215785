/** The entry point of planning: plans, athletes, logs and rules in, compiled plans out. */
@NullMarked
package gripwright.season;

import org.jspecify.annotations.NullMarked;
