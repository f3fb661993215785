/**
 * Words shared by several formats. Sentences, labels and date formats are in the message bundle of
 * a {@link gripwright.wording.Wording}; no class of this module contains its own.
 */
@NullMarked
package gripwright.export.words;

import org.jspecify.annotations.NullMarked;
