/**
 * Checks named declarations and builds core objects of them. One small class for each kind of
 * declaration checks units, kinds and values, and builds immutable core objects of valid
 * declarations.
 *
 * <p>A declaration with a mistake gives findings and no object, and declarations that depend on it
 * are left out without a finding, so that one mistake gives one message.
 */
@NullMarked
package gripwright.language.check;

import org.jspecify.annotations.NullMarked;
