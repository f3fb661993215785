/**
 * Typed expressions: the tree, the properties they may name, and their evaluation.
 *
 * <p>Stability: may change before 2.0.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.expression;

import org.jspecify.annotations.NullMarked;
