/** Who a plan is for: history, injuries, days, equipment and level. */
@NullMarked
package gripwright.athlete;

import org.jspecify.annotations.NullMarked;
