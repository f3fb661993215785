/** A program that hosts the library: one class builds a plan in Java, the other reads one. */
module club.skarvdal.host {
  requires static org.jspecify;
  requires gripwright.core;
  requires gripwright.language;
}
