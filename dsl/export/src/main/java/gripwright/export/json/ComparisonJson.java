package gripwright.export.json;

import gripwright.compare.Arm;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Interval;
import gripwright.compare.ComparisonResult.Matched;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.ComparisonResult.Value;
import gripwright.compare.Measure;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Setup;
import gripwright.plan.Exercise;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Writes the result of a comparison as JSON. */
final class ComparisonJson {

  private static final int VALUE = 6;
  private static final int SHARE = 6;
  private static final int PERCENT = 4;
  private static final int HUNDRED = 100;

  private ComparisonJson() {}

  /** Returns the JSON name of a measure, with its unit. */
  static String name(Measure measure) {
    return switch (measure) {
      case TIME_UNDER_LOAD -> "timeUnderLoadSeconds";
      case LOAD_TIME -> "loadTimeKgS";
      case IMPULSE -> "impulseNs";
      case IMPULSE_ABOVE_CF -> "impulseAboveCfNs";
      case MINUTES -> "minutes";
      case DENSITY -> "density";
      case END_RESERVE -> "endReserve";
      case FATIGUE -> "fatigue";
      case COMPLETED -> "completed";
      case FIRST_FAILURE -> "firstFailureHold";
      case WEEKLY_RISE -> "weeklyRise";
      case A2_EXPOSURE -> "a2ExposureSeconds";
      case A4_EXPOSURE -> "a4ExposureSeconds";
      case PEAK_A2_LOAD -> "peakA2Load";
      case PEAK_A4_LOAD -> "peakA4Load";
    };
  }

  static void write(
      JsonText json, ComparisonResult result, Subject subject, List<ReportedFinding> findings) {
    Comparison comparison = result.comparison();
    json.object(
        () -> {
          json.field("schemaVersion", JsonDocuments.SCHEMA_VERSION);
          json.provenance(
              () -> {
                json.list(
                    "models",
                    subject.differences().stream()
                        .flatMap(difference -> difference.scenarios().stream())
                        .map(ComparisonResult.Scenario::name)
                        .distinct()
                        .toList(),
                    json::text);
                json.field("stream", comparison.stream());
                json.field("draws", subject.draws());
              });
          json.field("language", JsonDocuments.LANGUAGE);
          json.field("compare", comparison.name());
          json.field("title", comparison.title().orElse(null));
          json.field("subject", subject.name());
          json.field("athletes", subject.athletes());
          json.field("perWeek", comparison.perWeek());
          json.field("weeks", comparison.weeks());
          json.list("inputs", subject.inputs(), json::text);
          json.list("arms", subject.arms(), arm -> json.object(() -> arm(json, arm)));
          if (subject.matches().isEmpty()) {
            json.nothing("matching");
          } else {
            json.object("matching", () -> matched(json, subject.matches().get(0)));
          }
          json.list("matchings", subject.matches(), m -> json.object(() -> matched(json, m)));
          json.list(
              "differences",
              subject.differences(),
              difference -> json.object(() -> difference(json, difference)));
          json.list(
              "pareto",
              subject.pareto().entrySet(),
              each ->
                  json.line(
                      () -> {
                        json.field("arm", each.getKey());
                        json.field("probability", each.getValue(), SHARE);
                      }));
          json.list(
              "objectives",
              comparison.objectives(),
              each ->
                  json.line(
                      () -> {
                        json.field("more", each.more());
                        json.field("measure", each.measure().word());
                      }));
          json.list(
              "reports",
              comparison.reports(),
              each ->
                  json.line(
                      () -> {
                        json.field("item", each.item().word());
                        json.field("text", each.text());
                      }));
          json.list("notes", comparison.notes(), json::text);
          FindingJson.list(json, findings);
        });
  }

  private static void arm(JsonText json, ArmResult result) {
    Arm arm = result.arm();
    Optional<Exercise> exercise =
        arm.content()
            .accept(
                new Arm.Content.Visitor<>() {
                  @Override
                  public Optional<Exercise> trained(Arm.Trained content) {
                    return Optional.of(content.exercise());
                  }

                  @Override
                  public Optional<Exercise> planned(Arm.Planned content) {
                    return Optional.empty();
                  }

                  @Override
                  public Optional<Exercise> noTraining(Arm.NoTraining content) {
                    return Optional.empty();
                  }
                });
    json.field("name", arm.name());
    json.field("protocol", exercise.map(e -> e.protocol().name()).orElse(null));
    json.field("plan", plan(arm));
    Optional<Setup> setup = exercise.map(e -> e.setup(e.target().grips().get(0)));
    json.field("grip", setup.map(s -> s.grip().name()).orElse(null));
    json.field(
        "edgeMm",
        setup.map(s -> OptionalDouble.of(s.edge().millimetres())).orElse(OptionalDouble.empty()),
        2);
    json.field("sessions", result.sessions());
    json.field("holds", result.holds());
    json.field("heaviestKg", result.heaviest(), 4);
    json.field("heaviestPercentOfTest", hundredfold(result.heaviestOfTest()), PERCENT);
    json.object(
        "measures", () -> result.values().forEach((m, v) -> json.field(name(m), best(v), VALUE)));
    json.list(
        "intervals",
        result.values().entrySet(),
        each ->
            json.line(
                () -> {
                  json.field("measure", each.getKey().word());
                  json.field("low90", finite(each.getValue().low()), VALUE);
                  json.field("high90", finite(each.getValue().high()), VALUE);
                  json.field(
                      "missing", each.getValue().missing().map(why -> why.word()).orElse(null));
                }));
  }

  private static @Nullable String plan(Arm arm) {
    return arm.content()
        .accept(
            new Arm.Content.Visitor<Optional<String>>() {
              @Override
              public Optional<String> trained(Arm.Trained content) {
                return Optional.empty();
              }

              @Override
              public Optional<String> planned(Arm.Planned content) {
                return Optional.of(content.plan().name());
              }

              @Override
              public Optional<String> noTraining(Arm.NoTraining content) {
                return Optional.empty();
              }
            })
        .orElse(null);
  }

  private static OptionalDouble best(Value value) {
    return finite(value.best());
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private static OptionalDouble hundredfold(OptionalDouble share) {
    return share.isPresent()
        ? OptionalDouble.of(share.getAsDouble() * HUNDRED)
        : OptionalDouble.empty();
  }

  private static void matched(JsonText json, Matched matched) {
    json.field("quantity", matched.match().quantity().word());
    json.field("arm", matched.match().arm());
    json.field("to", matched.match().to());
    json.field("by", matched.match().by());
    json.field("value", matched.value(), VALUE);
    json.field("unit", matched.unit());
    json.field("target", matched.target(), VALUE);
    json.field("residualPercent", matched.residual() * HUNDRED, PERCENT);
  }

  private static void difference(JsonText json, Difference difference) {
    boolean ratio = difference.measure().difference() == Measure.Difference.RATIO;
    json.field("a", difference.a());
    json.field("b", difference.b());
    json.field("measure", difference.measure().word());
    json.field("kind", kind(difference.measure()));
    json.field("missing", difference.missing().map(why -> why.word()).orElse(null));
    json.field("best", finite(difference.best()), VALUE);
    json.field(
        "logRatioMedian", ratio ? finite(difference.median()) : OptionalDouble.empty(), VALUE);
    json.field(
        "differenceMedian", ratio ? OptionalDouble.empty() : finite(difference.median()), VALUE);
    json.field("low50", finite(difference.low50()), VALUE);
    json.field("high50", finite(difference.high50()), VALUE);
    json.field("low90", finite(difference.low90()), VALUE);
    json.field("high90", finite(difference.high90()), VALUE);
    json.field("pGreater", finite(difference.greater()), SHARE);
    json.field("standardError", finite(difference.standardError()), VALUE);
    json.field("shareOfAthletes", difference.ofAthletes(), SHARE);
    json.list(
        "drivers",
        difference.drivers(),
        driver ->
            json.line(
                () -> {
                  json.field("input", driver.input());
                  json.field("total", driver.share(), SHARE);
                  interval(json, "total", driver.shareInterval());
                  json.field("first", driver.first(), SHARE);
                  interval(json, "first", driver.firstInterval());
                }));
    json.list(
        "scenarios",
        difference.scenarios(),
        scenario ->
            json.line(
                () -> {
                  json.field("model", scenario.name());
                  json.field("best", finite(scenario.best()), VALUE);
                }));
    json.field("verdict", difference.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private static void interval(JsonText json, String of, Optional<Interval> interval) {
    json.field(of + "Low90", low(interval), SHARE);
    json.field(of + "High90", high(interval), SHARE);
  }

  private static OptionalDouble low(Optional<Interval> interval) {
    return interval.isPresent() ? OptionalDouble.of(interval.get().low()) : OptionalDouble.empty();
  }

  private static OptionalDouble high(Optional<Interval> interval) {
    return interval.isPresent() ? OptionalDouble.of(interval.get().high()) : OptionalDouble.empty();
  }

  /** Returns the word for how two values are compared. */
  static String kind(Measure measure) {
    return switch (measure.difference()) {
      case RATIO -> "log-ratio";
      case PLAIN -> "difference";
      case CENSORED -> "order";
    };
  }
}
