package gripwright.export.json;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Findings as SARIF 2.1.0 (OASIS Static Analysis Results Interchange Format), for code hosts and
 * editors that show findings beside the lines they are about.
 *
 * <p>Files are relative to the project root, which the log calls {@code %SRCROOT%} without its
 * path: the same plans give the same characters on every machine. Advice is a {@code note}. A
 * finding that a plan waives is suppressed in the source, with the coach's reason. Stateless and
 * thread-safe.
 */
public final class SarifLog {

  /** Where the schema of SARIF 2.1.0 is published. */
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private static final String ROOT = "%SRCROOT%";
  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";

  private SarifLog() {}

  /**
   * Returns the log of one run, as a text that ends in a line feed.
   *
   * @param version version of the program
   * @param results findings in the order to be written
   * @param description returns a sentence on what a code means; empty if there is none
   * @param complete false if a file that was named could not be read
   */
  public static String of(
      String version,
      List<SarifResult> results,
      Function<String, Optional<String>> description,
      boolean complete) {
    Map<String, Severity> rules = new TreeMap<>();
    results.forEach(r -> rules.putIfAbsent(r.finding().code(), r.finding().severity()));
    List<String> order = new ArrayList<>(rules.keySet());
    JsonText json = new JsonText(Wording.english());
    json.object(
        () -> {
          json.field("$schema", SCHEMA);
          json.field("version", "2.1.0");
          json.list(
              "runs",
              List.of(results),
              all ->
                  json.object(
                      () -> {
                        driver(json, version, rules, description);
                        json.list(
                            "invocations",
                            List.of(complete),
                            ok -> json.line(() -> json.field("executionSuccessful", ok)));
                        root(json);
                        json.field("columnKind", "utf16CodeUnits");
                        json.list(
                            "results",
                            all,
                            r -> result(json, r, order.indexOf(r.finding().code())));
                      }));
        });
    return json.close();
  }

  private static void driver(
      JsonText json,
      String version,
      Map<String, Severity> rules,
      Function<String, Optional<String>> description) {
    json.object(
        "tool",
        () ->
            json.object(
                "driver",
                () -> {
                  json.field("name", "gripwright");
                  json.field("version", version);
                  json.list(
                      "rules",
                      rules.entrySet(),
                      rule ->
                          json.object(
                              () -> {
                                String code = rule.getKey();
                                json.field("id", code);
                                description
                                    .apply(code)
                                    .ifPresent(d -> text(json, "shortDescription", sentence(d)));
                                text(json, "help", "gripwright explain " + code);
                                json.object(
                                    "defaultConfiguration",
                                    () -> json.field("level", level(rule.getValue())));
                              }));
                }));
  }

  private static void root(JsonText json) {
    json.object(
        "originalUriBaseIds",
        () ->
            json.object(
                ROOT,
                () ->
                    text(
                        json,
                        "description",
                        "The folder that the plans and all they use are in.")));
  }

  private static void result(JsonText json, SarifResult result, int rule) {
    ReportedFinding finding = result.finding();
    json.object(
        () -> {
          json.field("ruleId", finding.code());
          json.field("ruleIndex", rule);
          json.field("level", level(finding.severity()));
          String hint = finding.hint();
          text(
              json,
              "message",
              sentence(finding.message()) + (hint == null ? "" : "\n" + sentence(hint)));
          json.list("locations", List.of(result), r -> location(json, r));
          if (!result.related().isEmpty()) {
            json.list("relatedLocations", result.related(), r -> related(json, r));
          }
          String because = finding.waivedBecause();
          if (because != null) {
            json.list("suppressions", List.of(because), b -> suppression(json, b));
          }
        });
  }

  private static void location(JsonText json, SarifResult result) {
    ReportedFinding finding = result.finding();
    String file = finding.file();
    json.object(
        () -> {
          if (file != null) {
            physical(json, file, result.region().orElse(null));
          }
          List<String> places =
              result.places().isEmpty() && finding.place() != null
                  ? List.of(finding.place())
                  : result.places();
          if (!places.isEmpty()) {
            json.list(
                "logicalLocations",
                places,
                place -> json.line(() -> json.field("fullyQualifiedName", place)));
          }
        });
  }

  private static void related(JsonText json, SarifResult.Related related) {
    json.object(
        () -> {
          physical(json, related.file(), related.region());
          text(json, "message", sentence(related.words()));
        });
  }

  private static void suppression(JsonText json, String because) {
    json.object(
        () -> {
          json.field("kind", "inSource");
          json.field("status", "accepted");
          json.field("justification", because);
        });
  }

  private static void physical(JsonText json, String file, SarifResult.@Nullable Region region) {
    json.object(
        "physicalLocation",
        () -> {
          json.object(
              "artifactLocation",
              () -> {
                json.field("uri", uri(file));
                if (!file.startsWith("..")) {
                  json.field("uriBaseId", ROOT);
                }
              });
          if (region != null) {
            json.object(
                "region",
                () -> {
                  json.field("startLine", region.startLine());
                  json.field("startColumn", region.startColumn());
                  json.field("endLine", region.endLine());
                  json.field("endColumn", region.endColumn());
                });
          }
        });
  }

  private static void text(JsonText json, String name, String text) {
    json.object(name, () -> json.field("text", text));
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case ADVICE -> "note";
    };
  }

  /**
   * Returns words as a sentence, with characters escaped that SARIF would read as a placeholder or
   * a link (2.1.0, 3.11.5 and 3.11.6).
   */
  private static String sentence(String words) {
    String text = words.replace("{", "{{").replace("}", "}}");
    if (text.contains("](")) {
      text = text.replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]");
    }
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    String rest = text.substring(Character.charCount(first));
    boolean closed = text.endsWith(".") || text.endsWith("?") || text.endsWith("!");
    return Character.toString(Character.toUpperCase(first)) + rest + (closed ? "" : ".");
  }

  /** Returns a relative path as a URI reference: other characters are percent-encoded as UTF-8. */
  private static String uri(String path) {
    StringBuilder uri = new StringBuilder();
    for (byte unit : path.getBytes(StandardCharsets.UTF_8)) {
      char character = (char) (unit & 0xFF);
      if (UNRESERVED.indexOf(character) >= 0) {
        uri.append(character);
      } else {
        uri.append('%').append("0123456789ABCDEF".charAt(unit >> 4 & 0xF));
        uri.append("0123456789ABCDEF".charAt(unit & 0xF));
      }
    }
    return uri.toString();
  }
}
