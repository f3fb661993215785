package gripwright.tools.command;

import gripwright.export.csv.TidyTable;
import gripwright.export.json.JsonDocuments;
import gripwright.export.study.Methods;
import gripwright.export.study.PlanTables;
import gripwright.export.study.Pseudonyms;
import gripwright.plan.Plan;
import gripwright.season.CompiledPlan;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** {@code compile --to FOLDER}: the compiled plans of a file as files for a study. */
final class CompiledFolder {

  private CompiledFolder() {}

  /**
   * Checks that the options fit together.
   *
   * @throws UsageException if they don't
   */
  static void checkOptions(Arguments given) throws UsageException {
    if (!given.has(Arguments.TO)) {
      if (given.has(Arguments.CODES)) {
        throw new UsageException("--codes needs --to FOLDER, whose files then carry the codes");
      }
      return;
    }
    if (given.value(Arguments.AS).isPresent()) {
      throw new UsageException(
          "--to writes tables into a folder, --as chooses text or JSON: give one of the two");
    }
    if (given.value(Arguments.OUTPUT).isPresent()) {
      throw new UsageException(
          "--to writes into a folder, --output to a file: give one of the two");
    }
  }

  /**
   * Writes the files and returns a line about them.
   *
   * @throws UsageException if they can't be written
   */
  static String write(CompileCommand.Run run, Arguments given) throws UsageException {
    String written = given.value(Arguments.TO).orElseThrow();
    Path folder = given.path(written);
    List<CompiledPlan> plans = run.compilation().plans();
    Set<String> needed = new TreeSet<>();
    plans.forEach(plan -> needed.add(plan.athlete().name()));
    Optional<CodeKey> key = CodeKey.of(given, folder, needed, run.reading());
    Pseudonyms names = CodeKey.names(key, run.reading());
    Map<String, String> files = files(run, plans, names);
    OutputFolder output = OutputFolder.checked(folder, files);
    if (key.isPresent()) {
      key.get().write();
    }
    output.write();
    return files.size() + " files written to " + written + "\n";
  }

  private static Map<String, String> files(
      CompileCommand.Run run, List<CompiledPlan> plans, Pseudonyms names) {
    Map<String, String> files = new LinkedHashMap<>();
    List<TidyTable> tables = PlanTables.of(plans, names, Console.wording());
    tables.forEach(table -> files.put(table.fileName(), table.csv()));
    Map<String, Plan> written = new LinkedHashMap<>();
    plans.forEach(plan -> written.putIfAbsent(plan.plan().name(), plan.plan()));
    files.put(
        "methods.md",
        Methods.of(written.values(), names, Console.wording(), run.reading()::lineOf));
    String title =
        Console.wording()
            .say(
                "methods.package-title",
                Map.of(
                    "plans",
                    String.join(", ", written.keySet().stream().map(names::hide).toList())));
    files.put(
        "datapackage.json",
        new JsonDocuments(Console.provenance(run.files(), names), Console.wording())
            .dataPackage("compiled-plans", title, tables));
    return files;
  }
}
