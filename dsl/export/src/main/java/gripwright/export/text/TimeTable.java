package gripwright.export.text;

import gripwright.quantity.Numbers;
import gripwright.strength.EnduranceLaw;
import gripwright.strength.ForceTime;
import gripwright.strength.LoadEstimate;
import gripwright.survey.StrengthSurvey.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The greatest load of one setup by hold time, a line a time. */
final class TimeTable {

  private static final double[] SECONDS = {3, 7, 10, 15, 20, 30, 60, 120, 300, 600};
  private static final int TIME = 7;
  private static final int LOAD = 8;
  private static final int OTHER = 15;

  private TimeTable() {}

  /** Adds the first curve with its interval, and the best estimates of the others. */
  static void add(Page page, List<Curve> curves) {
    Curve first = curves.get(0);
    page.line(first.setup().toString());
    StringBuilder head = new StringBuilder(Page.padLeft("held", TIME));
    for (String title : List.of("low", "best", "high", "of 7 s", "Rohmert")) {
      head.append(Page.padLeft(title, LOAD));
    }
    List<Curve> others = new ArrayList<>(curves.subList(1, curves.size()));
    others.forEach(other -> head.append(Page.padLeft(name(other), OTHER)));
    page.line(head.toString());
    for (double seconds : SECONDS) {
      page.line(line(first.forceTime(), others, seconds));
    }
  }

  private static String line(ForceTime curve, List<Curve> others, double seconds) {
    LoadEstimate load = curve.load(seconds);
    double ofReference =
        load.best().kilograms() / curve.load(ForceTime.REFERENCE_SECONDS).best().kilograms();
    double people =
        EnduranceLaw.ROHMERT.share(seconds)
            / EnduranceLaw.ROHMERT.share(ForceTime.REFERENCE_SECONDS);
    StringBuilder line = new StringBuilder(Page.padLeft(Numbers.plain(seconds, 0) + " s", TIME));
    line.append(Page.padLeft(StrengthText.kilograms(load.low().kilograms()), LOAD))
        .append(Page.padLeft(StrengthText.kilograms(load.best().kilograms()), LOAD))
        .append(Page.padLeft(StrengthText.kilograms(load.high().kilograms()), LOAD))
        .append(Page.padLeft(percent(ofReference), LOAD))
        .append(Page.padLeft(percent(people), LOAD));
    for (Curve other : others) {
      line.append(
          Page.padLeft(
              other.forceTime().serves(seconds)
                  ? StrengthText.kilograms(other.forceTime().load(seconds).best().kilograms())
                  : "",
              OTHER));
    }
    return line.toString();
  }

  private static String percent(double share) {
    return Numbers.plain(100 * share, 0) + " %";
  }

  private static String name(Curve curve) {
    return curve.forceTime().form().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
