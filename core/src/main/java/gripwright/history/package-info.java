/**
 * The log of an athlete beside a plan: read once, and asked for what was done, missed, felt and
 * tested.
 */
@NullMarked
package gripwright.history;

import org.jspecify.annotations.NullMarked;
