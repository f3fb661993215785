/**
 * Parses text into a tree and reads records from the tree. Only this package uses the parser
 * generator, so that it can be replaced.
 */
@NullMarked
package gripwright.language.syntax.internal;

import org.jspecify.annotations.NullMarked;
