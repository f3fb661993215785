/**
 * Core objects as text of the plan language. What is written here is laid out and read back by
 * {@link gripwright.language.PlanFile}; by itself it is neither.
 */
@NullMarked
package gripwright.language.write;

import org.jspecify.annotations.NullMarked;
