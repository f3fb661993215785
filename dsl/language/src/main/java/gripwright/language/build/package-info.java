/**
 * From checked declarations to one model: logs of an athlete are merged, and every place of the
 * model is found again in the text.
 */
@NullMarked
package gripwright.language.build;

import org.jspecify.annotations.NullMarked;
