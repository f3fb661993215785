/** What the coach wrote, and the dated sessions that came of it. */
@NullMarked
package gripwright.plan;

import org.jspecify.annotations.NullMarked;
