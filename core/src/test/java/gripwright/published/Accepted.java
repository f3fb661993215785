package gripwright.published;

import gripwright.published.Comparison.Kind;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a published value accepts, by its own tolerance. A constant must be exact. An arithmetic
 * value has the tolerance of its last digit. A model has the spread between people or studies where
 * the row gives one, otherwise what the row gives.
 *
 * @param parts one for each number of the value
 */
record Accepted(List<Part> parts) {

  /**
   * An interval that accepts a number.
   *
   * @param published the number, not a number for a range
   * @param low the least that is accepted
   * @param high the greatest
   * @param open true if the bounds themselves are not accepted
   */
  record Part(double published, double low, double high, boolean open) {

    boolean accepts(double value) {
      return open ? value > low && value < high : value >= low && value <= high;
    }

    /** Returns value by published; of a range by its nearest end, 1 inside. */
    double ratio(double value) {
      if (Double.isNaN(published)) {
        return value / Math.max(low, Math.min(high, value));
      }
      return published == 0 ? (value == 0 ? 1 : Double.POSITIVE_INFINITY) : value / published;
    }
  }

  private static final String NUMBER = "-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?";
  private static final Pattern ONE = Pattern.compile("[<>]?(" + NUMBER + ")");
  private static final Pattern RANGE = Pattern.compile("(" + NUMBER + ")\\.\\.(" + NUMBER + ").*");
  private static final Pattern LIST = Pattern.compile(NUMBER + "(?:[/;]" + NUMBER + ")+");
  private static final Pattern WITHIN =
      Pattern.compile("(?:\\+/-|SD )?(" + "\\d+(?:\\.\\d+)?(?:e-?\\d+)?)( %)?(?![\\d.]).*");
  private static final Pattern INTERVAL =
      Pattern.compile("(?:95 % CI|range) (" + NUMBER + ")\\.\\.(" + NUMBER + ")");

  /** The rounding of a calculation that has to return a constant. */
  private static final double EXACT = 1e-6;

  private static final double FACTOR_OF_AN_ORDER = 10;

  /** Each ratio along an order is above 1. */
  private static final Part ORDER = new Part(1, 1, Double.POSITIVE_INFINITY, true);

  private static final Part NO_LESS = new Part(1, 1, Double.POSITIVE_INFINITY, false);

  /** A rule holds, which is 1, or doesn't. */
  private static final Part RULE = NO_LESS;

  /** Returns what a row accepts of so many numbers of a kind. */
  static Accepted of(PublishedValue row, Kind kind, int numbers) {
    if (kind == Kind.RULE) {
      return new Accepted(List.of(RULE));
    }
    if (kind == Kind.ORDER) {
      return new Accepted(List.of(row.value().contains(">=") ? NO_LESS : ORDER));
    }
    Matcher range = RANGE.matcher(row.value());
    if (range.matches()) {
      double low = Double.parseDouble(range.group(1));
      double high = Double.parseDouble(range.group(2));
      if (numbers == 2) {
        return new Accepted(List.of(part(row, kind, low), part(row, kind, high)));
      }
      double more = row.tolerance().startsWith("+/-") ? part(row, kind, 0).high() : 0;
      return new Accepted(List.of(new Part(Double.NaN, low - more, high + more, false)));
    }
    if (LIST.matcher(row.value()).matches()) {
      List<Part> parts = new ArrayList<>();
      for (String each : row.value().split("[/;]", -1)) {
        parts.add(part(row, kind, Double.parseDouble(each)));
      }
      return new Accepted(parts);
    }
    Matcher one = ONE.matcher(row.value());
    if (!one.matches()) {
      throw new IllegalStateException("not a number: " + row);
    }
    return new Accepted(List.of(part(row, kind, Double.parseDouble(one.group(1)))));
  }

  private static Part part(PublishedValue row, Kind kind, double value) {
    double exact = EXACT * Math.max(1, Math.abs(value));
    if (kind == Kind.CONSTANT) {
      return about(value, exact);
    }
    String tolerance = row.tolerance();
    if (kind == Kind.MODEL && tolerance.contains(";")) {
      tolerance = tolerance.substring(tolerance.indexOf(';') + 1).strip();
      tolerance = tolerance.replaceFirst("^model check ", "");
    }
    switch (tolerance.replaceFirst(" \\(.*", "")) {
      case "upper bound", "<", "<=":
        return new Part(value, Double.NEGATIVE_INFINITY, value, false);
      case "lower bound":
        return new Part(value, value, Double.POSITIVE_INFINITY, false);
      case "order of magnitude only":
        return new Part(value, value / FACTOR_OF_AN_ORDER, value * FACTOR_OF_AN_ORDER, false);
      case "factor 2":
        return new Part(value, value / 2, value * 2, false);
      default:
        break;
    }
    Matcher interval = INTERVAL.matcher(tolerance);
    if (interval.matches()) {
      return new Part(
          value,
          Double.parseDouble(interval.group(1)),
          Double.parseDouble(interval.group(2)),
          false);
    }
    Matcher within = WITHIN.matcher(tolerance.replaceFirst("indicative \\(", ""));
    if (!within.matches()) {
      return about(value, exact);
    }
    double spread = Double.parseDouble(within.group(1));
    return about(value, Math.max(exact, within.group(2) == null ? spread : spread / 100 * value));
  }

  private static Part about(double value, double spread) {
    return new Part(value, value - spread, value + spread, false);
  }

  boolean accepts(double[] values) {
    check(values);
    for (int i = 0; i < values.length; i++) {
      if (!parts.get(i).accepts(values[i])) {
        return false;
      }
    }
    return true;
  }

  /** Returns model by published, of the number that is farthest off. */
  double ratio(double[] values) {
    check(values);
    double worst = 1;
    for (int i = 0; i < values.length; i++) {
      double ratio = parts.get(i).ratio(values[i]);
      if (Math.abs(Math.log(ratio)) > Math.abs(Math.log(worst))) {
        worst = ratio;
      }
    }
    return worst;
  }

  private void check(double[] values) {
    if (values.length != parts.size()) {
      throw new IllegalArgumentException(values.length + " numbers for " + parts.size());
    }
  }

  /** Returns the intervals as a page shows them. */
  String words() {
    return String.join("; ", parts.stream().map(Accepted::words).toList());
  }

  private static String words(Part part) {
    if (part.high() == Double.POSITIVE_INFINITY) {
      return (part.open() ? "above " : "at least ") + number(part.low());
    }
    if (part.low() == Double.NEGATIVE_INFINITY) {
      return "at most " + number(part.high());
    }
    return part.high() - part.low() <= 3 * EXACT * Math.max(1, Math.abs(part.published()))
        ? "exactly"
        : number(part.low()) + " to " + number(part.high());
  }

  /** Returns a number with four digits that count. */
  static String number(double value) {
    if (Double.isInfinite(value)) {
      return "no end";
    }
    if (value == 0) {
      return "0";
    }
    int places = 3 - (int) Math.floor(Math.log10(Math.abs(value)));
    return Numbers.plain(value, Math.max(0, places))
        .replace("\u2212", "-")
        .toLowerCase(Locale.ROOT);
  }
}
