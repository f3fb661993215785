package gripwright.tools.command;

import gripwright.export.csv.AllocationCsv;
import gripwright.export.csv.TidyTable;
import gripwright.export.json.JsonDocuments;
import gripwright.export.json.Provenance;
import gripwright.trial.Allocation;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * {@code allocate --assessor FOLDER}: the participants by label, for those who measure and must not
 * know who has which arm. Nothing in it depends on the plan file, so no name of an arm can be in
 * it.
 */
final class AssessorFolder {

  private static final String VISITS = "before,after";

  private AssessorFolder() {}

  /**
   * Checks that the options fit together.
   *
   * @throws UsageException if they don't
   */
  static void checkOptions(Arguments given) throws UsageException {
    if (given.has(Arguments.VISITS) && !given.has(Arguments.ASSESSOR)) {
      throw new UsageException("--visits needs --assessor FOLDER, whose table has the visits");
    }
    List<Arguments.Spec> kinds =
        Stream.of(Arguments.ASSESSOR, Arguments.LABELS, Arguments.REVEAL, Arguments.LIST)
            .filter(given::has)
            .toList();
    boolean labelled = given.has(Arguments.ASSESSOR) || given.has(Arguments.LABELS);
    if (labelled && kinds.size() > 1) {
      throw new UsageException(
          "--"
              + kinds.get(0).name()
              + " and --"
              + kinds.get(1).name()
              + " are for different people: give one of the two");
    }
    if (labelled && given.has(Arguments.LOG)) {
      throw new UsageException(
          "--log keeps who was revealed, and --" + kinds.get(0).name() + " reveals nobody");
    }
  }

  /**
   * Writes the files and returns a line about them.
   *
   * @throws UsageException if they can't be written, or the key lies in the folder
   */
  static String write(Allocation allocation, Arguments given) throws UsageException {
    String written = given.value(Arguments.ASSESSOR).orElseThrow();
    Path folder = given.path(written);
    String key = given.value(Arguments.KEY).orElseThrow();
    if (CodeKey.real(given.path(key)).startsWith(CodeKey.real(folder))) {
      throw new UsageException(
          "the key `"
              + key
              + "` lies in the folder of those who measure, who must not have it; name a folder"
              + " without it");
    }
    List<String> visits = List.of(given.value(Arguments.VISITS).orElse(VISITS).split(",", -1));
    TidyTable table;
    try {
      table = AllocationCsv.assessments(allocation, visits);
    } catch (IllegalArgumentException e) {
      throw new UsageException("--visits can't be read: " + e.getMessage());
    }
    Map<String, String> files = new LinkedHashMap<>();
    files.put(table.fileName(), table.csv());
    files.put(
        "datapackage.json",
        new JsonDocuments(Provenance.of(Version.text()), Console.wording())
            .dataPackage(table.name(), AllocationCsv.ASSESSMENTS_TITLE, List.of(table)));
    OutputFolder.checked(folder, files).write();
    return files.size() + " files written to " + written + "\n";
  }
}
