/** Rules as typed expressions: the built-in ones and a coach's own, and their waivers. */
@NullMarked
package gripwright.rule;

import org.jspecify.annotations.NullMarked;
