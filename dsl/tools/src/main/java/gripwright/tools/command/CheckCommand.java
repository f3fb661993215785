package gripwright.tools.command;

import gripwright.export.json.JsonDocuments;
import gripwright.finding.ReportedFinding;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** {@code check FILE...}: reads, compiles and says what there is to say. */
public final class CheckCommand {

  /** What {@code check --help} prints. */
  public static final String HELP =
      """
      gripwright check FILE... [--as text|json] [--root DIR] [--all]

      Reads plans and what they use, compiles them, checks them against the rules, and
      prints what there is to say. Nothing is written.

        --as text|json  text for people (default), or JSON for programs
        --root DIR      the folder that `use` may read from; the file's own by default
        --all           every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be read.
      """;

  private CheckCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if it was called wrongly
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(arguments, console, Arguments.AS, Arguments.ROOT, Arguments.ALL);
    if (given.rest().isEmpty()) {
      throw new UsageException("check needs a file: gripwright check FILE...");
    }
    ReadOptions options = given.readOptions();
    FindingText text = console.colour() ? FindingText.coloured() : FindingText.plain();
    Set<ReportedFinding> all = new LinkedHashSet<>();
    int exit = Exit.FINE;
    for (String file : given.rest()) {
      Reading reading = Gripwright.read(given.path(file), options);
      Compilation compilation = reading.compile();
      all.addAll(compilation.findings());
      exit = Math.max(exit, exit(reading, compilation));
      if (!given.asJson()) {
        console.out(text.body(compilation.located()));
        console.out(file + ": " + count(compilation.located()) + "\n");
      }
    }
    if (given.asJson()) {
      console.out(JsonDocuments.findings(List.copyOf(all)));
    }
    return exit;
  }

  private static String count(List<LocatedFinding> findings) {
    return FindingText.count(findings.stream().map(LocatedFinding::finding).toList());
  }

  static int exit(Reading reading, Compilation compilation) {
    return !reading.fileRead() ? Exit.USAGE : compilation.usable() ? Exit.FINE : Exit.ERRORS;
  }
}
