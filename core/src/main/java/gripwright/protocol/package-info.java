/**
 * Protocols: levels, holds, rests and repeats, with named parameters; and schemes, their bound
 * form.
 */
@NullMarked
package gripwright.protocol;

import org.jspecify.annotations.NullMarked;
