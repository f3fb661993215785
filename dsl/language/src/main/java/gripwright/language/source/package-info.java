/** Files as text: their names, where lines begin, and stretches of characters in them. */
@NullMarked
package gripwright.language.source;

import org.jspecify.annotations.NullMarked;
