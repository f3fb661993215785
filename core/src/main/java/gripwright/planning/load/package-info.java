/** Turns levels into loads that the equipment can build, with the derivation of each load. */
@NullMarked
package gripwright.planning.load;

import org.jspecify.annotations.NullMarked;
