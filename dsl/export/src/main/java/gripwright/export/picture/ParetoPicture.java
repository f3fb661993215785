package gripwright.export.picture;

import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.ComparisonResult.Value;
import gripwright.compare.Measure;
import gripwright.compare.Objective;
import gripwright.export.words.Words;
import gripwright.quantity.Numbers;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws the arms of a comparison by its first two objectives, each with its intervals as a cross
 * and the probability that no other arm beats it. Black and gray; the same input gives the same
 * bytes. Stateless.
 */
public final class ParetoPicture {

  private static final double SIZE = 480;
  private static final double EDGE = 70;
  private static final double DOT = 4;
  private static final double ROOM = 0.1;

  private ParetoPicture() {}

  /** Returns whether there are two objectives to draw. */
  public static boolean canDraw(Comparison comparison) {
    return comparison.objectives().size() >= 2;
  }

  /** Returns the picture as an SVG document. */
  public static String of(Comparison comparison, Subject subject, Wording wording) {
    Words words = new Words(wording);
    Objective right = comparison.objectives().get(0);
    Objective up = comparison.objectives().get(1);
    List<ArmResult> arms = new ArrayList<>();
    for (ArmResult arm : subject.arms()) {
      if (known(arm, right.measure()) && known(arm, up.measure())) {
        arms.add(arm);
      }
    }
    String title = words.say("study.pareto-title", "subject", subject.name());
    Svg svg = new Svg(SIZE, SIZE, title, words.say("study.pareto-description"));
    svg.text(16, 26, "bold", 15, title);
    double[] across = range(arms, right.measure());
    double[] along = range(arms, up.measure());
    double low = SIZE - EDGE;
    svg.line(new double[] {EDGE, low}, new double[] {SIZE - 20, low}, 1, "black", "butt");
    svg.line(new double[] {EDGE, low}, new double[] {EDGE, 50}, 1, "black", "butt");
    svg.text(EDGE, SIZE - 20, "normal", 11, axis(words, right));
    svg.text(EDGE + 8, 58, "normal", 11, axis(words, up));
    for (ArmResult arm : arms) {
      Value x = arm.values().get(right.measure());
      Value y = arm.values().get(up.measure());
      if (x == null || y == null) {
        continue;
      }
      double[] at = {x(x.best(), across), y(y.best(), along)};
      svg.line(
          new double[] {x(x.low(), across), at[1]},
          new double[] {x(x.high(), across), at[1]},
          1.2,
          "gray",
          "butt");
      svg.line(
          new double[] {at[0], y(y.low(), along)},
          new double[] {at[0], y(y.high(), along)},
          1.2,
          "gray",
          "butt");
      svg.dot(at, DOT);
      String name = arm.arm().name();
      Double best = subject.pareto().get(name);
      svg.label(
          at[0] + 8, at[1] - 8, "start", best == null ? name : name + " " + Numbers.plain(best, 2));
    }
    return svg.finish();
  }

  private static String axis(Words words, Objective objective) {
    return words.say(
        objective.more() ? "study.axis-more" : "study.axis-less",
        "measure",
        objective.measure().word());
  }

  private static boolean known(ArmResult arm, Measure measure) {
    Value value = arm.values().get(measure);
    return value != null && Double.isFinite(value.best()) && value.missing().isEmpty();
  }

  private static double[] range(List<ArmResult> arms, Measure measure) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (ArmResult arm : arms) {
      Value value = arm.values().get(measure);
      if (value != null) {
        low = Math.min(low, value.low());
        high = Math.max(high, value.high());
      }
    }
    double room = Math.max(ROOM * Math.abs(high), high - low) * ROOM * 2;
    return new double[] {low - room, high + room};
  }

  private static double x(double value, double[] range) {
    return EDGE + (value - range[0]) / (range[1] - range[0]) * (SIZE - 20 - EDGE);
  }

  private static double y(double value, double[] range) {
    return SIZE - EDGE - (value - range[0]) / (range[1] - range[0]) * (SIZE - EDGE - 50);
  }
}
