/** The text of each kind of declaration. */
@NullMarked
package gripwright.language.write.internal;

import org.jspecify.annotations.NullMarked;
