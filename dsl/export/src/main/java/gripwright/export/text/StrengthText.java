package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.strength.CriticalForce;
import gripwright.strength.LoadEstimate;
import gripwright.strength.StrengthChange;
import gripwright.survey.StrengthSurvey;
import gripwright.survey.StrengthSurvey.Critical;
import gripwright.survey.StrengthSurvey.Reason;
import gripwright.survey.StrengthSurvey.Row;
import gripwright.survey.StrengthSurvey.Section;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Locale;

/**
 * Writes one athlete's strength for a coach: for each way of holding, a table with a line for each
 * grip and a bar for its interval, and the greatest load by hold time; then critical force and the
 * cautions.
 *
 * <p>Plain text only, at most 80 columns if names are of ordinary length; words and date formats
 * come from a message bundle. Stateless and thread-safe.
 */
public final class StrengthText {

  private static final double PER_CENT = 100;
  private static final double HALF = 0.5;

  /** No probability is shown as certain, in per cent. */
  private static final double MOST_PROBABLE = 99;

  /** A lower bound that completed holds raise by less than this share is not shown. */
  private static final double WORTH_SAYING = 0.02;

  private final StrengthSurvey survey;
  private final Words words;
  private final Page page = new Page();

  private StrengthText(StrengthSurvey survey, Words words) {
    this.survey = survey;
    this.words = words;
  }

  /** Returns the survey as text, in the words of a bundle. */
  public static String of(StrengthSurvey survey, Wording wording) {
    return new StrengthText(survey, new Words(wording)).write();
  }

  private String write() {
    page.wrapped(
        "",
        words.say(
            "strength.title", "athlete", words.capitals(Page.clean(survey.athlete().title()))));
    String tests = tests();
    page.wrapped(
        "",
        words.capital(
            survey
                .day()
                .map(
                    day ->
                        words.say("strength.on-day", "date", words.dayAndYear(day), "tests", tests))
                .orElse(tests)));
    unused();
    if (survey.sections().stream().anyMatch(section -> !section.rows().isEmpty())) {
      page.gap();
      page.wrapped("", words.say("strength.legend"));
    }
    StrengthTable table = new StrengthTable(survey, words);
    survey.sections().forEach(section -> section(section, table));
    if (!survey.sections().isEmpty()) {
      page.gap();
      page.line(words.say("strength.critical"));
      criticalForce();
    }
    page.gap();
    page.wrapped("* ", words.say("strength.estimate"));
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", words.of(caution));
    }
    return page.toString();
  }

  private String tests() {
    int count = survey.tests().size();
    if (count == 0 && !survey.unused().isEmpty()) {
      return words.say("strength.no-use");
    }
    if (count == 0) {
      return words.say("strength.no-test");
    }
    return words.count(
        "strength.tests", count, "date", words.dayAndYear(survey.tests().get(count - 1).date()));
  }

  /** Adds how many tests can't be used, and why. */
  private void unused() {
    for (Reason reason : Reason.values()) {
      long count = survey.unused().stream().filter(u -> u.reason() == reason).count();
      if (count > 0) {
        page.wrapped(
            "",
            words.count(
                survey.tests().isEmpty() ? "strength.unused" : "strength.unused-further",
                count,
                "reason",
                words.of("strength.unused", reason)));
      }
    }
    if (!survey.lowered().isEmpty()) {
      page.wrapped("", words.count("strength.lowered", survey.lowered().size()));
    }
  }

  private void section(Section section, StrengthTable table) {
    String way = words.capitals(words.hands(section.hands(), section.lifting()));
    List<Length> shown = shown(section);
    for (Length edge : shown) {
      page.gap();
      page.line(words.say("strength.on-edge", "hands", way, "edge", edge));
      table.add(page, on(section, edge));
      changes(on(section, edge));
    }
    section.withoutEstimate().forEach(edge -> withoutEstimate(section, way, edge));
    List<String> others =
        edges(section).stream()
            .filter(edge -> !shown.contains(edge))
            .map(Length::toString)
            .toList();
    if (!others.isEmpty()) {
      page.wrapped("", words.say("strength.not-tested", "edges", words.commas(others)));
    }
    boolean first = section.equals(survey.sections().get(0));
    if (!section.curves().isEmpty() && (first || section.testedAtSeveralTimes())) {
      page.gap();
      page.line(words.say("strength.by-time", "hands", way));
      if (first) {
        page.wrapped("", words.say("strength.by-time-legend"));
      }
      new TimeTable(words).add(page, section.curves());
    }
  }

  /** Adds how tested grips changed, and what completed holds show of the others. */
  private void changes(List<Row> rows) {
    for (Row row : rows) {
      String grip = row.setup().grip().name();
      row.change()
          .ifPresent(
              change ->
                  page.wrapped(
                      "",
                      words.say(
                          "strength.changed",
                          "grip",
                          grip,
                          "from",
                          words.dayAndYear(change.from()),
                          "to",
                          words.dayAndYear(change.to()),
                          "change",
                          change(change, words))));
      row.withHolds()
          .filter(told -> isShown(row) && narrows(row.estimate().load(), told))
          .ifPresent(
              told ->
                  page.wrapped(
                      "",
                      words.say(
                          "strength.with-holds",
                          "grip",
                          grip,
                          "low",
                          kilograms(told.low().kilograms()),
                          "best",
                          kilograms(told.best().kilograms()),
                          "high",
                          kilograms(told.high().kilograms()))));
    }
  }

  private static boolean isShown(Row row) {
    return row.reachable() || row.tests() > 0;
  }

  private static boolean narrows(LoadEstimate tests, LoadEstimate withHolds) {
    return withHolds.low().kilograms() > tests.low().kilograms() * (1 + WORTH_SAYING);
  }

  /** Returns a change with its interval and the probability that it is real. */
  static String change(StrengthChange change, Words words) {
    double probability = Math.floor(PER_CENT * change.probability());
    return words.say(
        "strength.change",
        "change",
        (change.percent() >= HALF ? "+" : "") + Numbers.plain(change.percent(), 0),
        "low",
        Numbers.plain(change.lowPercent(), 0),
        "high",
        Numbers.plain(change.highPercent(), 0),
        "probability",
        Numbers.plain(Math.min(MOST_PROBABLE, probability), 0),
        "verdict",
        words.of("strength.verdict", change.verdict()));
  }

  /**
   * Adds that there is no estimate for an edge, under a heading of its own if it is the only edge.
   */
  private void withoutEstimate(Section section, String way, Length edge) {
    if (section.rows().isEmpty()) {
      page.gap();
      page.line(words.say("strength.on-edge", "hands", way, "edge", edge));
      page.wrapped("", words.capital(words.say("strength.without-estimate")));
    } else {
      page.wrapped(
          "",
          words.say(
              "page.said-of", "what", edge, "sentence", words.say("strength.without-estimate")));
    }
  }

  private static List<Length> edges(Section section) {
    return section.rows().stream().map(row -> row.setup().edge()).distinct().toList();
  }

  private static List<Row> on(Section section, Length edge) {
    return section.rows().stream().filter(row -> row.setup().edge().equals(edge)).toList();
  }

  /** Returns the edges that were tested; if none was, all edges. */
  private static List<Length> shown(Section section) {
    List<Length> tested =
        edges(section).stream()
            .filter(edge -> on(section, edge).stream().anyMatch(row -> row.tests() > 0))
            .toList();
    return tested.isEmpty() ? edges(section) : tested;
  }

  private void criticalForce() {
    if (survey.criticalForces().isEmpty()) {
      page.wrapped("", words.say("strength.critical-unknown"));
    }
    String last = "";
    for (Critical critical : survey.criticalForces()) {
      CriticalForce force = critical.force();
      String way = words.hands(critical.setup().hands(), critical.setup().lifting());
      if (!way.equals(last)) {
        page.line(words.say("strength.critical-hands", "hands", words.capital(way)));
        last = way;
      }
      page.hanging(
          words.say(
              force.levelled() ? "strength.critical-force" : "strength.critical-force-falling",
              "best",
              kilograms(force.force().best().kilograms()),
              "low",
              kilograms(force.force().low().kilograms()),
              "high",
              kilograms(force.force().high().kilograms()),
              "impulse",
              Numbers.plain(force.impulseKgS(), 0),
              "definition",
              words.of("strength.definition", force.definition()),
              "setup",
              critical.setup(),
              "days",
              days(critical)));
    }
  }

  private String days(Critical critical) {
    String last = words.dayAndYear(critical.date());
    return critical.first().equals(critical.date())
        ? last
        : words.range(words.dayAndYear(critical.first()), last);
  }

  static String kilograms(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
