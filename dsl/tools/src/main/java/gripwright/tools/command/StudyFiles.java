package gripwright.tools.command;

import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.export.csv.ComparisonCsv;
import gripwright.export.csv.TidyTable;
import gripwright.export.json.Provenance;
import gripwright.export.picture.ForestPicture;
import gripwright.export.picture.ParetoPicture;
import gripwright.export.text.MethodsText;
import gripwright.language.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Writes comparisons as a folder: tables, their description, methods and figures. */
final class StudyFiles {

  private StudyFiles() {}

  /**
   * Writes the folder and returns a line about it.
   *
   * @throws UsageException if it can't be written
   */
  static String write(List<ComparisonResult> results, Reading reading, Arguments given)
      throws UsageException {
    Path folder = given.path(given.value(Arguments.TO).orElseThrow());
    List<ComparisonResult> shown =
        given.value(Arguments.CODES).isPresent()
            ? coded(results, AthleteCodes.of(given, folder, athletes(results)))
            : results;
    Provenance provenance = Console.provenance(reading.files());
    Map<String, String> texts = new LinkedHashMap<>();
    List<TidyTable> tables = ComparisonCsv.tables(shown);
    tables.forEach(table -> texts.put(table.file(), table.csv()));
    String title =
        shown.size() == 1
            ? shown.get(0).comparison().title().orElse(shown.get(0).comparison().name())
            : "comparisons";
    texts.put(
        "datapackage.json",
        Console.documents(reading.files())
            .dataPackage(shown.get(0).comparison().name(), title, tables));
    for (ComparisonResult result : shown) {
      for (Subject subject : result.subjects()) {
        boolean only = shown.size() == 1 && result.subjects().size() == 1;
        String suffix = only ? "" : "-" + result.comparison().name() + "-" + subject.name();
        texts.put(
            "methods" + suffix + ".md",
            MethodsText.of(result, subject, provenance, Console.wording()));
        texts.put("forest" + suffix + ".svg", ForestPicture.of(subject, Console.wording()));
        if (ParetoPicture.canDraw(result.comparison())) {
          texts.put(
              "pareto" + suffix + ".svg",
              ParetoPicture.of(result.comparison(), subject, Console.wording()));
        }
      }
    }
    OutputFolder.write(folder, texts);
    return texts.size() + 1 + " files written to " + given.value(Arguments.TO).orElse("") + "\n";
  }

  private static TreeSet<String> athletes(List<ComparisonResult> results) {
    TreeSet<String> names = new TreeSet<>();
    for (ComparisonResult result : results) {
      result.subjects().stream()
          .filter(subject -> subject.athletes() == 0)
          .forEach(subject -> names.add(subject.name()));
    }
    return names;
  }

  private static List<ComparisonResult> coded(
      List<ComparisonResult> results, Map<String, String> codes) {
    List<ComparisonResult> coded = new ArrayList<>();
    for (ComparisonResult result : results) {
      coded.add(
          new ComparisonResult(
              result.comparison(),
              result.subjects().stream()
                  .map(
                      subject ->
                          new Subject(
                              codes.getOrDefault(subject.name(), subject.name()),
                              subject.athletes(),
                              subject.draws(),
                              subject.inputs(),
                              subject.matches(),
                              subject.arms(),
                              subject.differences(),
                              subject.pareto()))
                  .toList(),
              result.findings()));
    }
    return coded;
  }
}
