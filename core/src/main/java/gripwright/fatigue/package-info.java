/**
 * How tired the fingers get in a session: the three-compartment model with rest multiplier. Its
 * numbers are estimates with an interval, never measurements.
 *
 * <p>Loads are fractions of the greatest voluntary force of fresh fingers (MVC), which is more than
 * the load that can be held for 7 s; {@link gripwright.fatigue.FatigueRates#ofMvc} converts. Rates
 * are named sets with a valid range of loads; where ranges disagree, one set is chosen by name.
 */
@NullMarked
package gripwright.fatigue;

import org.jspecify.annotations.NullMarked;
