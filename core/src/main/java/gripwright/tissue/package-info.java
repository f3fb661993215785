/**
 * What a grip asks of tendons and pulleys: estimates with an interval, never measurements.
 *
 * <p>Where published values disagree, the parameter set is named and can be chosen.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.tissue;

import org.jspecify.annotations.NullMarked;
