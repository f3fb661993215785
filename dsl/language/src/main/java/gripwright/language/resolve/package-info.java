/**
 * From one file to all files it uses and the names they declare: which file is read, from where,
 * and which name means what.
 */
@NullMarked
package gripwright.language.resolve;

import org.jspecify.annotations.NullMarked;
