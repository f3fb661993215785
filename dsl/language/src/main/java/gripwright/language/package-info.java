/**
 * The entry point: a file or a text becomes athletes, grips, protocols, plans and findings, and
 * plans become dated sessions.
 *
 * <pre>{@code
 * Reading reading = Gripwright.read(Path.of("season.grip"));
 * if (reading.usable()) {
 *   Compilation compilation = reading.compile();
 * }
 * }</pre>
 *
 * <p>A mistake in a text is a finding, never an exception. Everything here is immutable and
 * thread-safe and gives the same result in every locale and time zone.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.language;

import org.jspecify.annotations.NullMarked;
