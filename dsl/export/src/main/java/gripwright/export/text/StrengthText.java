package gripwright.export.text;

import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.strength.CriticalForce;
import gripwright.survey.StrengthSurvey;
import gripwright.survey.StrengthSurvey.Critical;
import gripwright.survey.StrengthSurvey.Reason;
import gripwright.survey.StrengthSurvey.Row;
import gripwright.survey.StrengthSurvey.Section;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Locale;

/**
 * One athlete's strength as a coach reads it: for each way of holding a table with a line a grip
 * and a bar for its interval, and the greatest load by time; then critical force and the cautions.
 *
 * <p>Plain characters only, at most 80 columns where names are of ordinary length, the same in
 * every locale. Stateless and thread-safe.
 */
public final class StrengthText {

  private static final String LEGEND =
      "Greatest total load held for 7 s, in kg: low is the 20th percentile, which loads are"
          + " prescribed from, high the 80th. Tests: how many of this very grip on this edge; a line"
          + " without is modelled from the others. The bar runs from low to high, o is the best"
          + " estimate.";

  private static final String BY_TIME =
      "Greatest total load by how long it is held, in kg, and the best estimate by that for 7 s,"
          + " beside what Rohmert's law says of people in general. Plans use low.";

  private static final String NO_CRITICAL_FORCE =
      "Not known: it takes an all-out series of at least 12 holds and 3 min, or two holds of one grip"
          + " from 30 s to 10 min, the longer at least twice as long. Holds months apart may leave it"
          + " too uncertain.";

  private static final String UNRECKONED =
      "nothing is reckoned from a deeper edge at or below 4.3 mm; test it on this edge.";

  private static final String ESTIMATE =
      "Everything here is an estimate by a model, not a measurement, and no line says that a grip is"
          + " open to the athlete: `grips` does.";

  private final StrengthSurvey survey;
  private final Page page = new Page();

  private StrengthText(StrengthSurvey survey) {
    this.survey = survey;
  }

  /** Returns the survey as text. */
  public static String of(StrengthSurvey survey) {
    return new StrengthText(survey).write();
  }

  private String write() {
    page.wrapped(
        "", "STRENGTH OF " + Page.clean(survey.athlete().title()).toUpperCase(Locale.ROOT));
    page.wrapped(
        "", capital(survey.day().map(day -> Page.dayAndYear(day) + ": ").orElse("") + tests()));
    unused();
    if (survey.sections().stream().anyMatch(section -> !section.rows().isEmpty())) {
      page.gap();
      page.wrapped("", LEGEND);
    }
    StrengthTable table = new StrengthTable(survey);
    survey.sections().forEach(section -> section(section, table));
    if (!survey.sections().isEmpty()) {
      page.gap();
      page.line("CRITICAL FORCE");
      criticalForce();
    }
    page.gap();
    page.wrapped("* ", ESTIMATE);
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", Wording.english().say(caution));
    }
    return page.toString();
  }

  private String tests() {
    int count = survey.tests().size();
    if (count == 0 && !survey.unused().isEmpty()) {
      return "no test is of use";
    }
    if (count == 0) {
      return "no test is known, so nothing can be said; log one, such as `test half-crimp edge 20 mm"
          + " hold 7 s load 80 kg`";
    }
    return Page.count(count, "test")
        + (count == 1 ? ", on " : ", the last on ")
        + Page.dayAndYear(survey.tests().get(count - 1).date());
  }

  /** Says how many tests tell nothing, and why. */
  private void unused() {
    for (Reason reason : Reason.values()) {
      long count = survey.unused().stream().filter(u -> u.reason() == reason).count();
      if (count > 0) {
        page.wrapped(
            "",
            Page.count(count, survey.tests().isEmpty() ? "test" : "further test")
                + (count == 1 ? " is" : " are")
                + " not used: "
                + words(reason));
      }
    }
  }

  private static String words(Reason reason) {
    return switch (reason) {
      case TOO_SHORT -> "shorter than 2 s";
      case TOO_LONG -> "longer than 10 min";
      case NO_LOAD -> "without a load";
    };
  }

  private void section(Section section, StrengthTable table) {
    String way = way(section.hands(), section.lifting()).toUpperCase(Locale.ROOT);
    List<Length> shown = shown(section);
    for (Length edge : shown) {
      page.gap();
      page.line(way + ", EDGE " + edge);
      table.add(page, on(section, edge));
    }
    section.unreckoned().forEach(edge -> unreckoned(section, way, edge));
    List<String> others =
        edges(section).stream()
            .filter(edge -> !shown.contains(edge))
            .map(Length::toString)
            .toList();
    if (!others.isEmpty()) {
      page.wrapped("", "Not tested on " + String.join(", ", others) + ": see --edge.");
    }
    boolean first = section.equals(survey.sections().get(0));
    if (!section.curves().isEmpty() && (first || section.testedAtSeveralTimes())) {
      page.gap();
      page.line(way + ", BY TIME");
      if (first) {
        page.wrapped("", BY_TIME);
      }
      TimeTable.add(page, section.curves());
    }
  }

  /** Says of an edge that no test tells of it, under a heading of its own if it stands alone. */
  private void unreckoned(Section section, String way, Length edge) {
    if (section.rows().isEmpty()) {
      page.gap();
      page.line(way + ", EDGE " + edge);
      page.wrapped("", capital(UNRECKONED));
    } else {
      page.wrapped("", edge + ": " + UNRECKONED);
    }
  }

  private static List<Length> edges(Section section) {
    return section.rows().stream().map(row -> row.setup().edge()).distinct().toList();
  }

  private static List<Row> on(Section section, Length edge) {
    return section.rows().stream().filter(row -> row.setup().edge().equals(edge)).toList();
  }

  /** Edges that were tested; all of them where none was. */
  private static List<Length> shown(Section section) {
    List<Length> tested =
        edges(section).stream()
            .filter(edge -> on(section, edge).stream().anyMatch(row -> row.tests() > 0))
            .toList();
    return tested.isEmpty() ? edges(section) : tested;
  }

  private static String way(Hands hands, boolean lifting) {
    return (hands == Hands.BOTH ? "both hands" : hands.word() + " hand")
        + (lifting ? " lifting" : "");
  }

  private void criticalForce() {
    if (survey.criticalForces().isEmpty()) {
      page.wrapped("", NO_CRITICAL_FORCE);
    }
    String last = "";
    for (Critical critical : survey.criticalForces()) {
      CriticalForce force = critical.force();
      String way = way(critical.setup().hands(), critical.setup().lifting());
      if (!way.equals(last)) {
        page.line(capital(way) + ":");
        last = way;
      }
      page.hanging(
          kilograms(force.force().best().kilograms())
              + " kg ("
              + kilograms(force.force().low().kilograms())
              + " to "
              + kilograms(force.force().high().kilograms())
              + "), impulse above it "
              + Numbers.plain(force.impulseKgS(), 0)
              + " kg s: "
              + definition(force.definition())
              + ", "
              + critical.setup()
              + ", "
              + days(critical)
              + (force.levelled() ? "" : "; load still fell at the end, so it is likely lower"));
    }
  }

  private static String days(Critical critical) {
    String last = Page.dayAndYear(critical.date());
    return critical.first().equals(critical.date())
        ? last
        : Page.dayAndYear(critical.first()) + " to " + last;
  }

  private static String definition(CriticalForce.Definition definition) {
    return switch (definition) {
      case MEAN_OF_LAST_THREE -> "mean of the last three holds of an all-out series";
      case END_OF_LAST_THREE -> "load at the end of the last three holds of an all-out series";
      case ASYMPTOTE -> "what an all-out series tends to";
      case HOLDS_TO_FAILURE -> "load by time of unbroken holds";
    };
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  static String kilograms(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
