/**
 * Three small programs: {@link PlanInJava} needs the core alone, {@link PlanFromText} reads text,
 * and {@link PlanToText} writes it.
 */
@NullMarked
package club.skarvdal.host;

import org.jspecify.annotations.NullMarked;
