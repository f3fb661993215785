/** The command line. */
module gripwright.tools {
  requires static org.jspecify;
  requires gripwright.core;
  requires gripwright.language;
  requires gripwright.export;
  requires org.apache.commons.cli;

  exports gripwright.tools;
}
