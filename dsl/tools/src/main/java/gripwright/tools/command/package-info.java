/** One class per command, which reads arguments and writes results and contains no other logic. */
@NullMarked
package gripwright.tools.command;

import org.jspecify.annotations.NullMarked;
