package gripwright.export.json;

import gripwright.finding.ReportedFinding;
import java.util.List;

/** Writes findings in the form that every document uses. */
final class FindingJson {

  private FindingJson() {}

  static void list(JsonText json, List<ReportedFinding> findings) {
    list(json, "findings", findings);
  }

  static void list(JsonText json, String name, List<ReportedFinding> findings) {
    json.list(name, findings, finding -> json.object(() -> fields(json, finding)));
  }

  private static void fields(JsonText json, ReportedFinding finding) {
    json.field("code", finding.code());
    json.field("severity", finding.severity().word());
    json.field("message", finding.message());
    json.field("hint", finding.hint());
    json.field("file", finding.file());
    position(json, "line", finding.line());
    position(json, "column", finding.column());
    position(json, "endLine", finding.endLine());
    position(json, "endColumn", finding.endColumn());
    json.field("rule", finding.rule());
    json.field("waivedBecause", finding.waivedBecause());
    json.field("place", finding.place());
    json.list("athletes", finding.athletes(), json::text);
  }

  /** Lines and columns count from 1; they are left out if there is no text. */
  private static void position(JsonText json, String name, int value) {
    if (value > 0) {
      json.field(name, value);
    } else {
      json.nothing(name);
    }
  }
}
