/** Tests of strength, how long a load can be held, and the maximum that a test supports. */
@NullMarked
package gripwright.strength;

import org.jspecify.annotations.NullMarked;
