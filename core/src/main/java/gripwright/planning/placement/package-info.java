/** Days for sessions and tests: the search, its bound, and what conflicts where no day is found. */
@NullMarked
package gripwright.planning.placement;

import org.jspecify.annotations.NullMarked;
