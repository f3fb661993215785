package gripwright.export.json;

import gripwright.finding.ReportedFinding;
import gripwright.grip.Setup;
import gripwright.quantity.Length;
import gripwright.schedule.Caution;
import gripwright.strength.CriticalForce;
import gripwright.strength.ForceTime;
import gripwright.strength.LoadEstimate;
import gripwright.strength.StrengthChange;
import gripwright.strength.StrengthMap.Weight;
import gripwright.strength.StrengthTest;
import gripwright.survey.StrengthSurvey;
import gripwright.survey.StrengthSurvey.Critical;
import gripwright.survey.StrengthSurvey.Curve;
import gripwright.survey.StrengthSurvey.Row;
import gripwright.survey.StrengthSurvey.Section;
import gripwright.survey.StrengthSurvey.Unused;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes one athlete's strength as JSON. */
final class StrengthJson {

  private static final int KILOGRAMS = 4;
  private static final int NEWTONS = 1;
  private static final int MILLIMETRES = 2;
  private static final int SECONDS = 3;
  private static final int SHARE = 4;
  private static final int IMPULSE = 1;
  private static final int PERCENT = 2;
  private static final int PROBABILITY = 4;

  /** Hold times in seconds at which curves are written, if valid there. */
  private static final List<Double> TIMES =
      List.of(
          2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 90.0, 120.0, 180.0, 300.0, 600.0);

  /** Fields that are null if no test gives a critical force. */
  private static final List<String> CRITICAL_FORCE =
      List.of(
          "criticalForceKg",
          "impulseAboveKgS",
          "criticalForceDefinition",
          "criticalForceHands",
          "criticalForceLifting",
          "criticalForceGrip",
          "criticalForceEdgeMm",
          "criticalForceDate");

  /** Tests with a smaller share of the estimate than this are left out. */
  private static final double LEAST_WEIGHT = 0.005;

  private final JsonText json;
  private final StrengthSurvey survey;

  private StrengthJson(JsonText json, StrengthSurvey survey) {
    this.json = json;
    this.survey = survey;
  }

  static void write(JsonText json, StrengthSurvey survey, List<ReportedFinding> findings) {
    StrengthJson strength = new StrengthJson(json, survey);
    json.object(
        () -> {
          strength.head();
          json.list("unreckoned", strength.withoutEstimate(), json::line);
          json.list("grips", strength.rows(), row -> json.object(() -> strength.row(row)));
          json.list("curves", strength.curves(), c -> json.object(() -> strength.curve(c)));
          strength.criticalForce();
          json.list("cautions", Caution.general(), c -> json.text(json.wording().say(c)));
          FindingJson.list(json, findings);
        });
  }

  private void head() {
    json.heading();
    json.field("language", JsonDocuments.LANGUAGE);
    json.field("athlete", survey.athlete().name());
    json.field("on", survey.day().map(LocalDate::toString).orElse(null));
    json.field("referenceHoldSeconds", ForceTime.REFERENCE_SECONDS, SECONDS);
    json.field("tests", survey.tests().size());
    json.list("unusedTests", survey.unused(), unused -> json.line(() -> unused(unused)));
    json.list("loweredTests", survey.lowered(), test -> json.line(() -> lowered(test)));
  }

  private void unused(Unused unused) {
    json.field("date", unused.test().date().toString());
    setup(unused.test().setup());
    json.field("reason", word(unused.reason()));
  }

  private void lowered(StrengthTest test) {
    json.field("date", test.date().toString());
    setup(test.setup());
  }

  /** Returns a writer for each edge without an estimate. */
  private List<Runnable> withoutEstimate() {
    return survey.sections().stream()
        .flatMap(
            section ->
                section.withoutEstimate().stream().map(edge -> withoutEstimate(section, edge)))
        .toList();
  }

  private Runnable withoutEstimate(Section section, Length edge) {
    return () -> {
      json.field("edgeMm", edge.millimetres(), MILLIMETRES);
      json.field("hands", section.hands().word());
      json.field("lifting", section.lifting());
    };
  }

  private List<Row> rows() {
    return survey.sections().stream().flatMap(section -> section.rows().stream()).toList();
  }

  private List<Curve> curves() {
    return survey.sections().stream().flatMap(section -> section.curves().stream()).toList();
  }

  private void setup(Setup setup) {
    json.field("grip", setup.grip().name());
    json.field("edgeMm", setup.edge().millimetres(), MILLIMETRES);
    json.field("hands", setup.hands().word());
    json.field("lifting", setup.lifting());
  }

  private void load(LoadEstimate load) {
    json.field("meanKg", load.best().kilograms(), KILOGRAMS);
    json.field("lowKg", load.low().kilograms(), KILOGRAMS);
    json.field("highKg", load.high().kilograms(), KILOGRAMS);
  }

  private void row(Row row) {
    setup(row.setup());
    json.field("reachable", row.reachable());
    load(row.estimate().load());
    json.field("tests", row.tests());
    change(json, row.change());
    if (row.withHolds().isPresent()) {
      json.object("withHolds", () -> load(row.withHolds().get()));
    } else {
      json.nothing("withHolds");
    }
    json.list(
        "basis",
        row.estimate().basis().stream().filter(w -> Math.abs(w.share()) >= LEAST_WEIGHT).toList(),
        weight -> json.line(() -> weight(weight)));
  }

  /** Writes a change of strength as the field {@code change}, null if there is none. */
  static void change(JsonText json, Optional<StrengthChange> change) {
    if (change.isEmpty()) {
      json.nothing("change");
      return;
    }
    json.object(
        "change",
        () -> {
          json.field("from", change.get().from().toString());
          json.field("to", change.get().to().toString());
          json.field("percent", change.get().percent(), PERCENT);
          json.field("lowPercent", change.get().lowPercent(), PERCENT);
          json.field("highPercent", change.get().highPercent(), PERCENT);
          json.field("probabilityOfRise", change.get().probabilityOfRise(), PROBABILITY);
          json.field("verdict", word(change.get().verdict()));
        });
  }

  private void weight(Weight weight) {
    json.field("date", weight.test().date().toString());
    setup(weight.test().setup());
    weight
        .test()
        .effort()
        .ifPresent(
            effort -> {
              json.field("holdSeconds", effort.seconds(), SECONDS);
              json.field("loadKg", effort.load().kilograms(), KILOGRAMS);
              if (weight.test().inForce()) {
                json.field("forceN", effort.load().newtons(), NEWTONS);
              }
            });
    json.field("weight", weight.share(), SHARE);
  }

  private void curve(Curve curve) {
    ForceTime forceTime = curve.forceTime();
    json.field("form", word(forceTime.form()));
    setup(curve.setup());
    json.field("fromSeconds", forceTime.shortestSeconds(), SECONDS);
    json.field("toSeconds", forceTime.longestSeconds(), SECONDS);
    json.list(
        "points",
        TIMES.stream().filter(forceTime::isValidFor).toList(),
        seconds ->
            json.line(
                () -> {
                  json.field("holdSeconds", seconds, SECONDS);
                  load(forceTime.load(seconds));
                }));
  }

  private void criticalForce() {
    Optional<Critical> first = survey.criticalForces().stream().findFirst();
    if (first.isPresent()) {
      CriticalForce force = first.get().force();
      Setup setup = first.get().setup();
      json.field("criticalForceKg", force.force().best().kilograms(), KILOGRAMS);
      json.field("impulseAboveKgS", force.impulseKgS(), IMPULSE);
      json.field("criticalForceDefinition", word(force.definition()));
      json.field("criticalForceHands", setup.hands().word());
      json.field("criticalForceLifting", setup.lifting());
      json.field("criticalForceGrip", setup.grip().name());
      json.field("criticalForceEdgeMm", setup.edge().millimetres(), MILLIMETRES);
      json.field("criticalForceDate", first.get().date().toString());
    } else {
      CRITICAL_FORCE.forEach(json::nothing);
    }
    json.list("criticalForces", survey.criticalForces(), c -> json.object(() -> critical(c)));
  }

  private void critical(Critical critical) {
    json.field("definition", word(critical.force().definition()));
    setup(critical.setup());
    json.field("firstDate", critical.first().toString());
    json.field("date", critical.date().toString());
    load(critical.force().force());
    json.field("impulseAboveKgS", critical.force().impulseKgS(), IMPULSE);
    json.field("impulseSpread", critical.force().impulseSpread(), SHARE);
    json.field("levelled", critical.force().levelled());
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
