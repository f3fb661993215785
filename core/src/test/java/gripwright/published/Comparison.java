package gripwright.published;

import java.util.function.Supplier;

/**
 * What the library has for a published value.
 *
 * @param kind what sort of comparison it is
 * @param setByIt what of the library was set with the value in view, so that the comparison is no
 *     check; empty if nothing was
 * @param values the library's numbers; for an order the least ratio along it, for a rule 1 or 0
 */
record Comparison(Kind kind, String setByIt, Supplier<double[]> values) {

  /** Tells whether it says anything about the library's own calculations. */
  boolean isCheck() {
    return !inView() && isModel();
  }

  /** Tells whether something was set with the value in view. */
  boolean inView() {
    return !setByIt.isEmpty();
  }

  /** Tells whether the library's own calculations are compared. */
  boolean isModel() {
    return kind == Kind.MODEL || kind == Kind.ORDER;
  }

  /** What sort of comparison it is. */
  enum Kind {
    /** The library stores the published number and must return it exactly. */
    CONSTANT("constant"),
    /** A published limit, order or definition that the library follows. */
    RULE("rule"),
    /** The value follows from published ones by arithmetic, and the library does the same. */
    ARITHMETIC("arithmetic"),
    /** The library calculates a ratio by itself, and its order was published or is in use. */
    ORDER("order"),
    /** The library calculates or chooses a number by itself. */
    MODEL("model");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }
}
