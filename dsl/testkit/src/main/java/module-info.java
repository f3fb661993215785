/** Tests for plan files and rules: a folder of files with the findings expected of each. */
module gripwright.testkit {
  requires static org.jspecify;
  requires transitive gripwright.language;
  requires transitive org.junit.jupiter.api;

  exports gripwright.testkit;
}
