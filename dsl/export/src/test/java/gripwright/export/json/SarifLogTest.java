package gripwright.export.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Logs keep the schema that OASIS publishes for SARIF 2.1.0 (draft 7 of JSON Schema), which is read
 * from the jar of a library that carries it.
 */
final class SarifLogTest {

  private static List<Error> errors(String log) throws IOException {
    try (InputStream in =
        SarifLogTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(schema, InputFormat.JSON)
          .validate(
              log,
              InputFormat.JSON,
              context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }
  }

  private static SarifResult result(Severity severity, String message, String file, String waived) {
    ReportedFinding finding =
        ReportedFinding.builder("rule.a-" + severity.word(), severity, message)
            .hint("did you mean `b`?")
            .file(file)
            .line(file == null ? 0 : 3)
            .column(1)
            .endLine(3)
            .endColumn(2)
            .waivedBecause(waived)
            .place("plan p / block b")
            .build();
    SarifResult.Region region = new SarifResult.Region(3, 1, 3, 2);
    return new SarifResult(
        finding,
        file == null ? Optional.empty() : Optional.of(region),
        List.of("plan p / block b / week 1", "plan p / block b / week 3"),
        file == null
            ? List.of()
            : List.of(new SarifResult.Related("first defined here", file, region)));
  }

  private static String log(SarifResult... results) {
    return SarifLog.of("1.0.0", List.of(results), code -> Optional.of("a <name>"), true);
  }

  private static JsonNode run(String log) throws IOException {
    return new ObjectMapper().readTree(log).path("runs").path(0);
  }

  @Test
  void logsKeepThePublishedSchema() throws IOException {
    assertEquals(List.of(), errors(log()));
    assertEquals(
        List.of(),
        errors(
            log(
                result(Severity.ERROR, "unknown grip `a`", "plans/winter.grip", null),
                result(Severity.WARNING, "a {brace}", "\u00E5 b:c%.grip", "a trip"),
                result(Severity.ADVICE, "[x](1)", "../out.grip", null),
                result(Severity.ERROR, "no text", null, null))));
  }

  @Test
  void theSchemaIsChecked() throws IOException {
    assertFalse(errors(log().replace("\"version\": \"2.1.0\"", "\"version\": \"2.0\"")).isEmpty());
    assertFalse(
        errors(log(result(Severity.ADVICE, "a", "a.grip", null)).replace("\"note\"", "\"advice\""))
            .isEmpty());
  }

  @Test
  void aFindingHasItsLevelPlaceAndWords() throws IOException {
    JsonNode run = run(log(result(Severity.ADVICE, "unknown grip `a`", "b/a.grip", null)));
    JsonNode result = run.path("results").path(0);
    assertEquals("note", result.path("level").asText());
    assertEquals("rule.a-advice", result.path("ruleId").asText());
    assertEquals(
        "Unknown grip `a`.\nDid you mean `b`?", result.path("message").path("text").asText());
    JsonNode location = result.path("locations").path(0);
    JsonNode physical = location.path("physicalLocation");
    assertEquals("b/a.grip", physical.path("artifactLocation").path("uri").asText());
    assertEquals("%SRCROOT%", physical.path("artifactLocation").path("uriBaseId").asText());
    assertEquals(3, physical.path("region").path("startLine").asInt());
    assertEquals(2, location.path("logicalLocations").size());
    assertEquals(
        "First defined here.",
        result.path("relatedLocations").path(0).path("message").path("text").asText());
    assertTrue(result.path("suppressions").isMissingNode());
    assertEquals("utf16CodeUnits", run.path("columnKind").asText());
    JsonNode rule = run.path("tool").path("driver").path("rules").path(0);
    assertEquals("rule.a-advice", rule.path("id").asText());
    assertEquals("A <name>.", rule.path("shortDescription").path("text").asText());
  }

  @Test
  void aWaivedFindingIsSuppressedWithItsReason() throws IOException {
    JsonNode result = run(log(result(Severity.ERROR, "a", "a.grip", "a trip"))).at("/results/0");
    assertEquals("error", result.path("level").asText());
    JsonNode suppression = result.path("suppressions").path(0);
    assertEquals("inSource", suppression.path("kind").asText());
    assertEquals("a trip", suppression.path("justification").asText());
  }

  @Test
  void placeholdersOfSarifAreEscaped() throws IOException {
    JsonNode run =
        run(
            log(
                result(Severity.ERROR, "a {0} here", "\u00E5 b:c.grip", null),
                result(Severity.ERROR, "see [x](1)", "../a.grip", null)));
    assertTrue(run.at("/results/0/message/text").asText().startsWith("A {{0}} here."));
    assertTrue(run.at("/results/1/message/text").asText().startsWith("See \\[x\\](1)."));
    assertEquals(
        "%C3%A5%20b%3Ac.grip",
        run.at("/results/0/locations/0/physicalLocation/artifactLocation/uri").asText());
    assertTrue(
        run.at("/results/1/locations/0/physicalLocation/artifactLocation/uriBaseId")
            .isMissingNode());
  }
}
