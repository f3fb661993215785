package gripwright.export.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gripwright.export.Changes;
import gripwright.export.Hands;
import gripwright.export.Season;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import gripwright.review.Review;
import gripwright.schedule.DatedSession;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

final class JsonDocumentsTest {

  private static final JsonDocuments DOCUMENTS =
      new JsonDocuments(
          Provenance.of("1.0", Map.of("season.grip", "language 1\n")), Wording.english());

  private static final Path SCHEMAS = Path.of("../../docs/schema");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static String schemaText(String name) throws IOException {
    return Files.readString(SCHEMAS.resolve(name + ".schema.json"));
  }

  private static List<Error> against(String schema, String document) throws IOException {
    Schema compiled =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(schemaText(schema), InputFormat.JSON);
    return compiled.validate(
        document,
        InputFormat.JSON,
        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
  }

  private static void assertValid(String schema, String document) throws IOException {
    assertEquals(List.of(), against(schema, document));
  }

  private static PlanDocument document(CompiledPlan plan) {
    return new PlanDocument(plan, plan.findings().stream().map(Season::worded).toList());
  }

  private static String thaw() {
    PlanDocument document = document(Season.thaw());
    return DOCUMENTS.compiled(List.of(document), document.findings());
  }

  @Test
  void everyDocumentKeepsItsSchema() throws IOException {
    assertValid("compile", thaw());
    assertValid("compile", DOCUMENTS.compiled(List.of(document(Season.empty())), List.of()));
    List<PlanDocument> two = List.of(document(Season.thaw()), document(Season.empty()));
    assertValid("compile", DOCUMENTS.compiled(two, two.get(0).findings()));
    assertValid("compile", DOCUMENTS.compiled(List.of(), List.of()));
    for (List<ReportedFinding> findings : List.of(List.<ReportedFinding>of(), samples())) {
      String json = DOCUMENTS.findings(findings);
      assertValid("compile", json);
      assertValid("grips", json);
      assertValid("check", json);
      assertValid("findings", json);
    }
  }

  private static List<ReportedFinding> samples() {
    ModelPath place = ModelPath.of("plan", "thaw");
    ReportedFinding withoutText =
        ReportedFinding.builder("name.unknown", Severity.ERROR, "unknown \"grip\"\n\u0001")
            .hint("did you mean ...?")
            .build();
    return List.of(
        Season.worded(Finding.error("rule.short-rest-48", place).waived("a trip")),
        Season.worded(Finding.advice("plan.load-modelled", place)),
        withoutText);
  }

  @Test
  void gripsKeepTheirSchema() throws IOException {
    assertValid("grips", DOCUMENTS.grips(Hands.alike(), samples()));
    assertValid("grips", DOCUMENTS.grips(Hands.different(), List.of()));
    String json = DOCUMENTS.grips(Hands.alike(), List.of());
    assertFalse(against("grips", json.replace("\"share\"", "\"part\"")).isEmpty());
    assertFalse(against("grips", json.replace("\"a2LowN\"", "\"a2Low\"")).isEmpty());
    assertFalse(against("compile", json).isEmpty());
  }

  @Test
  void differencesKeepTheirSchema() throws IOException {
    assertValid("diff", DOCUMENTS.diff(Changes.none(), List.of(), List.of()));
    String json = DOCUMENTS.diff(Changes.all(), samples(), samples());
    assertValid("diff", json);
    assertValid("diff", DOCUMENTS.findings(samples()));
    assertFalse(against("diff", json.replace("\"plan-moved\"", "\"moved\"")).isEmpty());
    assertFalse(against("diff", json.replace("\"measure\"", "\"what\"")).isEmpty());
    JsonNode document = MAPPER.readTree(json);
    assertEquals(samples().size(), document.get("findingsBefore").size());
  }

  @Test
  void reviewsKeepTheirSchema() throws IOException {
    CompiledPlan plan = Season.thaw();
    DatedSession first = plan.sessions().get(0);
    Log log =
        plan.log()
            .with(
                new LogEntry.Trained(
                    first.date(), first.name(), List.of(), Optional.of("a \"note\"")))
            .with(
                LogEntry.Pain.builder(first.date(), Finger.RING, 4)
                    .kind(LogEntry.Pain.Kind.SHARP)
                    .build());
    Review review =
        Review.of(plan.athlete(), log, List.of(plan), Map.of(), first.date().plusDays(9));
    String json = DOCUMENTS.review(review, samples());
    assertValid("review", json);
    JsonNode read = MAPPER.readTree(json);
    assertEquals("review.stop", read.at("/next/0/code").asText());
    assertEquals("partly", read.at("/sessions/0/outcome").asText());
    assertValid("review", DOCUMENTS.review(Review.unlogged(plan.athlete()), List.of()));
    assertValid("review", DOCUMENTS.findings(samples()));
    assertFalse(against("review", json.replace("\"monotony\"", "\"sameness\"")).isEmpty());
    assertFalse(against("compile", json).isEmpty());
  }

  @Test
  void aGripHasTheInputsOfItsEstimate() throws IOException {
    JsonNode survey = MAPPER.readTree(DOCUMENTS.grips(Hands.alike(), List.of()));
    JsonNode grip = survey.at("/grips/0");
    assertEquals("half-crimp", grip.get("grip").asText());
    // 68.5 kg on both hands: 671.755525 N, half of it on each
    assertEquals("671.8", grip.get("totalForceN").asText());
    assertEquals("335.9", grip.get("handForceN").asText());
    assertTrue(grip.get("side").isNull() && grip.get("reachable").asBoolean());
    assertEquals(4, grip.get("fingers").size());
    double force = 0;
    for (JsonNode finger : grip.get("fingers")) {
      force += finger.get("fingertipN").asDouble();
      for (String name : List.of("fdp", "fds", "a2", "a4")) {
        double value = finger.get(name + "N").asDouble();
        assertTrue(finger.get(name + "LowN").asDouble() <= value, name);
        assertTrue(finger.get(name + "HighN").asDouble() >= value, name);
      }
    }
    assertEquals(335.9, force, 0.2);
    assertEquals("little", grip.at("/slip/3/finger").asText());
    assertTrue(grip.at("/slip/3/ratios/ring").asDouble() > 1.3);
    assertTrue(grip.at("/slip/3/ratios/little").isMissingNode());
  }

  @Test
  void handsThatDifferAreSeparate() throws IOException {
    JsonNode survey = MAPPER.readTree(DOCUMENTS.grips(Hands.different(), List.of()));
    assertEquals("182", survey.at("/hand/left/lengthMm").asText());
    assertEquals("index", survey.at("/hand/left/jointRanges/0/finger").asText());
    assertEquals("left", survey.at("/grips/0/side").asText());
    assertEquals("right", survey.at("/grips/1/side").asText());
    JsonNode reason = survey.at("/grips/0/reasons/0");
    assertEquals("beyond-joint-limit", reason.get("reason").asText());
    JsonNode refused = survey.at("/grips/0");
    assertEquals(4, refused.get("nearestPose").size());
    for (String name : List.of("fingers", "slip", "advice")) {
      assertEquals(
          0, refused.get(name).size(), "there are no estimates for a grip out of reach: " + name);
    }
    assertTrue(refused.get("wristRollDeg").isNull() && refused.get("lumbricalIndex").isNull());
    assertTrue(refused.get("maximumKg").isNull(), "there are no tests");
    assertEquals(0, survey.at("/grips/1/nearestPose").size());
    JsonNode index = survey.at("/grips/1/fingers/0");
    assertTrue(index.get("personalBandLowDeg").asDouble() <= index.get("pipFlexionDeg").asDouble());
    assertEquals("40", reason.get("limitHighDeg").asText());
    JsonNode gate = survey.at("/grips/4/gates/0");
    assertEquals("split-grip-gate", gate.get("rule").asText());
    assertEquals("18 months", gate.get("was").asText());
    assertTrue(gate.get("closed").asBoolean());
  }

  @Test
  void thePageOfACodeIsADocument() throws IOException {
    assertValid("explain", DOCUMENTS.explained("name.unknown", "unknown grip\n"));
  }

  @Test
  void theSchemaRefusesUnknownFields() throws IOException {
    String json = thaw();
    assertFalse(against("compile", json.replace("\"hard\"", "\"heavy\"")).isEmpty());
    assertFalse(against("compile", json.replace("2027-01-11", "11.1.2027")).isEmpty());
    assertFalse(against("compile", json.replace("\"both\"", "\"two\"")).isEmpty());
    assertFalse(against("check", json).isEmpty());
  }

  @Test
  void everyFieldIsDescribedAndNoOtherIsAllowed() throws IOException {
    for (String name : List.of("check", "compile", "grips", "findings")) {
      look(name, MAPPER.readTree(schemaText(name)));
    }
  }

  private static void look(String where, JsonNode schema) {
    if (schema.has("properties")) {
      assertTrue(schema.has("description"), where);
      assertFalse(schema.get("additionalProperties").asBoolean(true), where);
      schema
          .get("properties")
          .properties()
          .forEach(
              field ->
                  assertTrue(
                      field.getValue().has("description") || field.getValue().has("$ref"),
                      where + "/" + field.getKey()));
    }
    schema
        .properties()
        .forEach(
            field -> {
              if (field.getValue().isContainerNode()) {
                look(where + "/" + field.getKey(), field.getValue());
              }
            });
  }

  @Test
  void theFindingIsTheSameInEverySchema() throws IOException {
    JsonNode finding = MAPPER.readTree(schemaText("findings")).at("/$defs/finding");
    assertEquals(finding, MAPPER.readTree(schemaText("check")).at("/$defs/finding"));
    assertEquals(finding, MAPPER.readTree(schemaText("compile")).at("/$defs/finding"));
    assertEquals(finding, MAPPER.readTree(schemaText("grips")).at("/$defs/finding"));
  }

  @Test
  void numbersAreRoundedAndPlain() throws IOException {
    JsonNode exercise = MAPPER.readTree(thaw()).at("/sessions/0/exercises/0");
    assertEquals("81.25", exercise.get("totalLoadKg").asText());
    assertEquals("12.75", exercise.get("addedKg").asText());
    assertEquals("96.7301", exercise.get("maxUsedKg").asText());
    assertEquals("84.5", exercise.get("percentOfMax").asText());
    // 81.25 kg for 5 x 10 s: 4062.5 kg s of 9.80665 N each, 39839.5 N s by hand
    assertEquals("39839.5", exercise.get("impulseNs").asText());
    JsonNode lift = MAPPER.readTree(thaw()).at("/sessions/1/exercises/1");
    assertEquals("2.5", lift.get("holdSeconds").asText());
    assertEquals("left", lift.get("hands").asText());
    assertTrue(lift.get("percentOfMax").isNull() && lift.get("maxUsedKg").isNull());
  }

  @Test
  void theFingersHaveTheAthletesOwnAngles() throws IOException {
    GripFit fit = GripFit.of(Season.HALF, Season.SUNNIVA.left(), Length.ofMillimetres(20));
    JsonNode fingers = MAPPER.readTree(thaw()).at("/sessions/0/exercises/0/fingers");
    assertEquals(4, fingers.size());
    for (int i = 0; i < 4; i++) {
      FingerPose pose = fit.pose().fingers().get(i);
      assertEquals(pose.finger().word(), fingers.get(i).get("finger").asText());
      String written = fingers.get(i).get("pipFlexionDeg").asText();
      assertEquals(Numbers.plain(pose.pip().degrees(), 1), written);
      assertFalse(fingers.get(i).has("side"), "two hands alike");
    }
    assertEquals(4, MAPPER.readTree(thaw()).at("/sessions/1/exercises/1/fingers").size());
  }

  @Test
  void handsThatDifferHaveTheirSides() throws IOException {
    String json =
        DOCUMENTS.compiled(
            List.of(new PlanDocument(Season.thaw(Season.unlike()), List.of())), List.of());
    assertValid("compile", json);
    JsonNode both = MAPPER.readTree(json).at("/sessions/0/exercises/0/fingers");
    assertEquals(8, both.size());
    assertEquals("left", both.get(0).get("side").asText());
    assertEquals("index", both.get(4).get("finger").asText());
    assertEquals("right", both.get(4).get("side").asText());
    JsonNode left = MAPPER.readTree(json).at("/sessions/1/exercises/1/fingers");
    assertEquals(4, left.size(), "one hand holds");
    assertFalse(left.get(0).has("side"), "hands says which");
  }

  @Test
  void fieldsAreInTheOrderOfTheSchema() throws IOException {
    JsonNode schema = MAPPER.readTree(schemaText("compile")).get("$defs");
    JsonNode json = MAPPER.readTree(thaw());
    sameOrder(schema.get("plan"), json);
    sameOrder(schema.get("session"), json.at("/sessions/0"));
    sameOrder(schema.get("exercise"), json.at("/sessions/0/exercises/0"));
    sameOrder(schema.get("week"), json.at("/weeks/0"));
    sameOrder(schema.get("retest"), MAPPER.readTree(tested()).at("/retests/0"));
    sameOrder(schema.get("finding"), json.at("/findings/0"));
    JsonNode grips = MAPPER.readTree(schemaText("grips")).get("$defs");
    JsonNode survey = MAPPER.readTree(DOCUMENTS.grips(Hands.different(), List.of()));
    sameOrder(grips.get("survey"), survey);
    sameOrder(grips.get("hand"), survey.at("/hand/left"));
    sameOrder(grips.get("grip"), survey.at("/grips/0"));
    sameOrder(grips.get("finger"), survey.at("/grips/1/fingers/0"));
    sameOrder(grips.get("reason"), survey.at("/grips/0/reasons/0"));
    sameOrder(grips.get("slip"), survey.at("/grips/1/slip/0"));
    sameOrder(grips.get("gate"), survey.at("/grips/4/gates/0"));
  }

  @Test
  void testsOfEveryKindKeepTheSchema() throws IOException {
    assertValid("compile", tested());
    JsonNode tests = MAPPER.readTree(tested()).get("retests");
    assertEquals("series", tests.get(0).get("kind").asText());
    assertEquals(24, tests.get(0).get("holds").asInt());
    assertEquals("60 % max", tests.get(1).get("level").asText());
    assertTrue(tests.get(1).get("holdSeconds").isNull());
    assertEquals("mean", tests.get(1).get("counts").asText());
    assertTrue(tests.get(2).get("block").isNull(), "before the plan");
    assertFalse(tests.get(2).has("kind"), "one hold, as before tests had kinds");
  }

  private static String tested() {
    PlanDocument document = document(Season.tested());
    return DOCUMENTS.compiled(List.of(document), document.findings());
  }

  private static void sameOrder(JsonNode schema, JsonNode written) {
    Set<String> required = new HashSet<>();
    schema.path("required").forEach(name -> required.add(name.asText()));
    assertEquals(
        schema.get("properties").properties().stream()
            .map(f -> f.getKey())
            .filter(name -> required.contains(name) || written.has(name))
            .toList(),
        written.properties().stream().map(f -> f.getKey()).toList());
  }

  @Test
  void smallObjectsAreOnOneLine() {
    String json = thaw();
    assertTrue(
        json.contains(
            "\n            {\"kind\": \"hold\", \"seconds\": 10, \"totalLoadKg\": 81.25},\n"),
        json);
    assertTrue(json.endsWith("\n}\n"), json);
    assertFalse(json.contains("\r") || json.contains(" \n"), "blank at a line's end");
  }

  @Test
  void theSameInEveryLocaleAndTimeZone() {
    String here = thaw();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(here, thaw());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void nothingIsPromised() {
    Pattern promise = Pattern.compile("\\b(safe|protect|prevent)", Pattern.CASE_INSENSITIVE);
    assertFalse(promise.matcher(thaw()).find());
    assertFalse(promise.matcher(DOCUMENTS.grips(Hands.different(), List.of())).find());
  }
}
