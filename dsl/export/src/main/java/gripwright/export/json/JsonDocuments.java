package gripwright.export.json;

import gripwright.compare.ComparisonResult;
import gripwright.diff.EditionDiff;
import gripwright.export.csv.TidyTable;
import gripwright.finding.ReportedFinding;
import gripwright.review.Review;
import gripwright.survey.GripSurvey;
import gripwright.survey.StrengthSurvey;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The JSON documents of the commands, as texts that end in a line feed.
 *
 * <p>The same input gives the same characters in every locale and time zone: fields are in the
 * order of the schema, loads have at most 4 decimals, seconds and per cent 3, newton seconds and
 * angles 1, and no number has an exponent. Immutable and thread-safe.
 */
public final class JsonDocuments {

  /** Version of the documents: it changes when a field changes its meaning or is removed. */
  public static final int SCHEMA_VERSION = 1;

  /** Version of the supported plan language. */
  static final int LANGUAGE = 1;

  private final Provenance provenance;
  private final Wording wording;

  /**
   * Creates a writer of documents.
   *
   * @param provenance where they come from
   * @param wording turns data into words
   */
  public JsonDocuments(Provenance provenance, Wording wording) {
    this.provenance = Objects.requireNonNull(provenance, "provenance");
    this.wording = Objects.requireNonNull(wording, "wording");
  }

  private JsonText text() {
    return new JsonText(wording, provenance);
  }

  /**
   * Returns the document of {@code check}, which also replaces any other document when there are
   * errors: {@code schemaVersion} and {@code findings}.
   */
  public String findings(List<ReportedFinding> findings) {
    JsonText json = text();
    json.object(
        () -> {
          json.heading();
          FindingJson.list(json, findings);
        });
    return json.close();
  }

  /**
   * Returns the document of {@code explain}: {@code schemaVersion}, {@code code} and {@code text}.
   *
   * @param code a finding's code
   * @param text its page, as people read it
   */
  public String explained(String code, String text) {
    JsonText json = text();
    json.object(
        () -> {
          json.heading();
          json.field("code", code);
          json.field("text", text);
        });
    return json.close();
  }

  /**
   * Returns the document of {@code format}: {@code schemaVersion}, {@code files} and no findings.
   *
   * @param changed for each file, relative to the project root, whether formatting changes (or
   *     changed) it; in output order
   */
  public String formatted(Map<String, Boolean> changed) {
    JsonText json = text();
    json.object(
        () -> {
          json.heading();
          json.list(
              "files",
              changed.entrySet(),
              file ->
                  json.object(
                      () -> {
                        json.field("file", file.getKey());
                        json.field("changed", file.getValue());
                      }));
          FindingJson.list(json, List.of());
        });
    return json.close();
  }

  /**
   * Returns the document of {@code compile}. A single plan is a document of its own; several plans,
   * or none, are a list of such documents under {@code plans}.
   *
   * @param plans compiled plans with the findings about each, in the order to be written
   * @param findings all findings of the run, the findings of all plans included
   */
  public String compiled(List<PlanDocument> plans, List<ReportedFinding> findings) {
    if (plans.size() != 1) {
      return compiledInPart(plans, findings);
    }
    JsonText json = text();
    PlanJson.write(json, new PlanDocument(plans.get(0).plan(), findings));
    return json.close();
  }

  /**
   * Returns the document of {@code compile} where some athletes' sessions may not be used: a list
   * of the others' documents under {@code plans}, even of one, and all findings.
   *
   * @param plans compiled plans that may be used, with the findings about each
   * @param findings all findings of the run
   */
  public String compiledInPart(List<PlanDocument> plans, List<ReportedFinding> findings) {
    JsonText json = text();
    json.object(
        () -> {
          json.heading();
          json.field("language", LANGUAGE);
          json.list("plans", plans, plan -> PlanJson.write(json, plan));
          FindingJson.list(json, findings);
        });
    return json.close();
  }

  /**
   * Returns the document of {@code grips}: the athlete's hand, and each grip on it with angles,
   * shares, estimated forces, slips and gates.
   *
   * @param survey the grips on an athlete's hands
   * @param findings the findings about the file, with their sentences
   */
  public String grips(GripSurvey survey, List<ReportedFinding> findings) {
    JsonText json = text();
    GripJson.write(json, survey, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code strength}: the strength map, the greatest load by time, and
   * critical force with its definition.
   *
   * @param survey an athlete's strength
   * @param findings the findings about the file, with their sentences
   */
  public String strength(StrengthSurvey survey, List<ReportedFinding> findings) {
    JsonText json = text();
    StrengthJson.write(json, survey, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code review}: planned and completed sessions, load by day and week,
   * work by grip, finger and pulley, change between tests, pain, and what comes next.
   *
   * @param review the review of an athlete's log
   * @param findings the findings about the file, with their sentences
   */
  public String review(Review review, List<ReportedFinding> findings) {
    JsonText json = text();
    ReviewJson.write(json, review, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code compare}: arms, matching and differences for an athlete or a
   * cohort. Several, by comparison and athlete, are a list of such documents under {@code
   * comparisons}.
   *
   * @param results what was compared
   * @param findings the findings about the file, with their sentences
   */
  public String compared(List<ComparisonResult> results, List<ReportedFinding> findings) {
    JsonText json = text();
    int subjects = results.stream().mapToInt(result -> result.subjects().size()).sum();
    if (subjects == 1) {
      results.forEach(
          result ->
              result
                  .subjects()
                  .forEach(subject -> ComparisonJson.write(json, result, subject, findings)));
      return json.close();
    }
    json.object(
        () -> {
          json.heading();
          json.field("language", LANGUAGE);
          json.list(
              "comparisons",
              results,
              result ->
                  result
                      .subjects()
                      .forEach(subject -> ComparisonJson.write(json, result, subject, List.of())));
          FindingJson.list(json, findings);
        });
    return json.close();
  }

  /**
   * Returns the document of {@code diff}: one change for each day it affects, and the findings of
   * both sides.
   *
   * @param diff what changed
   * @param before the findings about the edition before, worded
   * @param after the findings about the edition now, worded
   */
  public String diff(EditionDiff diff, List<ReportedFinding> before, List<ReportedFinding> after) {
    JsonText json = text();
    DiffJson.write(json, diff, before, after);
    return json.close();
  }

  /**
   * Returns the descriptor of tables, {@code datapackage.json}, by Data Package 1 and Table Schema
   * 1.
   *
   * @param name of the package: small letters, digits, {@code -}, {@code _} and {@code .}
   * @param title for people
   * @param tables the tables, in the order to be listed
   */
  public String dataPackage(String name, String title, List<TidyTable> tables) {
    JsonText json = text();
    DataPackageJson.write(json, name, title, tables);
    return json.close();
  }

  /** Returns the list of files of a folder, which {@link Manifest#parse} reads. */
  public String manifest(Manifest manifest) {
    JsonText json = new JsonText(wording);
    manifest.write(json);
    return json.close();
  }
}
