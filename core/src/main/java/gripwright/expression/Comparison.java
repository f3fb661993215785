package gripwright.expression;

/**
 * The results of one relation, for many numbers at once.
 *
 * @param less the result if the left number is less
 * @param same the result if both are equal
 * @param more the result if the left number is greater
 */
record Comparison(byte less, byte same, byte more) {

  static Comparison of(Condition.Relation relation) {
    return new Comparison(answer(relation, -1), answer(relation, 0), answer(relation, 1));
  }

  private static byte answer(Condition.Relation relation, int order) {
    return (byte)
        (Arithmetic.holds(relation, order) ? ExpressionCompiler.YES : ExpressionCompiler.NO);
  }

  /** Compares numbers pairwise. */
  void compare(double[] ones, double[] others, byte[] out, int count) {
    for (int i = 0; i < count; i++) {
      double one = ones[i];
      double other = others[i];
      double by = one - other;
      if (Math.abs(by) > Arithmetic.TOLERANCE * (1 + Math.abs(one) + Math.abs(other))) {
        out[i] = by < 0 ? less : more; // the usual case: differing by far more than the tolerance
      } else if (one == other) {
        out[i] = same;
      } else if (Double.isNaN(one) || Double.isNaN(other)) {
        out[i] = ExpressionCompiler.UNDECIDED;
      } else {
        int order = Arithmetic.order(one, other);
        out[i] = order == 0 ? same : order < 0 ? less : more;
      }
    }
  }
}
