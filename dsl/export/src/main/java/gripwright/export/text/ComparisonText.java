package gripwright.export.text;

import gripwright.compare.Arm;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Matched;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.ComparisonResult.Value;
import gripwright.compare.ComparisonResult.Verdict;
import gripwright.compare.Measure;
import gripwright.compare.Missing;
import gripwright.export.words.Words;
import gripwright.plan.Exercise;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes the result of a comparison as text for people. */
public final class ComparisonText {

  private static final int PERCENT = 100;
  private static final double THOUSAND = 1000;

  /** A narrower interval is none: nothing that is drawn moves the difference. */
  private static final double EXACT = 1e-9;

  private final ComparisonResult result;
  private final Words words;
  private final Page page = new Page();

  private ComparisonText(ComparisonResult result, Words words) {
    this.result = result;
    this.words = words;
  }

  /** Returns the result as text, in the words of a bundle. */
  public static String of(ComparisonResult result, Wording wording) {
    return new ComparisonText(result, new Words(wording)).write();
  }

  private String write() {
    Comparison comparison = result.comparison();
    page.wrapped(
        "",
        words.say(
            "compared.title",
            "title",
            words.capitals(Page.clean(comparison.title().orElse(comparison.name())))));
    for (Subject subject : result.subjects()) {
      subject(subject);
    }
    page.gap();
    page.line(words.say("compared.cannot"));
    page.wrapped("* ", words.say("compared.cannot-gain"));
    if (result.subjects().stream().anyMatch(subject -> subject.athletes() > 0)) {
      page.wrapped("* ", words.say("compared.cannot-between"));
    }
    if (comparison.measures().stream().anyMatch(ComparisonText::isOfPulleys)) {
      page.wrapped("* ", words.say("compared.cannot-pulleys"));
    }
    if (result.subjects().stream().anyMatch(subject -> subject.athletes() > 0)) {
      page.wrapped("* ", words.say("compared.cannot-history"));
    }
    if (result.subjects().stream().anyMatch(subject -> subject.athletes() == 0)) {
      for (Caution caution : Caution.general()) {
        page.wrapped("* ", words.of(caution));
      }
    }
    return page.toString();
  }

  private static boolean isOfPulleys(Measure measure) {
    return switch (measure) {
      case A2_EXPOSURE, A4_EXPOSURE, PEAK_A2_LOAD, PEAK_A4_LOAD -> true;
      default -> false;
    };
  }

  private void subject(Subject subject) {
    Comparison comparison = result.comparison();
    page.wrapped(
        "",
        subject.athletes() > 0
            ? words.say(
                "compared.for-cohort",
                "cohort",
                subject.name(),
                "persons",
                subject.athletes(),
                "draws",
                subject.draws(),
                "stream",
                comparison.stream())
            : words.say(
                "compared.for-athlete",
                "athlete",
                subject.name(),
                "draws",
                subject.draws(),
                "stream",
                comparison.stream()));
    page.gap();
    page.line(words.say("compared.arms"));
    int width = 0;
    for (ArmResult arm : subject.arms()) {
      width = Math.max(width, arm.arm().name().length());
    }
    for (ArmResult arm : subject.arms()) {
      page.wrapped("  " + Page.padRight(arm.arm().name(), width) + "  ", arm(arm));
    }
    if (subject.arms().stream().anyMatch(arm -> arm.arm().content() instanceof Arm.Trained)) {
      page.wrapped("  ", frequency());
    }
    if (!subject.matches().isEmpty()) {
      page.gap();
      page.line(words.say("compared.matched"));
      subject.matches().forEach(match -> page.wrapped("  ", matched(match)));
    }
    page.gap();
    page.wrapped(
        "",
        subject.athletes() > 0
            ? words.say("compared.legend") + " " + words.say("compared.legend-share")
            : words.say("compared.legend"));
    if (subject.differences().stream()
        .flatMap(difference -> difference.drivers().stream())
        .anyMatch(driver -> driver.first().isPresent())) {
      page.wrapped("", words.say("compared.legend-sobol"));
    }
    String done = "";
    for (Difference difference : subject.differences()) {
      String pair = difference.a() + " " + difference.b();
      if (!pair.equals(done)) {
        pair(subject, difference.a(), difference.b());
        done = pair;
      }
    }
    pareto(subject);
  }

  private String frequency() {
    Comparison comparison = result.comparison();
    return comparison.weeks() == 1 && comparison.perWeek() == 1
        ? words.say("compared.frequency-once")
        : words.say(
            "compared.frequency",
            "perWeek",
            comparison.perWeek(),
            "weeks",
            words.count("compared.weeks", comparison.weeks()));
  }

  private String arm(ArmResult arm) {
    return arm.arm()
        .content()
        .accept(
            new Arm.Content.Visitor<>() {
              @Override
              public String trained(Arm.Trained content) {
                Exercise exercise = content.exercise();
                return amount(
                    arm,
                    "compared.arm-exercise",
                    "protocol",
                    exercise.protocol().name(),
                    "setup",
                    exercise.setup(exercise.target().grips().get(0)));
              }

              @Override
              public String planned(Arm.Planned content) {
                return amount(arm, "compared.arm-plan", "plan", content.plan().name());
              }

              @Override
              public String noTraining(Arm.NoTraining content) {
                return words.say("compared.arm-none");
              }
            });
  }

  private String amount(ArmResult arm, String key, Object... facts) {
    List<Object> all = new ArrayList<>(List.of(facts));
    all.addAll(
        List.of(
            "sessions",
            words.count("compared.sessions", arm.sessions()),
            "holds",
            words.count("compared.holds", arm.holds()),
            "load",
            Numbers.plain(arm.heaviest().orElse(0), 1) + " kg",
            "share",
            arm.heaviestOfTest().isPresent()
                ? words.say(
                    "compared.arm-of-test",
                    "percent",
                    Numbers.plain(arm.heaviestOfTest().getAsDouble() * PERCENT, 1))
                : ""));
    return words.say(key, all.toArray());
  }

  private String matched(Matched match) {
    String value =
        Numbers.plain(match.value(), match.unit().isEmpty() ? 0 : 2)
            + (match.unit().isEmpty() ? "" : " " + match.unit());
    Object[] facts = {
      "quantity",
      match.match().quantity().word(),
      "arm",
      match.match().arm(),
      "to",
      match.match().to(),
      "by",
      match.match().by(),
      "value",
      value,
      "residual",
      signed(match.residual() * PERCENT, 1) + " %"
    };
    return words.say(match.residual() == 0 ? "compared.match-exact" : "compared.match", facts);
  }

  private static String signed(double value, int decimals) {
    String plain = Numbers.plain(value, decimals);
    return value > 0 ? "+" + plain : plain;
  }

  private void pair(Subject subject, String a, String b) {
    ArmResult one = arm(subject, a);
    ArmResult other = arm(subject, b);
    page.gap();
    page.line(words.say("compared.pair", "a", words.capitals(a), "b", words.capitals(b)));
    boolean control = isNothing(one) || isNothing(other);
    if (control && (isShown(subject, one) || isShown(subject, other))) {
      page.line("  " + words.say("compared.nothing-done", "arm", isNothing(one) ? a : b));
      return;
    }
    boolean cohort = subject.athletes() > 0;
    List<String> headings = new ArrayList<>(List.of(words.say("compared.measure"), a, b));
    if (!control) {
      headings.addAll(
          List.of(
              words.say("compared.ratio"),
              words.say("compared.interval"),
              words.say("compared.more"),
              words.say("compared.error")));
      if (cohort) {
        headings.add(words.say("compared.athletes"));
      }
    }
    TextTable table = new TextTable(headings);
    List<String> notes = new ArrayList<>();
    Map<Missing, List<String>> without = new EnumMap<>(Missing.class);
    for (Difference difference : subject.differences()) {
      if (difference.a().equals(a) && difference.b().equals(b)) {
        List<String> row = row(difference, one, other, cohort);
        table.row(row.subList(0, headings.size()).toArray(String[]::new));
        notes(difference, notes, without);
      }
    }
    table.add(page);
    notes.forEach(note -> page.wrapped("  ", note));
    without.forEach(
        (why, measures) ->
            page.wrapped(
                "  ",
                words.say(
                    "compared.why", "measure", words.commas(measures), "reason", words.of(why))));
  }

  private static boolean isNothing(ArmResult arm) {
    return arm.arm().content() instanceof Arm.NoTraining;
  }

  /** Returns whether the values of an arm are in the table of a pair of arms that both train. */
  private static boolean isShown(Subject subject, ArmResult arm) {
    return !isNothing(arm)
        && subject.arms().stream()
            .filter(other -> !other.arm().name().equals(arm.arm().name()))
            .anyMatch(other -> !isNothing(other));
  }

  private static ArmResult arm(Subject subject, String name) {
    return subject.arms().stream()
        .filter(arm -> arm.arm().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private List<String> row(Difference difference, ArmResult one, ArmResult other, boolean cohort) {
    Measure measure = difference.measure();
    String none = words.say("compared.not-available");
    boolean sized = difference.missing().isEmpty();
    List<String> row = new ArrayList<>();
    row.add(name(measure));
    row.add(value(measure, one.values().get(measure)));
    row.add(value(measure, other.values().get(measure)));
    row.add(sized ? change(measure, difference.best()) : none);
    row.add(
        sized && difference.high90() - difference.low90() > EXACT
            ? change(measure, difference.low90()) + " to " + change(measure, difference.high90())
            : "");
    row.add(Double.isNaN(difference.greater()) ? "" : share(difference.greater()));
    row.add(
        !(difference.standardError() > EXACT)
            ? ""
            : Numbers.plain(difference.standardError() * PERCENT, 2));
    if (cohort) {
      row.add(
          difference.ofAthletes().isPresent() ? share(difference.ofAthletes().getAsDouble()) : "");
    }
    return row;
  }

  private static String share(double value) {
    return Numbers.plain(value, 2);
  }

  private String name(Measure measure) {
    return words.of("compared.measure", measure);
  }

  private String value(Measure measure, @org.jspecify.annotations.Nullable Value value) {
    if (value == null || value.missing().filter(why -> why != Missing.NOTHING_DONE).isPresent()) {
      return words.say("compared.not-available");
    }
    if (value.missing().isPresent()) {
      return "-";
    }
    if (Double.isInfinite(value.best())) {
      return words.say("compared.never");
    }
    return switch (measure) {
      case TIME_UNDER_LOAD, LOAD_TIME, FIRST_FAILURE -> Numbers.plain(value.best(), 0);
      case IMPULSE, IMPULSE_ABOVE_CF -> Numbers.plain(value.best() / THOUSAND, 1);
      case MINUTES, A2_EXPOSURE, A4_EXPOSURE -> Numbers.plain(value.best(), 0);
      case DENSITY, END_RESERVE, FATIGUE, COMPLETED, WEEKLY_RISE ->
          Numbers.plain(value.best() * PERCENT, 1);
      case PEAK_A2_LOAD, PEAK_A4_LOAD -> Numbers.plain(value.best(), 2);
    };
  }

  private static String change(Measure measure, double difference) {
    return measure.difference() == Measure.Difference.RATIO
        ? Numbers.plain(Difference.ratio(difference), 2)
        : difference == 0 ? "0" : signed(difference * PERCENT, 1);
  }

  private void notes(
      Difference difference, List<String> notes, Map<Missing, List<String>> without) {
    Optional<Missing> missing = difference.missing();
    if (missing.isPresent() && missing.get() != Missing.NOTHING_DONE) {
      without
          .computeIfAbsent(missing.get(), why -> new ArrayList<>())
          .add(name(difference.measure()));
      return;
    }
    if (!difference.drivers().isEmpty()) {
      DriverWords driven = new DriverWords(words);
      List<String> drivers = difference.drivers().stream().map(driven::of).toList();
      notes.add(
          words.say(
              "compared.drivers",
              "measure",
              name(difference.measure()),
              "drivers",
              words.commas(drivers)));
    }
    if (difference.verdict() == Verdict.DEPENDS_ON_THE_MODEL) {
      List<String> scenarios = new ArrayList<>();
      difference.scenarios().stream()
          .filter(scenario -> !Double.isNaN(scenario.best()))
          .forEach(
              scenario ->
                  scenarios.add(
                      words.say(
                          "compared.scenario",
                          "name",
                          scenario.name(),
                          "value",
                          change(difference.measure(), scenario.best()))));
      notes.add(
          words.say(
              "compared.depends",
              "measure",
              name(difference.measure()),
              "scenarios",
              words.commas(scenarios)));
    }
  }

  private void pareto(Subject subject) {
    if (subject.pareto().isEmpty()) {
      return;
    }
    page.gap();
    page.line(words.say("compared.pareto"));
    List<String> objectives = new ArrayList<>();
    result
        .comparison()
        .objectives()
        .forEach(
            objective ->
                objectives.add(
                    words.say(
                        objective.more() ? "compared.more-of" : "compared.less",
                        "measure",
                        objective.measure().word())));
    page.wrapped("", words.say("compared.pareto-legend", "objectives", words.commas(objectives)));
    int width = subject.pareto().keySet().stream().mapToInt(String::length).max().orElse(0);
    subject
        .pareto()
        .forEach((arm, share) -> page.line("  " + Page.padRight(arm, width) + "  " + share(share)));
  }
}
