/**
 * The entry point of the command line.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.tools;

import org.jspecify.annotations.NullMarked;
