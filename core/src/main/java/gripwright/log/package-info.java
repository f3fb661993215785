/** What was done, tested and felt, as dated entries. */
@NullMarked
package gripwright.log;

import org.jspecify.annotations.NullMarked;
