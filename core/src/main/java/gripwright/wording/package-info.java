/**
 * The words for all data of core. Every sentence is in a bundle of messages, one for each locale;
 * the library includes English, and a host can add others.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.wording;

import org.jspecify.annotations.NullMarked;
