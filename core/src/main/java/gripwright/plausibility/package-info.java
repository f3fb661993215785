/**
 * Plausibility checks of tests, weighings, training history and dates. Nothing is corrected; each
 * doubt is a finding at its entry.
 */
@NullMarked
package gripwright.plausibility;

import org.jspecify.annotations.NullMarked;
