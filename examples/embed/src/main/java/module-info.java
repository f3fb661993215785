/** Programs that embed the library. */
module example.host {
  requires static org.jspecify;
  requires gripwright.core;
  requires gripwright.language;
}
