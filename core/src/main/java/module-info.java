/** Finger-strength planning: the domain and its numbers, without text, files, clock or JSON. */
module gripwright.core {
  requires static org.jspecify;
  requires hipparchus.core;

  exports gripwright.quantity;
  exports gripwright.finding;
}
