/**
 * Core objects as text of the plan language. {@link gripwright.language.PlanFile} formats the text
 * and reads it back to verify it; {@link gripwright.language.write.Unwritable} says what the
 * language can't express.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.language.write;

import org.jspecify.annotations.NullMarked;
