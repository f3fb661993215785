/**
 * Tests of strength, how long a load can be held, what depth and posture do to it, and the map of
 * what all tests together say of every grip.
 */
@NullMarked
package gripwright.strength;

import org.jspecify.annotations.NullMarked;
