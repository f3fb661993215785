/** Core objects as CSV by RFC 4180. */
@NullMarked
package gripwright.export.csv;

import org.jspecify.annotations.NullMarked;
