package gripwright.tools.command;

import gripwright.budget.Budget;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult;
import gripwright.compare.RunOptions;
import gripwright.export.csv.ComparisonCsv;
import gripwright.export.csv.TidyTable;
import gripwright.export.text.ComparisonText;
import gripwright.finding.Nearest;
import gripwright.finding.ReportedFinding;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** {@code compare FILE [NAME]}: protocols side by side. */
public final class CompareCommand {

  /** What {@code compare --help} prints. */
  public static final String HELP =
      """
      gripwright compare FILE [NAME] [--as text|json|csv] [--to FOLDER] [--drivers]
                              [--threads N] [--codes KEYFILE] [--log FILE]
                              [--root DIR] [--all]

      Compares the arms of a comparison, or of every comparison of the file: time under
      tension, load-time, impulse, fatigue and the load on pulleys, each with the
      difference of every pair of arms, its interval over what the models don't know,
      and the share of the athletes of a cohort for whom the first arm has more. No gain
      in strength and no risk of injury is predicted.

        NAME                only this comparison
        --as text|json|csv  text for people (default), JSON for programs, or CSV with a
                            line for each pair of arms and measure
        --to FOLDER         writes tables (CSV) with `datapackage.json`, `methods.md` and
                            figures into a folder; an existing one must be empty or ours
        --codes KEYFILE     codes instead of athletes' names in the folder: a CSV of
                            `athlete,code` outside it; made with random codes if missing
        --log FILE          the participants of the trial who were revealed, as kept by
                            `allocate --reveal`: they are in `allocation.csv` of the
                            folder, with the commitment
        --drivers           Sobol indices of the parameters that move each difference;
                            takes as many runs as there are parameters
        --threads N         how many threads work, 1 to 256; 1 by default. The result is
                            the same
        --root DIR          the folder that `use` may read from; the file's own by
                            default
        --all               every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read.
      """;

  private CompareCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(
            arguments,
            console,
            Arguments.AS_OR_CSV,
            Arguments.TO,
            Arguments.CODES,
            Arguments.LOG,
            Arguments.DRIVERS,
            Arguments.THREADS,
            Arguments.ROOT,
            Arguments.ALL);
    if (given.rest().isEmpty() || given.rest().size() > 2) {
      throw new UsageException("compare needs a file: gripwright compare FILE [NAME]");
    }
    String file = given.rest().get(0);
    Reading reading = Gripwright.read(given.path(file), given.readOptions());
    if (!reading.usable()) {
      Refusal.write(reading.files(), reading.findings(), reading.located(), given, console);
      return reading.fileRead() ? Exit.ERRORS : Exit.USAGE;
    }
    Collection<Comparison> chosen = chosen(reading, given, file);
    Optional<TidyTable> revealed = StudyFiles.revealed(chosen, given);
    List<ComparisonResult> results = new ArrayList<>();
    List<LocatedFinding> located = new ArrayList<>(reading.located());
    for (Comparison comparison : chosen) {
      ComparisonResult result = reading.run(comparison).run(options(given));
      results.add(result);
      result.findings().forEach(finding -> located.add(reading.located(finding)));
    }
    List<LocatedFinding> once = located.stream().distinct().toList();
    List<ReportedFinding> findings =
        once.stream().map(each -> each.report(Console.wording())).toList();
    boolean usable = results.stream().allMatch(ComparisonResult::usable);
    if (!usable) {
      Refusal.write(reading.files(), findings, once, given, console);
      return Exit.ERRORS;
    }
    if (given.value(Arguments.TO).isPresent()) {
      console.out(StudyFiles.write(results, revealed, reading, given));
      console.err(FindingText.plain().render(once));
      return Exit.FINE;
    }
    write(results, findings, once, reading, given, console);
    return Exit.FINE;
  }

  private static void write(
      List<ComparisonResult> results,
      List<ReportedFinding> findings,
      List<LocatedFinding> located,
      Reading reading,
      Arguments given,
      Console console) {
    if (given.asJson()) {
      console.out(Console.documents(reading.files()).compared(results, findings));
      return;
    }
    console.out(
        given.asCsv()
            ? ComparisonCsv.differences(results).csv()
            : results.stream()
                .map(result -> ComparisonText.of(result, Console.wording()))
                .collect(Collectors.joining(CompileCommand.BETWEEN)));
    console.err(FindingText.plain().render(located));
  }

  private static RunOptions options(Arguments given) throws UsageException {
    Budget budget = given.readOptions().budget();
    return RunOptions.standard()
        .budget(budget)
        .sobol(given.has(Arguments.DRIVERS))
        .threads(given.count(Arguments.THREADS, 1, 256).orElse(1));
  }

  private static Collection<Comparison> chosen(Reading reading, Arguments given, String file)
      throws UsageException {
    Set<String> names = reading.comparisons().keySet();
    if (names.isEmpty()) {
      throw new UsageException("there is no comparison in " + file);
    }
    if (given.rest().size() == 1) {
      return reading.comparisons().values();
    }
    String name = given.rest().get(1);
    return Optional.ofNullable(reading.comparisons().get(name))
        .map(List::of)
        .orElseThrow(
            () ->
                new UsageException(
                    "there is no comparison `"
                        + name
                        + "` in "
                        + file
                        + "; "
                        + Nearest.to(name, names)
                            .map(nearest -> "did you mean `" + nearest + "`?")
                            .orElse("it has " + String.join(", ", names))));
  }
}
