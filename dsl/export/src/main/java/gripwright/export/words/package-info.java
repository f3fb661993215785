/**
 * The words that several formats share. Sentences, labels and formats of dates stand in the
 * messages of a {@link gripwright.wording.Wording}; no class of this module has any of its own.
 */
@NullMarked
package gripwright.export.words;

import org.jspecify.annotations.NullMarked;
