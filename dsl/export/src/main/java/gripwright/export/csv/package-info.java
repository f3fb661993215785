/**
 * Core objects as CSV by RFC 4180.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.csv;

import org.jspecify.annotations.NullMarked;
