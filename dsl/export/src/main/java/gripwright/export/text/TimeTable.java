package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.quantity.Numbers;
import gripwright.strength.EnduranceLaw;
import gripwright.strength.ForceTime;
import gripwright.strength.LoadEstimate;
import gripwright.survey.StrengthSurvey.Curve;
import java.util.ArrayList;
import java.util.List;

/** Writes the greatest load of one setup by hold time, one line a time. */
final class TimeTable {

  private static final double[] SECONDS = {3, 7, 10, 15, 20, 30, 60, 120, 300, 600};
  private static final int TIME = 7;
  private static final int LOAD = 8;
  private static final int OTHER = 15;

  private final Words words;
  private final String held;
  private final List<String> headings;
  private final int loadWidth;

  TimeTable(Words words) {
    this.words = words;
    held = words.say("strength.held");
    headings =
        List.of(
            words.say("strength.low"),
            words.say("strength.best"),
            words.say("strength.high"),
            words.say("strength.of-reference"),
            words.say("strength.form-rohmert"));
    loadWidth = headings.stream().mapToInt(h -> h.length() + 1).reduce(LOAD, Math::max);
  }

  /** Adds the first curve with its interval, and the best estimates of the others. */
  void add(Page page, List<Curve> curves) {
    Curve first = curves.get(0);
    page.line(words.of(first.setup()));
    StringBuilder head = new StringBuilder(Page.padLeft(held, timeWidth()));
    for (String title : headings) {
      head.append(Page.padLeft(title, loadWidth));
    }
    List<Curve> others = new ArrayList<>(curves.subList(1, curves.size()));
    others.forEach(other -> head.append(Page.padLeft(name(other), width(other))));
    page.line(head.toString());
    for (double seconds : SECONDS) {
      page.line(line(first.forceTime(), others, seconds));
    }
  }

  private int timeWidth() {
    return Math.max(TIME, held.length() + 1);
  }

  private int width(Curve other) {
    return Math.max(OTHER, name(other).length() + 1);
  }

  private String line(ForceTime curve, List<Curve> others, double seconds) {
    LoadEstimate load = curve.load(seconds);
    double ofReference =
        load.best().kilograms() / curve.load(ForceTime.REFERENCE_SECONDS).best().kilograms();
    double people =
        EnduranceLaw.ROHMERT.share(seconds)
            / EnduranceLaw.ROHMERT.share(ForceTime.REFERENCE_SECONDS);
    StringBuilder line =
        new StringBuilder(Page.padLeft(Numbers.plain(seconds, 0) + " s", timeWidth()));
    line.append(Page.padLeft(StrengthText.kilograms(load.low().kilograms()), loadWidth))
        .append(Page.padLeft(StrengthText.kilograms(load.best().kilograms()), loadWidth))
        .append(Page.padLeft(StrengthText.kilograms(load.high().kilograms()), loadWidth))
        .append(Page.padLeft(percent(ofReference), loadWidth))
        .append(Page.padLeft(percent(people), loadWidth));
    for (Curve other : others) {
      line.append(
          Page.padLeft(
              other.forceTime().isValidFor(seconds)
                  ? StrengthText.kilograms(other.forceTime().load(seconds).best().kilograms())
                  : "",
              width(other)));
    }
    return line.toString();
  }

  private static String percent(double share) {
    return Numbers.plain(100 * share, 0) + " %";
  }

  private String name(Curve curve) {
    return words.of("strength.form", curve.forceTime().form());
  }
}
