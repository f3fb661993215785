/**
 * From checked declarations to one model: logs of an athlete are merged, and each place in the
 * model is mapped to its place in the text.
 */
@NullMarked
package gripwright.language.build;

import org.jspecify.annotations.NullMarked;
