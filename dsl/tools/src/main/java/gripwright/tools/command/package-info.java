/** One class per command; they read arguments and write results, and decide nothing else. */
@NullMarked
package gripwright.tools.command;

import org.jspecify.annotations.NullMarked;
