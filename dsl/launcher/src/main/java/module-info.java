/** Starts the command line quickly. */
module gripwright.launcher {
  requires static org.jspecify;
  requires org.objectweb.asm;
}
