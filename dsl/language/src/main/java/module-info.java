/** The plan language: from text to core objects and back. */
module gripwright.language {
  requires static org.jspecify;
  requires transitive gripwright.core;

  exports gripwright.language;
  exports gripwright.language.source;
  exports gripwright.language.finding;
  exports gripwright.language.format;
  exports gripwright.language.write;
}
