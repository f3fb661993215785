/** Views of a schedule for rules, and the readers of their properties. */
@NullMarked
package gripwright.rule.view;

import org.jspecify.annotations.NullMarked;
