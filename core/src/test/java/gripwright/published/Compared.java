package gripwright.published;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * A published value beside what the library has.
 *
 * @param row the value
 * @param comparison what was compared
 * @param values the library's numbers
 * @param accepted what the value accepts
 */
record Compared(PublishedValue row, Comparison comparison, List<Double> values, Accepted accepted) {

  /** Calculates all comparisons, in the order of the values. */
  static List<Compared> all() {
    Map<String, Comparison> comparisons = Comparisons.all();
    return PublishedValue.all().stream()
        .filter(row -> comparisons.containsKey(row.id()))
        .map(row -> of(row, comparisons.get(row.id())))
        .toList();
  }

  private static Compared of(PublishedValue row, Comparison comparison) {
    List<Double> values = DoubleStream.of(comparison.values().get()).boxed().toList();
    return new Compared(
        row, comparison, values, Accepted.of(row, comparison.kind(), values.size()));
  }

  boolean inside() {
    return accepted.accepts(numbers());
  }

  double ratio() {
    return accepted.ratio(numbers());
  }

  private double[] numbers() {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Returns the library's numbers as a page shows them. */
  String model() {
    return values.stream().map(Accepted::number).collect(Collectors.joining("; "));
  }

  @Override
  public String toString() {
    return row.id() + ": " + row.value() + " published, " + model() + " here, " + accepted.words();
  }
}
