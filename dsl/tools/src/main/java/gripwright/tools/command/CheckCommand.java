package gripwright.tools.command;

import gripwright.export.json.SarifLog;
import gripwright.export.json.SarifResult;
import gripwright.finding.ReportedFinding;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.language.finding.CodePages;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code check FILE...}: reads, compiles and reports the findings. */
public final class CheckCommand {

  /** What {@code check --help} prints. */
  public static final String HELP =
      """
      gripwright check FILE... [--as text|json|sarif] [--root DIR] [--all]

      Reads plans and the files they use, compiles them, checks them against the rules, and
      prints the findings. No file is written.

        --as text|json|sarif  text for people (default), JSON for programs, or SARIF
                              2.1.0 for code hosts and editors
        --root DIR            the folder that `use` may read from; the file's own by default
        --all                 every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be read.
      """;

  private final Arguments given;
  private final Console console;
  private final List<ReportedFinding> all = new ArrayList<>();
  private final Set<ReportedFinding> shown = new HashSet<>();
  private final List<SarifResult> results = new ArrayList<>();
  private final Map<String, SourceFile> files = new LinkedHashMap<>();
  private final Map<String, String> ownRules = new HashMap<>();
  private int exit = Exit.FINE;

  private CheckCommand(Arguments given, Console console) {
    this.given = given;
    this.console = console;
  }

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(arguments, console, Arguments.AS_OR_SARIF, Arguments.ROOT, Arguments.ALL);
    if (given.rest().isEmpty()) {
      throw new UsageException("check needs a file: gripwright check FILE...");
    }
    NamedFiles files = NamedFiles.of(given);
    CheckCommand check = new CheckCommand(given, console);
    for (String file : given.rest()) {
      Reading reading = Gripwright.read(given.path(file), files.options(file));
      check.take(file, reading, reading.check());
    }
    check.close();
    return check.exit;
  }

  /** Reports the findings of a file that were not already reported for an earlier one. */
  private void take(String file, Reading reading, Compilation compilation) {
    List<LocatedFinding> fresh = new ArrayList<>();
    for (int i = 0; i < compilation.findings().size(); i++) {
      ReportedFinding finding = compilation.findings().get(i);
      if (given.rest().size() == 1 || shown.add(finding)) {
        all.add(finding);
        fresh.add(compilation.located().get(i));
      }
    }
    reading.files().forEach(source -> files.putIfAbsent(source.name(), source));
    exit = Math.max(exit, exit(reading, compilation));
    if (given.asSarif()) {
      fresh.forEach(finding -> results.add(SarifFindings.of(finding, reading)));
      reading.ruleSets().values().stream()
          .flatMap(set -> set.rules().stream())
          .forEach(rule -> ownRules.put("rule." + rule.name(), rule.message()));
    } else if (!given.asJson()) {
      FindingText text = console.colour() ? FindingText.coloured() : FindingText.plain();
      console.out(text.body(fresh));
      int before = compilation.located().size() - fresh.size();
      String repeated =
          before == 0 ? "" : before == 1 ? " (1 shown above)" : " (" + before + " shown above)";
      console.out(file + ": " + count(compilation.located()) + repeated + "\n");
    }
  }

  private void close() {
    if (given.asSarif()) {
      console.out(SarifLog.of(Version.text(), results, this::description, exit != Exit.USAGE));
    } else if (given.asJson()) {
      console.out(Console.documents(List.copyOf(files.values())).findings(all));
    }
  }

  private Optional<String> description(String code) {
    return CodePages.sentence(code).or(() -> Optional.ofNullable(ownRules.get(code)));
  }

  private static String count(List<LocatedFinding> findings) {
    return FindingText.plain().count(findings.stream().map(LocatedFinding::finding).toList());
  }

  static int exit(Reading reading, Compilation compilation) {
    return !reading.fileRead() ? Exit.USAGE : compilation.usable() ? Exit.FINE : Exit.ERRORS;
  }
}
