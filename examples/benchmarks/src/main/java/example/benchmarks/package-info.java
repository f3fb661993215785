/**
 * Benchmarks of reading and compiling a plan file, checking rules and simulating a session, next to
 * well-known programs. Results and instructions are in {@code docs/performance.md}.
 */
@NullMarked
package example.benchmarks;

import org.jspecify.annotations.NullMarked;
