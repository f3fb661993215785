/** The log of an athlete, read for a plan: trained and missed sessions, pain and tests. */
@NullMarked
package gripwright.history;

import org.jspecify.annotations.NullMarked;
