/** Typed expressions: the tree, the properties they may name, and their evaluation. */
@NullMarked
package gripwright.expression;

import org.jspecify.annotations.NullMarked;
