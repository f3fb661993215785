/**
 * How long reading and compiling a plan file, asking rules and simulating a session take, beside
 * things whose speed everybody knows. What came of it and how to run it is in {@code
 * docs/performance.md}.
 */
@NullMarked
package gripwright.benchmarks;

import org.jspecify.annotations.NullMarked;
