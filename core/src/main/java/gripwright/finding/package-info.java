/**
 * What is wrong with a plan, as data: a stable code, how grave it is, where it is in the model, and
 * the facts that a sentence about it needs. The wording itself is somebody else's business.
 */
@NullMarked
package gripwright.finding;

import org.jspecify.annotations.NullMarked;
