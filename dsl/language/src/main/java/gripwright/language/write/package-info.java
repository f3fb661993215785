/**
 * Core objects as text of the plan language. {@link gripwright.language.PlanFile} formats the text
 * and reads it back to verify it.
 */
@NullMarked
package gripwright.language.write;

import org.jspecify.annotations.NullMarked;
