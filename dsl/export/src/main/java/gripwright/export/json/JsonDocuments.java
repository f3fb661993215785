package gripwright.export.json;

import gripwright.diff.EditionDiff;
import gripwright.finding.ReportedFinding;
import gripwright.review.Review;
import gripwright.survey.GripSurvey;
import gripwright.survey.StrengthSurvey;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Map;

/**
 * The JSON documents of the commands, as texts that end in a line feed.
 *
 * <p>The same input gives the same characters in every locale and time zone: fields stand in the
 * order of the schema, loads have at most 4 decimals, seconds and per cent 3, newton seconds and
 * angles 1, and no number has an exponent. Stateless and thread-safe.
 */
public final class JsonDocuments {

  /** Version of the documents: it changes when a field changes its meaning or goes away. */
  public static final int SCHEMA_VERSION = 1;

  /** Version of the plan language that is understood. */
  static final int LANGUAGE = 1;

  private JsonDocuments() {}

  /**
   * Returns the document of {@code check}, which is also what stands in for any other document when
   * there are errors: {@code schemaVersion} and {@code findings}.
   */
  public static String findings(List<ReportedFinding> findings) {
    JsonText json = new JsonText(Wording.english());
    json.object(
        () -> {
          json.field("schemaVersion", SCHEMA_VERSION);
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
  public static String explained(String code, String text) {
    JsonText json = new JsonText(Wording.english());
    json.object(
        () -> {
          json.field("schemaVersion", SCHEMA_VERSION);
          json.field("code", code);
          json.field("text", text);
        });
    return json.close();
  }

  /**
   * Returns the document of {@code format}: {@code schemaVersion}, {@code files} and no findings.
   *
   * @param changed for each file, relative to the project root, whether its layout is, or was,
   *     another; in the order to be written
   */
  public static String formatted(Map<String, Boolean> changed) {
    JsonText json = new JsonText(Wording.english());
    json.object(
        () -> {
          json.field("schemaVersion", SCHEMA_VERSION);
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
   * Returns the document of {@code compile}. One plan is a document of its own; any other number of
   * plans is a list of such documents under {@code plans}.
   *
   * @param plans compiled plans with the findings about each, in the order to be written
   * @param findings everything there is to say about the run, the findings of all plans included
   * @param wording the words for what is data
   */
  public static String compiled(
      List<PlanDocument> plans, List<ReportedFinding> findings, Wording wording) {
    JsonText json = new JsonText(wording);
    if (plans.size() == 1) {
      PlanJson.write(json, new PlanDocument(plans.get(0).plan(), findings));
    } else {
      json.object(
          () -> {
            json.field("schemaVersion", SCHEMA_VERSION);
            json.field("language", LANGUAGE);
            json.list("plans", plans, plan -> PlanJson.write(json, plan));
            FindingJson.list(json, findings);
          });
    }
    return json.close();
  }

  /**
   * Returns the document of {@code grips}: the athlete's hand, and each grip on it with angles,
   * shares, estimated forces, slips and gates.
   *
   * @param survey the grips on an athlete's hands
   * @param findings what there is to say about the file, worded
   * @param wording the words for what is data
   */
  public static String grips(GripSurvey survey, List<ReportedFinding> findings, Wording wording) {
    JsonText json = new JsonText(wording);
    GripJson.write(json, survey, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code strength}: the strength map, the greatest load by time, and
   * critical force with its definition.
   *
   * @param survey an athlete's strength
   * @param findings what there is to say about the file, worded
   * @param wording the words for what is data
   */
  public static String strength(
      StrengthSurvey survey, List<ReportedFinding> findings, Wording wording) {
    JsonText json = new JsonText(wording);
    StrengthJson.write(json, survey, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code review}: sessions against the plan, load by day and week, work
   * by grip, finger and pulley, change between tests, pain, and what comes next.
   *
   * @param review what an athlete's log says
   * @param findings what there is to say about the file, worded
   * @param wording the words for what is data
   */
  public static String review(Review review, List<ReportedFinding> findings, Wording wording) {
    JsonText json = new JsonText(wording);
    ReviewJson.write(json, review, findings);
    return json.close();
  }

  /**
   * Returns the document of {@code diff}: one change for each day that it is felt on, and what
   * there is to say about either side.
   *
   * @param diff what changed
   * @param before what there is to say about the edition before, worded
   * @param after what there is to say about the edition now, worded
   * @param wording the words for what is data
   */
  public static String diff(
      EditionDiff diff,
      List<ReportedFinding> before,
      List<ReportedFinding> after,
      Wording wording) {
    JsonText json = new JsonText(wording);
    DiffJson.write(json, diff, before, after);
    return json.close();
  }
}
