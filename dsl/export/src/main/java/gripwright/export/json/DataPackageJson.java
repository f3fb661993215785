package gripwright.export.json;

import gripwright.export.csv.TidyTable;
import java.util.List;
import java.util.Locale;

/**
 * Writes the description of a folder of tables by Frictionless Data Package, version 1, with Table
 * Schema. Units and estimates are properties of our own on fields, which the standard allows.
 */
final class DataPackageJson {

  private DataPackageJson() {}

  static void write(JsonText json, String name, String title, List<TidyTable> tables) {
    json.object(
        () -> {
          json.field("profile", "tabular-data-package");
          json.field("name", name);
          json.field("title", title);
          json.provenance(() -> {});
          json.list("resources", tables, table -> json.object(() -> table(json, table)));
        });
  }

  private static void table(JsonText json, TidyTable table) {
    json.field("profile", "tabular-data-resource");
    json.field("name", table.name());
    json.field("path", table.file());
    json.field("description", table.description());
    json.field("format", "csv");
    json.field("mediatype", "text/csv");
    json.field("encoding", "utf-8");
    json.object(
        "schema",
        () -> {
          json.list(
              "fields",
              table.columns(),
              column ->
                  json.object(
                      () -> {
                        json.field("name", column.name());
                        json.field("type", column.type().name().toLowerCase(Locale.ROOT));
                        json.field("description", column.description());
                        if (!column.unit().isEmpty()) {
                          json.field("unit", column.unit());
                        }
                        json.field("estimate", column.estimate());
                      }));
          json.list("missingValues", List.of(""), json::text);
        });
  }
}
