/**
 * Reports on one athlete: every grip on the athlete's hands, and strength by the tests.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.survey;

import org.jspecify.annotations.NullMarked;
