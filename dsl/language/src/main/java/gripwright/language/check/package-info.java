/**
 * From named declarations to core objects: units, kinds and values are checked by one small class
 * for each kind of declaration, and valid declarations become immutable core objects.
 *
 * <p>A declaration with a mistake gives findings and no object, and declarations that depend on it
 * are left out without a finding, so that one mistake gives one message.
 */
@NullMarked
package gripwright.language.check;

import org.jspecify.annotations.NullMarked;
