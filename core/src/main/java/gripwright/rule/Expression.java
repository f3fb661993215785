package gripwright.rule;

/** A typed expression over the things a rule looks at. */
public sealed interface Expression {
  /**
   * A truth value.
   *
   * @param value the value
   */
  record Truth(boolean value) implements Expression {}
}
