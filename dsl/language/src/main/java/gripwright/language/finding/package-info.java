/** Findings with their place in a file, their wording, and their text form. */
@NullMarked
package gripwright.language.finding;

import org.jspecify.annotations.NullMarked;
