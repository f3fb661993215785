/**
 * JSON for programs. Field names carry units; numbers are rounded so that equal plans give equal
 * bytes on every machine. The schemas (JSON Schema 2020-12) are in {@code docs/schema}.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.json;

import org.jspecify.annotations.NullMarked;
