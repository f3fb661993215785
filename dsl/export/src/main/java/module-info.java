/** Core objects in other formats: JSON for programs, and the text a coach reads. */
module gripwright.export {
  requires static org.jspecify;
  requires transitive gripwright.core;
  requires com.fasterxml.jackson.core;
  requires java.xml;
  requires net.sf.biweekly;
  requires org.apache.commons.csv;

  exports gripwright.export.calendar;
  exports gripwright.export.csv;
  exports gripwright.export.json;
  exports gripwright.export.picture;
  exports gripwright.export.study;
  exports gripwright.export.text;
}
