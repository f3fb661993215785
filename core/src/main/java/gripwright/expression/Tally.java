package gripwright.expression;

/** Summarizes the values that are not missing. */
final class Tally {
  private int count;
  private double sum;
  private double largest = Double.NaN;
  private double smallest = Double.NaN;

  void add(double value) {
    if (!Double.isNaN(value)) {
      count++;
      sum += value;
      largest = count == 1 ? value : Math.max(largest, value);
      smallest = count == 1 ? value : Math.min(smallest, value);
    }
  }

  double result(Expression.Summary summary) {
    return switch (summary) {
      case SUM -> sum;
      case COUNT -> count;
      case MEAN -> count == 0 ? Double.NaN : sum / count;
      case LARGEST -> largest;
      case SMALLEST -> smallest;
    };
  }
}
