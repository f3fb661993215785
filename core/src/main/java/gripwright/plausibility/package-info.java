/**
 * Whether what is written of an athlete can be: tests, weighings, years of training and dates that
 * are rather a slip of the pen. Nothing is corrected; each doubt is a finding at its line.
 */
@NullMarked
package gripwright.plausibility;

import org.jspecify.annotations.NullMarked;
