/** The library on Apache Spark: plans of many athletes, and draws of one comparison. */
@NullMarked
package example.cluster;

import org.jspecify.annotations.NullMarked;
