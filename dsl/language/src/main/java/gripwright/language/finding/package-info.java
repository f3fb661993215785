/** Findings with their place in a file, their wording, and how they are shown. */
@NullMarked
package gripwright.language.finding;

import org.jspecify.annotations.NullMarked;
