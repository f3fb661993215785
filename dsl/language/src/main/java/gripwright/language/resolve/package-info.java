/**
 * From one file to all files it uses and the names they declare: which file is read, from where,
 * and which name means what.
 *
 * <p>This is the only package of the language that reads files.
 */
@NullMarked
package gripwright.language.resolve;

import org.jspecify.annotations.NullMarked;
