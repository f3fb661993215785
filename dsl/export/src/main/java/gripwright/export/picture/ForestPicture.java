package gripwright.export.picture;

import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Scenario;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.Measure;
import gripwright.export.words.Words;
import gripwright.quantity.Numbers;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws the log-ratios of a comparison as a forest: a row for each pair of arms and measure, with
 * the 90 % interval as a line, the middle half as a thick one, the published parameters as a dot,
 * and other models as short strokes. Black and gray, readable in print; the same input gives the
 * same bytes. Stateless.
 */
public final class ForestPicture {

  private static final double WIDTH = 760;
  private static final double LEFT = 330;
  private static final double RIGHT = 730;
  private static final double TOP = 70;
  private static final double ROW = 22;
  private static final double LEAST = 0.1;
  private static final double DOT = 3.5;
  private static final double STROKE = 6;

  private ForestPicture() {}

  /** Returns the picture as an SVG document. */
  public static String of(Subject subject, Wording wording) {
    Words words = new Words(wording);
    List<Difference> rows = new ArrayList<>();
    double most = LEAST;
    for (Difference difference : subject.differences()) {
      if (difference.measure().difference() == Measure.Difference.RATIO
          && difference.missing().isEmpty()) {
        rows.add(difference);
        most = Math.max(most, Math.abs(difference.low90()));
        most = Math.max(most, Math.abs(difference.high90()));
        for (Scenario scenario : difference.scenarios()) {
          most = Double.isNaN(scenario.best()) ? most : Math.max(most, Math.abs(scenario.best()));
        }
      }
    }
    double height = TOP + ROW * rows.size() + 60;
    String title = words.say("study.forest-title", "subject", subject.name());
    Svg svg = new Svg(WIDTH, height, title, words.say("study.forest-description"));
    svg.text(16, 26, "bold", 15, title);
    svg.text(16, 46, "normal", 11, words.say("study.forest-legend"));
    double half = (RIGHT - LEFT) / 2;
    double middle = LEFT + half;
    double bottom = TOP + ROW * rows.size();
    svg.dashed(new double[] {middle, TOP - 8}, new double[] {middle, bottom});
    for (int i = 0; i < rows.size(); i++) {
      row(svg, rows.get(i), words, TOP + ROW * (i + 0.5), middle, half / most);
    }
    axis(svg, bottom + 12, middle, half / most, most);
    return svg.finish();
  }

  private static void row(
      Svg svg, Difference difference, Words words, double y, double middle, double scale) {
    svg.text(
        16,
        y + 4,
        "normal",
        11,
        difference.a()
            + " / "
            + difference.b()
            + ": "
            + words.of("compared.measure", difference.measure()));
    svg.line(
        new double[] {middle + scale * difference.low90(), y},
        new double[] {middle + scale * difference.high90(), y},
        1.2,
        "black",
        "butt");
    svg.line(
        new double[] {middle + scale * difference.low50(), y},
        new double[] {middle + scale * difference.high50(), y},
        3.5,
        "black",
        "butt");
    for (Scenario scenario : difference.scenarios()) {
      if (!Double.isNaN(scenario.best())) {
        double x = middle + scale * scenario.best();
        svg.line(new double[] {x, y - STROKE}, new double[] {x, y + STROKE}, 1.2, "gray", "butt");
      }
    }
    svg.dot(new double[] {middle + scale * difference.best(), y}, DOT);
  }

  private static void axis(Svg svg, double y, double middle, double scale, double most) {
    svg.line(
        new double[] {middle - scale * most, y},
        new double[] {middle + scale * most, y},
        1,
        "black",
        "butt");
    for (double ratio : new double[] {0.25, 0.5, 0.67, 0.8, 1, 1.25, 1.5, 2, 4}) {
      double at = Math.log(ratio);
      if (Math.abs(at) <= most) {
        double x = middle + scale * at;
        svg.line(new double[] {x, y}, new double[] {x, y + 5}, 1, "black", "butt");
        svg.label(x, y + 18, "middle", Numbers.plain(ratio, 2).toLowerCase(Locale.ROOT));
      }
    }
  }
}
