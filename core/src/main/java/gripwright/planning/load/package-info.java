/** From a level to a load that the equipment can build, and why it is that load. */
@NullMarked
package gripwright.planning.load;

import org.jspecify.annotations.NullMarked;
