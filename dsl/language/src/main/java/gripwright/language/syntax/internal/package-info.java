/**
 * How text becomes a tree and the tree becomes records. The parser generator is used in this
 * package only, so that it can be replaced.
 */
@NullMarked
package gripwright.language.syntax.internal;

import org.jspecify.annotations.NullMarked;
