/** Two small programs: {@link PlanInJava} needs the core alone, {@link PlanFromText} reads text. */
@NullMarked
package club.skarvdal.host;

import org.jspecify.annotations.NullMarked;
