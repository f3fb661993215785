/**
 * What a grip asks of tendons and pulleys: estimates with an interval, never measurements.
 *
 * <p>Where published values disagree, the parameter set is named and can be chosen.
 */
@NullMarked
package gripwright.tissue;

import org.jspecify.annotations.NullMarked;
