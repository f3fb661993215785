/**
 * The log of an athlete, read for a plan: trained and missed sessions, pain and tests.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.history;

import org.jspecify.annotations.NullMarked;
