/**
 * Planning a trial: how many participants, what change of one participant can be told from noise,
 * and who is allocated to which arm.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.trial;

import org.jspecify.annotations.NullMarked;
