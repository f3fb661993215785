package gripwright.tools.command;

import gripwright.export.json.PlanDocument;
import gripwright.export.text.SeasonText;
import gripwright.finding.Finding;
import gripwright.finding.Nearest;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.season.CompiledPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** {@code compile FILE}: the dated sessions of the plans in a file. */
public final class CompileCommand {

  /** What {@code compile --help} prints. */
  public static final String HELP =
      """
      gripwright compile FILE [--plan NAME] [--as text|json] [--output PATH]
                              [--root DIR] [--all]
      gripwright compile FILE --to FOLDER [--plan NAME] [--codes KEYFILE]

      Turns the plans of a file into dated sessions with every load written out.

        --plan NAME     only this plan; otherwise every plan of the file
        --as text|json  text for people (default), or JSON for programs
        --output PATH   write to a file instead of standard output
        --to FOLDER     write tables (sessions.csv, holds.csv, weeks.csv), their
                        description (datapackage.json) and methods.md into a folder;
                        of an older run, only files that nobody changed are replaced
        --codes KEYFILE with --to: codes instead of the athletes' names. The key is a
                        CSV file `athlete,code` outside the folder; a new one with
                        random codes is written if there is none
        --root DIR      the folder that `use` may read from; the file's own by default
        --all           every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read. An error that concerns one athlete stops only that athlete's sessions; those of
      the others are still printed. With 1 or 2 no file is written.
      """;

  static final String BETWEEN = "\n" + "-".repeat(80) + "\n\n";

  private CompileCommand() {}

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
            Arguments.PLAN,
            Arguments.AS,
            Arguments.OUTPUT,
            Arguments.TO,
            Arguments.CODES,
            Arguments.ROOT,
            Arguments.ALL);
    CompiledFolder.checkOptions(given);
    Run run = compiled(given.oneFile("compile", ""), given);
    Compilation compilation = run.compilation();
    boolean folder = given.has(Arguments.TO);
    boolean written = folder || given.value(Arguments.OUTPUT).isPresent();
    if (run.exit() != Exit.FINE) {
      List<CompiledPlan> usable =
          run.exit() == Exit.ERRORS && !written ? compilation.usablePlans() : List.of();
      if (!usable.isEmpty()) {
        console.out(
            given.asJson()
                ? Console.documents(run.files())
                    .compiledInPart(documents(compilation, usable), compilation.findings())
                : text(compilation, usable));
      }
      if (usable.isEmpty() || !given.asJson()) {
        Refusal.write(run.files(), compilation.findings(), compilation.located(), given, console);
      }
      return run.exit();
    }
    if (folder) {
      console.out(CompiledFolder.write(run, given));
      console.err(FindingText.plain().render(compilation.located()));
      return Exit.FINE;
    }
    String document =
        given.asJson()
            ? Console.documents(run.files())
                .compiled(documents(compilation, compilation.plans()), compilation.findings())
            : text(compilation, compilation.plans());
    if (written) {
      Output.replace(given.path(given.value(Arguments.OUTPUT).get()), document);
    } else {
      console.out(document);
    }
    if (!given.asJson()) {
      sayTheRest(compilation, console);
    }
    return Exit.FINE;
  }

  /** The result of compiling a file, and its exit code. */
  record Run(Reading reading, Compilation compilation, int exit) {
    List<SourceFile> files() {
      return reading.files();
    }
  }

  /** Reads and compiles a file, or the one plan that was named. */
  static Run compiled(String file, Arguments given) throws UsageException {
    Reading reading = Gripwright.read(given.path(file), given.readOptions());
    Compilation compilation = compile(reading, given, file);
    return new Run(reading, compilation, CheckCommand.exit(reading, compilation));
  }

  private static Compilation compile(Reading reading, Arguments given, String file)
      throws UsageException {
    String plan = given.value(Arguments.PLAN).orElse("");
    Set<String> plans = reading.plans().keySet();
    if (plan.isEmpty() || plans.contains(plan)) {
      if (plans.isEmpty() && reading.usable()) {
        throw new UsageException(
            "there is no plan in " + file + "; use `check` for files without a plan");
      }
      return plan.isEmpty() ? all(reading) : reading.compile(plan);
    }
    if (!reading.usable()) {
      return reading.compile(); // the named plan may be the one with the error
    }
    throw new UsageException(
        "there is no plan `"
            + plan
            + "` in "
            + file
            + (plans.isEmpty()
                ? ""
                : "; "
                    + Nearest.to(plan, plans)
                        .map(nearest -> "did you mean `" + nearest + "`?")
                        .orElse("it has " + String.join(", ", plans))));
  }

  /** Compiles every plan; if all of them are for cohorts, the first one is refused. */
  private static Compilation all(Reading reading) {
    boolean people =
        reading.plans().values().stream()
            .anyMatch(plan -> !reading.cohorts().keySet().containsAll(plan.athletes()));
    return people || reading.plans().isEmpty()
        ? reading.compile()
        : reading.compile(reading.plans().firstKey());
  }

  private static List<PlanDocument> documents(Compilation compilation, List<CompiledPlan> plans) {
    List<PlanDocument> documents = new ArrayList<>();
    for (CompiledPlan plan : plans) {
      documents.add(document(compilation, plan, plan));
    }
    return documents;
  }

  /** Returns a plan, or the part of it that could be compiled, with its findings. */
  static PlanDocument document(Compilation compilation, CompiledPlan plan, CompiledPlan shown) {
    return new PlanDocument(
        shown,
        PlanFindings.of(compilation.located(), plan).stream().map(PlanFindings::report).toList());
  }

  /** Returns every plan: its sessions or, if they may not be used, the errors. */
  private static String text(Compilation compilation, List<CompiledPlan> usable) {
    List<String> seasons = new ArrayList<>();
    PlanFindings findings = new PlanFindings(compilation.located());
    for (CompiledPlan plan : compilation.plans()) {
      seasons.add(
          usable.contains(plan)
              ? SeasonText.of(plan, Console.wording(), findings::source)
              : SeasonText.stopped(
                  plan, stopping(compilation, plan), Console.wording(), findings::source));
    }
    return String.join(BETWEEN, seasons);
  }

  private static List<Finding> stopping(Compilation compilation, CompiledPlan plan) {
    return compilation.located().stream()
        .map(LocatedFinding::finding)
        .filter(Finding::blocks)
        .filter(f -> f.athletes().contains(plan.athlete().name()))
        .toList();
  }

  /** Reports findings that are not about a plan, which the season text doesn't contain. */
  private static void sayTheRest(Compilation compilation, Console console) {
    List<LocatedFinding> rest =
        compilation.located().stream()
            .filter(f -> compilation.plans().stream().noneMatch(p -> PlanFindings.isAbout(f, p)))
            .toList();
    console.err(FindingText.plain().render(rest));
  }
}
