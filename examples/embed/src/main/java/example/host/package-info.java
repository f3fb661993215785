/**
 * Three small programs: {@link PlanInJava} needs the core alone, {@link PlanFromText} reads text,
 * and {@link PlanToText} writes it.
 */
@NullMarked
package example.host;

import org.jspecify.annotations.NullMarked;
