/**
 * From named declarations to core objects: units, kinds and values are checked, one small class a
 * declaration, and what is in order comes out as an immutable object of core.
 *
 * <p>A declaration with a mistake gives findings and no object, and whatever needs it is left out
 * in silence, so that one mistake gives one message.
 */
@NullMarked
package gripwright.language.check;

import org.jspecify.annotations.NullMarked;
