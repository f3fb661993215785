/**
 * Compiled plans as data for a study: tidy tables, and a description of the methods.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.export.study;

import org.jspecify.annotations.NullMarked;
