/**
 * The words for all that core says as data. Every sentence stands in a bundle of messages, one for
 * each locale; English is the one that comes with the library, and a host can bring its own.
 */
@NullMarked
package gripwright.wording;

import org.jspecify.annotations.NullMarked;
