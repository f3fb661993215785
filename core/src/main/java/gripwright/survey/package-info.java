/** Reports on one athlete: every grip on these hands, and what tests say of strength. */
@NullMarked
package gripwright.survey;

import org.jspecify.annotations.NullMarked;
