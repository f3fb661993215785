/**
 * The sessions of an athlete as a calendar by RFC 5545.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.calendar;

import org.jspecify.annotations.NullMarked;
