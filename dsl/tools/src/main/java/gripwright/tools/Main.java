package gripwright.tools;

import gripwright.export.json.SarifLog;
import gripwright.finding.Nearest;
import gripwright.tools.command.AllocateCommand;
import gripwright.tools.command.CalendarCommand;
import gripwright.tools.command.CheckCommand;
import gripwright.tools.command.CompareCommand;
import gripwright.tools.command.CompileCommand;
import gripwright.tools.command.Console;
import gripwright.tools.command.DiffCommand;
import gripwright.tools.command.Exit;
import gripwright.tools.command.ExplainCommand;
import gripwright.tools.command.FormatCommand;
import gripwright.tools.command.GripsCommand;
import gripwright.tools.command.LostOutput;
import gripwright.tools.command.NewCommand;
import gripwright.tools.command.ReviewCommand;
import gripwright.tools.command.StrengthCommand;
import gripwright.tools.command.UsageException;
import gripwright.tools.command.Version;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The command line. It loads the classes of a command only when the command is called, so that help
 * and version stay quick.
 */
public final class Main {

  private static final List<String> COMMANDS =
      List.of(
          "new",
          "check",
          "compile",
          "calendar",
          "format",
          "grips",
          "strength",
          "review",
          "compare",
          "allocate",
          "diff",
          "explain");

  private static final String HELP =
      """
      gripwright plans finger-strength training from plan files.

        gripwright new FOLDER        writes a starter project with comments
        gripwright check FILE...     reports mistakes in plans and points to check
        gripwright compile FILE      turns plans into dated sessions with every load
        gripwright calendar FILE     writes a calendar for each athlete
        gripwright format FILE...    puts plan files into the standard layout
        gripwright grips FILE        fits every grip to an athlete's hand
        gripwright strength FILE     estimates an athlete's strength in every grip
        gripwright review FILE       compares a log with its plans, lists next steps
        gripwright compare FILE      puts protocols side by side
        gripwright allocate          plans a trial: sample size, who gets which arm
        gripwright diff OLD NEW      reports what changed in meaning
        gripwright explain CODE      explains a finding
        gripwright explain FILE      shows where each number of a day comes from

        gripwright COMMAND --help    the options of a command
        gripwright --version         the version

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be read.
      """;

  private Main() {}

  /** Runs a command and ends the program with its exit code. */
  public static void main(String[] arguments) {
    Map<String, String> environment = System.getenv();
    Console console =
        new Console(
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            Path.of(""),
            Terminal.showsColours(environment),
            () -> Terminal.showsMessages(environment),
            System::nanoTime);
    System.exit(run(List.of(arguments), console, environment));
  }

  /**
   * Runs a command.
   *
   * @param arguments the command and its arguments
   * @param console where it writes
   * @param environment variables of the caller
   * @return 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be read
   */
  public static int run(List<String> arguments, Console console, Map<String, String> environment) {
    try {
      return answer(arguments, console, environment);
    } catch (LostOutput e) {
      return lost(console, e);
    }
  }

  private static int answer(
      List<String> arguments, Console console, Map<String, String> environment) {
    try {
      return dispatch(arguments, console);
    } catch (UsageException e) {
      return refuse(arguments, console, e.sentence());
    } catch (LostOutput e) {
      throw e;
    } catch (RuntimeException | Error e) {
      return failed(console, environment, e);
    }
  }

  private static int lost(Console console, LostOutput lost) {
    if (!lost.isUnwanted()) {
      try {
        console.err("gripwright: " + lost.sentence() + "\n");
      } catch (LostOutput alsoLost) {
        // only the exit code can still report this
      }
    }
    return Exit.USAGE;
  }

  private static int dispatch(List<String> arguments, Console console) throws UsageException {
    if (arguments.isEmpty()) {
      console.err(HELP);
      return Exit.USAGE;
    }
    String command = arguments.get(0);
    List<String> rest = arguments.subList(1, arguments.size());
    boolean help = rest.contains("--help") || rest.contains("-h");
    return switch (command) {
      case "--help", "-h", "help" -> print(console, HELP);
      case "--version" -> print(console, "gripwright " + Version.text() + "\n");
      case "new" -> help ? print(console, NewCommand.HELP) : NewCommand.run(rest, console);
      case "check" -> help ? print(console, CheckCommand.HELP) : CheckCommand.run(rest, console);
      case "compile" ->
          help ? print(console, CompileCommand.HELP) : CompileCommand.run(rest, console);
      case "calendar" ->
          help ? print(console, CalendarCommand.HELP) : CalendarCommand.run(rest, console);
      case "format" -> help ? print(console, FormatCommand.HELP) : FormatCommand.run(rest, console);
      case "grips" -> help ? print(console, GripsCommand.HELP) : GripsCommand.run(rest, console);
      case "strength" ->
          help ? print(console, StrengthCommand.HELP) : StrengthCommand.run(rest, console);
      case "review" -> help ? print(console, ReviewCommand.HELP) : ReviewCommand.run(rest, console);
      case "compare" ->
          help ? print(console, CompareCommand.HELP) : CompareCommand.run(rest, console);
      case "allocate" ->
          help ? print(console, AllocateCommand.HELP) : AllocateCommand.run(rest, console);
      case "diff" -> help ? print(console, DiffCommand.HELP) : DiffCommand.run(rest, console);
      case "explain" ->
          help ? print(console, ExplainCommand.HELP) : ExplainCommand.run(rest, console);
      default -> refuse(arguments, console, unknown(command));
    };
  }

  private static int print(Console console, String text) {
    console.out(text);
    return Exit.FINE;
  }

  private static String unknown(String command) {
    String kind = command.startsWith("-") ? "option" : "command";
    List<String> known = command.startsWith("-") ? List.of("--help", "--version") : COMMANDS;
    return "unknown "
        + kind
        + " `"
        + command
        + "`; "
        + Nearest.to(command, known)
            .map(nearest -> "did you mean `" + nearest + "`?")
            .orElse("there are " + String.join(", ", known));
  }

  private static int refuse(List<String> arguments, Console console, String message) {
    console.err("gripwright: " + message + "\n");
    if (COMMANDS.contains(arguments.get(0))) {
      console.err("See `gripwright " + arguments.get(0) + " --help`.\n");
      if (asksFor("json", arguments)) {
        console.out(Console.documents(List.of()).findings(List.of()));
      } else if (asksFor("sarif", arguments)) {
        console.out(SarifLog.of(Version.text(), List.of(), code -> Optional.empty(), false));
      }
    }
    return Exit.USAGE;
  }

  /**
   * Returns whether a format was requested, so that a caller that wants JSON gets JSON even if
   * other arguments are wrong.
   */
  private static boolean asksFor(String format, List<String> arguments) {
    int as = arguments.lastIndexOf("--as");
    return arguments.contains("--as=" + format)
        || (as >= 0 && as + 1 < arguments.size() && arguments.get(as + 1).equals(format));
  }

  private static int failed(Console console, Map<String, String> environment, Throwable failure) {
    console.err(
        "gripwright: internal error, no result was written ("
            + failure.getClass().getSimpleName()
            + "). Set GRIPWRIGHT_DEBUG=1 for details, and report it.\n");
    if ("1".equals(environment.get("GRIPWRIGHT_DEBUG"))) {
      StringWriter trace = new StringWriter();
      failure.printStackTrace(new PrintWriter(trace));
      console.err(trace.toString());
    }
    return Exit.USAGE;
  }
}
