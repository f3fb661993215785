/** Plain text for people: a season as a coach reads it, on a phone or a terminal. */
@NullMarked
package gripwright.export.text;

import org.jspecify.annotations.NullMarked;
