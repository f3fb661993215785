package gripwright.export.text;

import java.util.List;

/** Draws numbers as a row of bars, one character each: the greatest is a full bar, 0 is a dot. */
final class Sparkline {

  private static final String BARS = "▁▂▃▄▅▆▇█";
  private static final char NOTHING = '·';

  private Sparkline() {}

  /**
   * Draws numbers of 0 or more.
   *
   * @param most only so many are drawn, the last ones
   */
  static String of(List<Double> values, int most) {
    List<Double> shown = values.subList(Math.max(0, values.size() - most), values.size());
    return of(values, most, shown.stream().mapToDouble(Double::doubleValue).max().orElse(0));
  }

  /**
   * Draws numbers of 0 or more on a scale.
   *
   * @param most only so many are drawn, the last ones
   * @param greatest the value of a full bar
   */
  static String of(List<Double> values, int most, double greatest) {
    List<Double> shown = values.subList(Math.max(0, values.size() - most), values.size());
    StringBuilder bars = new StringBuilder();
    for (double value : shown) {
      int height = (int) Math.ceil(value / greatest * BARS.length()) - 1;
      bars.append(
          value > 0 ? BARS.charAt(Math.min(BARS.length() - 1, Math.max(0, height))) : NOTHING);
    }
    return bars.toString();
  }
}
