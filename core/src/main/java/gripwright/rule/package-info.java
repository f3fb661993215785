/**
 * Rules as typed expressions: the built-in ones and a coach's own, and their waivers.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.rule;

import org.jspecify.annotations.NullMarked;
