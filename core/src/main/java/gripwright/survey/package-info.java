/** Reports on one athlete: every grip on the athlete's hands, and strength by the tests. */
@NullMarked
package gripwright.survey;

import org.jspecify.annotations.NullMarked;
