/** Core objects in other formats: JSON for programs, and the text a coach reads. */
module gripwright.export {
  requires static org.jspecify;
  requires transitive gripwright.core;
  requires com.fasterxml.jackson.core;
  requires java.xml;

  exports gripwright.export.csv;
  exports gripwright.export.json;
  exports gripwright.export.picture;
  exports gripwright.export.text;
}
