package gripwright.export.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gripwright.export.csv.TidyTable.Column;
import gripwright.export.csv.TidyTable.Type;
import gripwright.export.json.JsonDocuments;
import gripwright.export.json.Manifest;
import gripwright.export.json.Provenance;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

final class TidyTableTest {

  private static final JsonDocuments DOCUMENTS =
      new JsonDocuments(
          Provenance.of("1.0.0", Map.of("a.grip", "language 1\n")), Wording.english());

  private static TidyTable.Builder loads() {
    return TidyTable.named("loads", "One row for each load")
        .column(new Column("athlete", Type.STRING, "", "who", "", false))
        .column(new Column("loadKg", Type.NUMBER, "kg", "the load", "NA", true));
  }

  private static List<?> mistakes(String text) throws IOException {
    try (InputStream in =
        TidyTableTest.class.getResourceAsStream("/schema/data-package.schema.json")) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(schema, InputFormat.JSON)
          .validate(text, InputFormat.JSON);
    }
  }

  @Test
  void aTableIsCsvByRfc4180() {
    TidyTable table = loads().row(List.of("a, \"b\"", "80.5")).row(List.of("c\r\nd", "NA")).build();
    assertEquals("athlete,loadKg\r\n\"a, \"\"b\"\"\",80.5\r\n\"c\r\nd\",NA\r\n", table.csv());
  }

  @Property
  void whatIsWrittenIsReadAgain(
      @ForAll @Size(min = 1, max = 5) List<@Size(value = 3) List<String>> rows) {
    // A lone surrogate is no text that a file could have.
    List<List<String>> clean =
        rows.stream()
            .map(row -> row.stream().map(f -> "x" + f.replaceAll("[\\uD800-\\uDFFF]", "")).toList())
            .toList();
    assertEquals(Optional.of(clean), CsvRows.of(CsvRows.text(clean)));
  }

  @Test
  void aTextThatEndsInQuotesIsNoCsv() {
    assertEquals(Optional.empty(), CsvRows.of("athlete,code\n\"a,b\n"));
  }

  @Test
  void aRowHasAValueForEveryColumn() {
    TidyTable.Builder table = loads();
    assertThrows(IllegalArgumentException.class, () -> table.row(List.of("a")));
    assertThrows(
        IllegalArgumentException.class,
        () -> table.column(new Column("athlete", Type.STRING, "", "again", "", false)));
    assertThrows(IllegalArgumentException.class, () -> TidyTable.named("Two Words", ""));
  }

  @Test
  void theDescriptorKeepsTheStandard() throws IOException {
    TidyTable table = loads().row(List.of("a", "80.5")).build();
    String text = DOCUMENTS.dataPackage("loads", "Loads", List.of(table));
    assertEquals(List.of(), mistakes(text));
    JsonNode json = new ObjectMapper().readTree(text);
    assertEquals("1.0.0", json.at("/provenance/version").asText());
    assertEquals(64, json.at("/provenance/sources/0/sha256").asText().length());
    JsonNode resource = json.at("/resources/0");
    assertEquals("loads.csv", resource.get("path").asText());
    assertEquals("sha256:" + Provenance.sha256(table.csv()), resource.get("hash").asText());
    assertEquals(
        table.csv().getBytes(StandardCharsets.UTF_8).length, resource.get("bytes").asInt());
    assertEquals("[\"\",\"NA\"]", resource.at("/schema/missingValues").toString());
    JsonNode field = resource.at("/schema/fields/1");
    assertEquals("number", field.get("type").asText());
    assertEquals("kg", field.get("unit").asText());
    assertEquals("[\"NA\"]", field.get("missingValues").toString());
    assertTrue(field.get("estimate").asBoolean());
    assertFalse(resource.at("/schema/fields/0/estimate").asBoolean());
  }

  @Test
  void theSchemaRefusesAnotherType() throws IOException {
    String text = DOCUMENTS.dataPackage("loads", "Loads", List.of(loads().build()));
    assertEquals(
        1, mistakes(text.replace("\"type\": \"number\"", "\"type\": \"kilograms\"")).size());
    assertFalse(mistakes(text.replace("\"loads.csv\"", "\"../loads.csv\"")).isEmpty());
  }

  @Test
  void aManifestIsReadAsWritten() {
    Manifest manifest = Manifest.of("1.0.0", Map.of("b.csv", "b", "a.csv", "a"));
    String text = DOCUMENTS.manifest(manifest);
    assertEquals(Optional.of(manifest), Manifest.parse(text));
    for (String other :
        List.of("", "{}", "[]", "{\"version\": \"1\"}", text + "{}", "{\"files\"")) {
      assertEquals(Optional.empty(), Manifest.parse(other), other);
    }
  }
}
