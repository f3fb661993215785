/** Pictures of hands on an edge, as SVG. */
@NullMarked
package gripwright.export.picture;

import org.jspecify.annotations.NullMarked;
