/**
 * Pictures of hands on an edge, as SVG.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.picture;

import org.jspecify.annotations.NullMarked;
