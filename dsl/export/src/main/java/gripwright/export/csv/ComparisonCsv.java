package gripwright.export.csv;

import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Interval;
import gripwright.compare.ComparisonResult.PlannedHold;
import gripwright.compare.ComparisonResult.PlannedWeek;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.Measure;
import gripwright.export.csv.TidyTable.Column;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Comparisons as tidy tables. Fields that can't be given are empty, with the reason in the column
 * {@code missing}. Stateless and thread-safe.
 */
public final class ComparisonCsv {

  private static final int DECIMALS = 6;

  private static final Column COMPARISON = text("comparison", "Name of the comparison.");
  private static final Column SUBJECT = text("subject", "Name of the athlete or the cohort.");
  private static final Column ARM = text("arm", "Name of the arm.");
  private static final Column MEASURE = text("measure", "The measure.");
  private static final Column MISSING = text("missing", "Why a value can't be given.");

  private ComparisonCsv() {}

  private static Column text(String name, String description) {
    return new Column(name, TidyTable.Type.STRING, "", description, "", false);
  }

  private static Column count(String name, String description) {
    return new Column(name, TidyTable.Type.INTEGER, "", description, "", false);
  }

  private static Column number(String name, String unit, String description) {
    return new Column(name, TidyTable.Type.NUMBER, unit, description, "", false);
  }

  private static Column estimate(String name, String unit, String description) {
    return new Column(name, TidyTable.Type.NUMBER, unit, description, "", true);
  }

  /** Returns all tables of comparisons. */
  public static List<TidyTable> tables(List<ComparisonResult> results) {
    return List.of(
        arms(results),
        holds(results),
        weeks(results),
        differences(results),
        draws(results),
        sensitivity(results));
  }

  /** Collects rows over all subjects. */
  private interface Rows {
    void add(String comparison, Subject subject, List<List<String>> rows);
  }

  private static TidyTable table(
      String name,
      String description,
      List<Column> columns,
      List<ComparisonResult> results,
      Rows rows) {
    List<Column> all = new ArrayList<>(List.of(COMPARISON, SUBJECT));
    all.addAll(columns);
    List<List<String>> lines = new ArrayList<>();
    for (ComparisonResult result : results) {
      for (Subject subject : result.subjects()) {
        rows.add(result.comparison().name(), subject, lines);
      }
    }
    TidyTable.Builder table = TidyTable.named(name, description);
    all.forEach(table::column);
    lines.forEach(table::row);
    return table.build();
  }

  /** Returns the differences: a line for each pair of arms and measure. */
  public static TidyTable differences(List<ComparisonResult> results) {
    return table(
        "differences",
        "The difference of two arms in a measure, over the draws of the models.",
        List.of(
            text("a", "First arm."),
            text("b", "Second arm."),
            MEASURE,
            text("kind", "log-ratio: logarithm of a by b; difference: a less b; order: only P."),
            estimate("best", "", "At the published parameters."),
            estimate("median", "", "Median."),
            estimate("low50", "", "25th percentile."),
            estimate("high50", "", "75th percentile."),
            estimate("low90", "", "5th percentile."),
            estimate("high90", "", "95th percentile."),
            estimate("pGreater", "", "Probability that a has more, ties counted half."),
            number("standardError", "", "Monte Carlo standard error of the mean difference."),
            estimate("shareOfAthletes", "", "Share of the cohort for whom a has more."),
            text("verdict", "What can be said."),
            MISSING),
        results,
        (comparison, subject, rows) ->
            subject.differences().forEach(each -> rows.add(row(comparison, subject, each))));
  }

  private static List<String> row(String comparison, Subject subject, Difference difference) {
    return List.of(
        comparison,
        subject.name(),
        difference.a(),
        difference.b(),
        difference.measure().word(),
        kind(difference.measure()),
        plain(difference.best()),
        plain(difference.median()),
        plain(difference.low50()),
        plain(difference.high50()),
        plain(difference.low90()),
        plain(difference.high90()),
        plain(difference.greater()),
        plain(difference.standardError()),
        plain(difference.ofAthletes()),
        difference.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        difference.missing().map(why -> why.word()).orElse(""));
  }

  private static String kind(Measure measure) {
    return switch (measure.difference()) {
      case RATIO -> "log-ratio";
      case PLAIN -> "difference";
      case CENSORED -> "order";
    };
  }

  /** Returns the arms: a line for each arm and measure. */
  private static TidyTable arms(List<ComparisonResult> results) {
    return table(
        "arms",
        "A measure of an arm for the typical athlete, over the whole programme.",
        List.of(
            ARM,
            count("sessions", "Sessions in all."),
            count("holds", "Holds in all."),
            number("heaviestKg", "kg", "Greatest load of a hold."),
            number("heaviestShareOfTest", "", "That load as a share of the test, as built."),
            MEASURE,
            estimate("value", "", "At the published parameters, in the unit of the measure."),
            estimate("low90", "", "5th percentile over the draws."),
            estimate("high90", "", "95th percentile over the draws."),
            MISSING),
        results,
        (comparison, subject, rows) -> {
          for (ArmResult arm : subject.arms()) {
            arm.values()
                .forEach(
                    (measure, value) ->
                        rows.add(
                            List.of(
                                comparison,
                                subject.name(),
                                arm.arm().name(),
                                Integer.toString(arm.sessions()),
                                Integer.toString(arm.holds()),
                                plain(arm.heaviest()),
                                plain(arm.heaviestOfTest()),
                                measure.word(),
                                plain(value.best()),
                                plain(value.low()),
                                plain(value.high()),
                                value.missing().map(why -> why.word()).orElse(""))));
          }
        });
  }

  private static TidyTable holds(List<ComparisonResult> results) {
    return table(
        "holds",
        "A hold of one of the different sessions of an arm, for the typical athlete.",
        List.of(
            ARM,
            count("session", "Number of the session among the different ones."),
            count("times", "How often this session is done."),
            count("hold", "Number of the hold in the session."),
            text("setup", "Grip, edge and hands."),
            number("seconds", "s", "Time of the hold; a bound as long as it is predicted to last."),
            number("restSeconds", "s", "Rest after it."),
            number("loadKg", "kg", "Total load."),
            number("shareOfMax", "", "Load by the maximum of the setup.")),
        results,
        (comparison, subject, rows) -> {
          for (ArmResult arm : subject.arms()) {
            for (PlannedHold hold : arm.schedule()) {
              rows.add(
                  List.of(
                      comparison,
                      subject.name(),
                      arm.arm().name(),
                      Integer.toString(hold.session()),
                      Integer.toString(hold.times()),
                      Integer.toString(hold.number()),
                      hold.setup().toString(),
                      plain(hold.seconds()),
                      plain(hold.restSeconds()),
                      plain(hold.load()),
                      plain(hold.share())));
            }
          }
        });
  }

  private static TidyTable weeks(List<ComparisonResult> results) {
    return table(
        "weeks",
        "A week of an arm, for the typical athlete.",
        List.of(
            ARM,
            count("week", "Number of the week."),
            new Column(
                "eased",
                TidyTable.Type.BOOLEAN,
                "",
                "Whether it is an eased (deload) week.",
                "",
                false),
            count("sessions", "Sessions of the week."),
            number("timeUnderLoadSeconds", "s", "Time under tension."),
            number("loadTimeKgS", "kg s", "Load times time.")),
        results,
        (comparison, subject, rows) -> {
          for (ArmResult arm : subject.arms()) {
            for (PlannedWeek week : arm.weeks()) {
              rows.add(
                  List.of(
                      comparison,
                      subject.name(),
                      arm.arm().name(),
                      Integer.toString(week.number()),
                      Boolean.toString(week.eased()),
                      Integer.toString(week.sessions()),
                      plain(week.timeUnderLoadSeconds()),
                      plain(week.loadTimeKgS())));
            }
          }
        });
  }

  private static TidyTable draws(List<ComparisonResult> results) {
    return table(
        "draws",
        "Percentiles of the difference of two arms over the draws of the models.",
        List.of(
            text("a", "First arm."),
            text("b", "Second arm."),
            MEASURE,
            count("percentile", "0 to 100."),
            estimate("difference", "", "As in differences.csv.")),
        results,
        (comparison, subject, rows) -> {
          for (Difference difference : subject.differences()) {
            for (int i = 0; i < difference.percentiles().size(); i++) {
              rows.add(
                  List.of(
                      comparison,
                      subject.name(),
                      difference.a(),
                      difference.b(),
                      difference.measure().word(),
                      Integer.toString(i),
                      plain(difference.percentiles().get(i))));
            }
          }
        });
  }

  private static TidyTable sensitivity(List<ComparisonResult> results) {
    return table(
        "sensitivity",
        "What moves a difference: a parameter that is drawn, or another model.",
        List.of(
            text("a", "First arm."),
            text("b", "Second arm."),
            MEASURE,
            text("kind", "parameter or model."),
            text("name", "Name of the parameter or the model."),
            estimate("total", "", "Share of the variance that goes with a parameter."),
            estimate("totalLow90", "", "5th percentile of the total Sobol index, if asked for."),
            estimate("totalHigh90", "", "95th percentile of the total Sobol index."),
            estimate("first", "", "First-order Sobol index, if asked for."),
            estimate("firstLow90", "", "5th percentile of the first-order index."),
            estimate("firstHigh90", "", "95th percentile of the first-order index."),
            estimate("difference", "", "The difference by the model.")),
        results,
        (comparison, subject, rows) -> {
          for (Difference each : subject.differences()) {
            List<String> head =
                Arrays.asList(
                    comparison, subject.name(), each.a(), each.b(), each.measure().word());
            each.drivers()
                .forEach(
                    driver ->
                        rows.add(
                            with(
                                head,
                                "parameter",
                                driver.input(),
                                plain(driver.share()),
                                plain(driver.shareInterval().map(Interval::low)),
                                plain(driver.shareInterval().map(Interval::high)),
                                plain(driver.first()),
                                plain(driver.firstInterval().map(Interval::low)),
                                plain(driver.firstInterval().map(Interval::high)),
                                "")));
            each.scenarios()
                .forEach(
                    scenario ->
                        rows.add(
                            with(
                                with(head, "model", scenario.name(), "", "", ""),
                                "",
                                "",
                                "",
                                plain(scenario.best()))));
          }
        });
  }

  private static List<String> with(List<String> head, String... more) {
    List<String> row = new ArrayList<>(head);
    row.addAll(List.of(more));
    return row;
  }

  private static String plain(OptionalDouble value) {
    return value.isPresent() ? plain(value.getAsDouble()) : "";
  }

  private static String plain(Optional<Double> value) {
    return value.map(number -> plain(number.doubleValue())).orElse("");
  }

  private static String plain(double value) {
    return Double.isFinite(value) ? Numbers.plain(value, DECIMALS) : "";
  }
}
