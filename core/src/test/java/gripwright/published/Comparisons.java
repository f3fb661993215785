package gripwright.published;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/** The registry: by id of a published value, what the library has for it. */
final class Comparisons {

  private final Map<String, Comparison> byId = new LinkedHashMap<>();

  /** Returns all comparisons, gathered from the classes of the sections. */
  static Map<String, Comparison> all() {
    Comparisons all = new Comparisons();
    HandComparisons.into(all);
    TissueComparisons.into(all);
    FingerComparisons.into(all);
    EnduranceComparisons.into(all);
    FatigueComparisons.into(all);
    StrengthComparisons.into(all);
    TrainingComparisons.into(all);
    return Collections.unmodifiableMap(all.byId);
  }

  /** A number that the library stores. */
  void constant(String id, DoubleSupplier value) {
    add(id, Comparison.Kind.CONSTANT, "", one(value));
  }

  /** Numbers that the library stores. */
  void constants(String id, Supplier<double[]> values) {
    add(id, Comparison.Kind.CONSTANT, "", values);
  }

  /** A published limit or definition that the library follows. */
  void rule(String id, BooleanSupplier holds) {
    add(id, Comparison.Kind.RULE, "", one(() -> holds.getAsBoolean() ? 1 : 0));
  }

  /** A number by a published formula. */
  void arithmetic(String id, DoubleSupplier value) {
    add(id, Comparison.Kind.ARITHMETIC, "", one(value));
  }

  /** Numbers by a published formula. */
  void arithmetics(String id, Supplier<double[]> values) {
    add(id, Comparison.Kind.ARITHMETIC, "", values);
  }

  /** A number of the library's own. */
  void model(String id, DoubleSupplier value) {
    add(id, Comparison.Kind.MODEL, "", one(value));
  }

  /** Numbers of the library's own. */
  void models(String id, Supplier<double[]> values) {
    add(id, Comparison.Kind.MODEL, "", values);
  }

  /** A number of the library's own that was set with the published value in view. */
  void inView(String id, String setByIt, DoubleSupplier value) {
    add(id, Comparison.Kind.MODEL, setByIt, one(value));
  }

  /** The least ratio along an order. */
  void order(String id, DoubleSupplier ratio) {
    add(id, Comparison.Kind.ORDER, "", one(ratio));
  }

  /** The least ratio along an order that was in view when a parameter was set. */
  void orderInView(String id, String setByIt, DoubleSupplier ratio) {
    add(id, Comparison.Kind.ORDER, setByIt, one(ratio));
  }

  private static Supplier<double[]> one(DoubleSupplier value) {
    return () -> new double[] {value.getAsDouble()};
  }

  private void add(String id, Comparison.Kind kind, String setByIt, Supplier<double[]> values) {
    if (byId.put(id, new Comparison(kind, setByIt, values)) != null) {
      throw new IllegalStateException("compared twice: " + id);
    }
  }
}
