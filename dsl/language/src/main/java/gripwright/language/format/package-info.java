/**
 * One layout for every plan file, and core objects written as text. Works on the lossless tree
 * alone, so that a file whose names mean nothing yet is laid out too.
 */
@NullMarked
package gripwright.language.format;

import org.jspecify.annotations.NullMarked;
