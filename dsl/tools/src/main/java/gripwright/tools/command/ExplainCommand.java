package gripwright.tools.command;

import gripwright.export.json.PlanDocument;
import gripwright.export.text.DayText;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Nearest;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.language.finding.CodePages;
import gripwright.language.finding.LocatedFinding;
import gripwright.season.CompiledPlan;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** {@code explain CODE}: what a finding means; {@code explain FILE}: how a day was planned. */
public final class ExplainCommand {

  /** What {@code explain --help} prints. */
  public static final String HELP =
      """
      gripwright explain CODE [FILE] [--as text|json] [--root DIR]
      gripwright explain FILE --date DATE [--plan NAME] [--athlete NAME]
                              [--as text|json] [--root DIR]

      With a code, such as name.unknown: what the finding means and how to correct it.
      With a code and a file: the same for a rule that is declared in the file or in a file
      that it uses. With a file: where each number of a day comes from, and why each session
      is on that day.

        --date DATE     the day, as in 2027-01-12
        --plan NAME     only this plan; otherwise every plan of the file that covers the day
        --athlete NAME  only this athlete
        --as text|json  text for people (default), or JSON for programs; the JSON of a day is
                        that of `compile`, with this day alone
        --root DIR      the folder that `use` may read from; the file's own by default

      Exit: 0 found, 1 errors in the files, 2 wrong usage, no such code or no such file.
      """;

  private ExplainCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong, or there is no such code
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(
            arguments,
            console,
            Arguments.PLAN,
            Arguments.DATE,
            Arguments.ATHLETE,
            Arguments.AS,
            Arguments.ROOT);
    if (given.rest().size() == 2 && given.value(Arguments.DATE).isEmpty()) {
      return ownRule(given.rest().get(0), given.rest().get(1), given, console);
    }
    if (given.rest().size() != 1) {
      throw new UsageException(
          "explain needs one code, such as name.unknown, or a file and --date DATE");
    }
    String what = given.rest().get(0);
    if (given.value(Arguments.DATE).isPresent() || what.endsWith(".grip")) {
      return day(what, given, console);
    }
    console.out(
        given.asJson()
            ? Console.documents(List.of()).explained(what, page(what, given))
            : page(what, given));
    return Exit.FINE;
  }

  /** Explains a code; a rule is also looked up in a file and the files it uses. */
  private static int ownRule(String code, String file, Arguments given, Console console)
      throws UsageException {
    Reading reading = Gripwright.read(given.path(file), given.readOptions());
    if (!reading.fileRead()) {
      Refusal.write(reading.files(), reading.findings(), reading.located(), given, console);
      return Exit.USAGE;
    }
    Map<String, String> pages = new TreeMap<>();
    reading
        .ruleSets()
        .forEach(
            (name, set) ->
                set.rules()
                    .forEach(
                        rule ->
                            pages.put(
                                "rule." + rule.name(),
                                CodePages.page(rule) + declared(name, rule.name(), reading))));
    String page = pages.get(code);
    if (page == null && CodePages.page(code).isEmpty()) {
      throw new UsageException(
          "there is no code `"
              + code
              + "`, and no rule of this name in "
              + file
              + Nearest.to(code, pages.keySet())
                  .map(nearest -> "; did you mean `" + nearest + "`?")
                  .orElse(""));
    }
    String text = page == null ? page(code, given) : page;
    console.out(given.asJson() ? Console.documents(List.of()).explained(code, text) : text);
    return Exit.FINE;
  }

  private static String declared(String set, String rule, Reading reading) {
    ModelPath path = ModelPath.of("rules", set).then("rule", rule);
    LocatedFinding at = reading.located(Finding.advice("rule." + rule, path));
    int line = at.file().line(at.span().start());
    return "\nDeclared in rules " + set + ", " + at.file() + " line " + line + ".\n";
  }

  private static String page(String code, Arguments given) throws UsageException {
    var page = CodePages.page(code);
    if (page.isPresent()) {
      return page.get();
    }
    if (Files.isRegularFile(given.path(code))) {
      throw new UsageException("explain needs a day of " + code + ": --date 2027-01-12");
    }
    throw new UsageException(
        "there is no code `"
            + code
            + "`"
            + Nearest.to(code, CodePages.codes())
                .map(nearest -> "; did you mean `" + nearest + "`?")
                .orElse("")
            + (code.startsWith("rule.")
                ? "; a rule of your own needs its file: gripwright explain " + code + " FILE"
                : ""));
  }

  private static int day(String file, Arguments given, Console console) throws UsageException {
    LocalDate date =
        given
            .day(Arguments.DATE)
            .orElseThrow(
                () -> new UsageException("explain needs a day of the file: --date 2027-01-12"));
    CompileCommand.Run run = CompileCommand.compiled(file, given);
    if (run.exit() != Exit.FINE) {
      Refusal.write(
          run.files(), run.compilation().findings(), run.compilation().located(), given, console);
      return run.exit();
    }
    List<CompiledPlan> plans = plans(run.compilation(), file, date, given);
    if (given.asJson()) {
      List<PlanDocument> documents =
          plans.stream()
              .map(plan -> CompileCommand.document(run.compilation(), plan, plan.on(date)))
              .toList();
      console.out(Console.documents(run.files()).compiled(documents, run.compilation().findings()));
    } else {
      console.out(
          plans.stream()
              .map(plan -> DayText.of(plan, date, Console.wording()))
              .collect(Collectors.joining(CompileCommand.BETWEEN)));
    }
    return Exit.FINE;
  }

  /** Returns the plans that cover the day, for the chosen athletes. */
  private static List<CompiledPlan> plans(
      Compilation compilation, String file, LocalDate date, Arguments given) throws UsageException {
    String athlete = given.value(Arguments.ATHLETE).orElse("");
    List<String> athletes =
        compilation.plans().stream().map(p -> p.athlete().name()).distinct().sorted().toList();
    if (!athlete.isEmpty() && !athletes.contains(athlete)) {
      throw new UsageException(
          "there is no plan for `"
              + athlete
              + "` in "
              + file
              + Nearest.to(athlete, athletes)
                  .map(nearest -> "; did you mean `" + nearest + "`?")
                  .orElse("; there are plans for " + String.join(", ", athletes)));
    }
    List<CompiledPlan> chosen =
        compilation.plans().stream()
            .filter(p -> athlete.isEmpty() || p.athlete().name().equals(athlete))
            .toList();
    List<CompiledPlan> covering =
        chosen.stream()
            .filter(p -> !date.isBefore(p.plan().from()) && !date.isAfter(p.plan().to()))
            .toList();
    if (covering.isEmpty()) {
      throw new UsageException(
          "no plan of "
              + file
              + " covers "
              + date
              + "; "
              + chosen.stream()
                  .map(p -> p.plan().name() + " " + p.plan().from() + " to " + p.plan().to())
                  .distinct()
                  .collect(Collectors.joining(", ")));
    }
    return covering;
  }
}
