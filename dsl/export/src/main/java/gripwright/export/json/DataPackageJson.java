package gripwright.export.json;

import gripwright.export.csv.TidyTable;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes the descriptor of tables by Data Package 1 and Table Schema 1 (Frictionless Data,
 * specs.frictionlessdata.io, not verified against the publication). {@code unit}, {@code estimate},
 * and {@code missingValues} of a field are additions, as that standard allows; so is {@code
 * provenance}.
 */
final class DataPackageJson {

  private DataPackageJson() {}

  static void write(JsonText json, String name, String title, List<TidyTable> tables) {
    json.object(
        () -> {
          json.field("profile", "tabular-data-package");
          json.field("name", name);
          json.field("title", title);
          json.heading();
          json.list("resources", tables, table -> json.object(() -> resource(json, table)));
        });
  }

  private static void resource(JsonText json, TidyTable table) {
    String csv = table.csv();
    json.field("profile", "tabular-data-resource");
    json.field("name", table.name());
    json.field("path", table.fileName());
    json.field("description", table.description());
    json.field("format", "csv");
    json.field("mediatype", "text/csv");
    json.field("encoding", "utf-8");
    json.field("bytes", csv.getBytes(StandardCharsets.UTF_8).length);
    json.field("hash", "sha256:" + Provenance.sha256(csv));
    json.object(
        "dialect",
        () -> {
          json.field("delimiter", ",");
          json.field("quoteChar", "\"");
          json.field("doubleQuote", true);
          json.field("lineTerminator", "\r\n");
          json.field("header", true);
        });
    json.object("schema", () -> schema(json, table));
  }

  private static void schema(JsonText json, TidyTable table) {
    Set<String> codes = new LinkedHashSet<>();
    table.columns().forEach(column -> codes.add(column.missing()));
    json.list("fields", table.columns(), column -> json.line(() -> field(json, column)));
    json.list("missingValues", codes, json::text);
  }

  private static void field(JsonText json, TidyTable.Column column) {
    json.field("name", column.name());
    json.field("type", column.type().word());
    json.field("description", column.description());
    if (!column.unit().isEmpty()) {
      json.field("unit", column.unit());
    }
    json.field("estimate", column.estimate());
    json.list("missingValues", List.of(column.missing()), json::text);
  }
}
