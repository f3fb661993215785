package example.cluster;

import gripwright.export.json.JsonDocuments;
import gripwright.export.json.PlanDocument;
import gripwright.export.json.Provenance;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Compiles the text of an athlete; the same text gives the same documents on any machine. */
final class Replan {

  private Replan() {}

  /**
   * A compiled plan.
   *
   * @param file name of the text
   * @param plan name of the plan; empty if the text has errors
   * @param json the document of the plan, or the findings if there are errors
   */
  record Document(String file, String plan, String json) {}

  /** Returns the documents of the plans of a text, in the order of their names. */
  static List<Document> of(String file, String text) {
    Reading reading = Gripwright.read(file, text);
    JsonDocuments documents = documents(reading);
    if (!reading.usable()) {
      return List.of(new Document(file, "", documents.findings(reading.findings())));
    }
    List<Document> all = new ArrayList<>();
    for (String plan : reading.plans().keySet()) {
      Compilation compilation = reading.compile(plan);
      if (!compilation.usable()) {
        all.add(new Document(file, plan, documents.findings(compilation.findings())));
        continue;
      }
      List<PlanDocument> plans = new ArrayList<>();
      for (CompiledPlan compiled : compilation.plans()) {
        plans.add(new PlanDocument(compiled, compilation.findings()));
      }
      all.add(new Document(file, plan, documents.compiled(plans, compilation.findings())));
    }
    return all;
  }

  /** Returns documents with the SHA-256 of what was read. */
  static JsonDocuments documents(Reading reading) {
    Map<String, String> texts = new LinkedHashMap<>();
    reading.files().forEach(file -> texts.put(file.name(), file.text()));
    return new JsonDocuments(Provenance.of("example", texts), Wording.english());
  }
}
