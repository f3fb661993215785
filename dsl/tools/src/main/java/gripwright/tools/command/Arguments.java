package gripwright.tools.command;

import gripwright.budget.Budget;
import gripwright.budget.Progress;
import gripwright.finding.Nearest;
import gripwright.language.ReadOptions;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;

/** The arguments of one call, read and checked. */
final class Arguments {

  static final Spec AS = new Spec("as", "text|json");
  static final Spec AS_OR_CSV = new Spec("as", "text|json|csv");
  static final Spec AS_OR_SARIF = new Spec("as", "text|json|sarif");
  static final Spec ROOT = new Spec("root", "DIR");
  static final Spec ALL = new Spec("all", "");
  static final Spec CHECK = new Spec("check", "");
  static final Spec PLAN = new Spec("plan", "NAME");
  static final Spec OUTPUT = new Spec("output", "PATH");
  static final Spec TO = new Spec("to", "FOLDER");
  static final Spec ATHLETE = new Spec("athlete", "NAME");
  static final Spec EDGE = new Spec("edge", "DEPTH");
  static final Spec LOAD = new Spec("load", "LOAD");
  static final Spec ON = new Spec("on", "DATE");
  static final Spec NEWTONS = new Spec("newtons", "");
  static final Spec DATE = new Spec("date", "DATE");
  static final Spec NEW_KEY = new Spec("new-key", "KEYFILE");
  static final Spec KEY = new Spec("key", "KEYFILE");
  static final Spec EFFECT = new Spec("effect", "D");
  static final Spec POWER = new Spec("power", "P");
  static final Spec ALPHA = new Spec("alpha", "A");
  static final Spec CORRELATION = new Spec("correlation", "R");
  static final Spec DROPOUT = new Spec("dropout", "SHARE");
  static final Spec NOISE = new Spec("noise", "CV");
  static final Spec PARTICIPANTS = new Spec("participants", "N");
  static final Spec STRATA = new Spec("strata", "A,B");
  static final Spec REVEAL = new Spec("reveal", "NUMBER");
  static final Spec STRATUM = new Spec("stratum", "A");
  static final Spec LOG = new Spec("log", "FILE");
  static final Spec LIST = new Spec("list", "");
  static final Spec LABELS = new Spec("labels", "");
  static final Spec ASSESSOR = new Spec("assessor", "FOLDER");
  static final Spec VISITS = new Spec("visits", "A,B");
  static final Spec CODES = new Spec("codes", "KEYFILE");
  static final Spec PREVIOUS = new Spec("previous", "FOLDER");
  static final Spec REMIND = new Spec("remind", "MINUTES");
  static final Spec DRIVERS = new Spec("drivers", "");
  static final Spec THREADS = new Spec("threads", "N");
  static final Spec SQUAD = new Spec("squad", "N");
  static final Spec UNITS = new Spec("units", "kg|lb");
  static final Spec FROM = new Spec("from", "DATE");

  /** Options that take a number with a unit. */
  private static final List<String> AMOUNTS = List.of("--edge", "--load");

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /**
   * An option that a command takes.
   *
   * @param name without the hyphens
   * @param value name of its value; empty if it takes none
   */
  record Spec(String name, String value) {}

  private final CommandLine line;
  private final Path folder;
  private final Progress progress;

  private Arguments(CommandLine line, Console console) {
    this.line = line;
    this.folder = console.folder();
    this.progress = console.progress();
  }

  /**
   * Reads the arguments of a command.
   *
   * @throws UsageException if an option is unknown, given twice, lacks its value or has a wrong one
   */
  static Arguments parse(List<String> arguments, Console console, Spec... specs)
      throws UsageException {
    Options options = new Options();
    for (Spec spec : specs) {
      options.addOption(
          Option.builder().longOpt(spec.name()).hasArg(!spec.value().isEmpty()).get());
    }
    try {
      CommandLine line =
          DefaultParser.builder()
              .setAllowPartialMatching(false)
              .get()
              .parse(options, withUnits(arguments).toArray(String[]::new));
      once(line);
      Arguments read = new Arguments(line, console);
      read.checkFormat(specs);
      read.checkRoot();
      return read;
    } catch (UnrecognizedOptionException e) {
      throw new UsageException(unknown(e.getOption(), specs));
    } catch (MissingArgumentException e) {
      String name = e.getOption().getLongOpt();
      throw new UsageException(
          "--" + name + " needs a value: --" + name + " " + value(name, specs));
    } catch (ParseException e) {
      throw new UsageException("the options can't be read: " + e.getMessage());
    }
  }

  /** Joins units to their numbers, if the command has an option with a unit. */
  private static List<String> withUnits(List<String> arguments) {
    boolean measured =
        arguments.stream().anyMatch(word -> AMOUNTS.stream().anyMatch(word::startsWith));
    return measured ? AmountOption.joined(arguments, AMOUNTS) : arguments;
  }

  /** Rejects an option given twice, since one value would be ignored silently. */
  private static void once(CommandLine line) throws UsageException {
    Set<String> seen = new HashSet<>();
    for (Option option : line.getOptions()) {
      if (!seen.add(option.getLongOpt())) {
        throw new UsageException("--" + option.getLongOpt() + " is given twice; give it once");
      }
    }
  }

  private static String value(String name, Spec... specs) {
    for (Spec spec : specs) {
      if (spec.name().equals(name)) {
        return spec.value();
      }
    }
    return "VALUE";
  }

  private static String unknown(String option, Spec... specs) {
    List<String> known = List.of(specs).stream().map(s -> "--" + s.name()).toList();
    int equals = option.indexOf('=');
    String name = equals < 0 ? option : option.substring(0, equals);
    return "unknown option `"
        + name
        + "`; "
        + Nearest.to(name, known)
            .map(nearest -> "did you mean `" + nearest + "`?")
            .orElse("there are " + String.join(", ", known));
  }

  private void checkFormat(Spec... specs) throws UsageException {
    List<String> formats = List.of(value("as", specs).split("\\|", -1));
    String format = value(AS).orElse("text");
    if (value(AS).isPresent() && !formats.contains(format)) {
      throw new UsageException(
          "--as is "
              + String.join(", ", formats.subList(0, formats.size() - 1))
              + " or "
              + formats.get(formats.size() - 1)
              + ", not `"
              + format
              + "`"
              + Nearest.to(format, formats).map(n -> "; did you mean `" + n + "`?").orElse(""));
    }
  }

  private void checkRoot() throws UsageException {
    Optional<String> root = value(ROOT);
    if (root.isPresent() && !Files.isDirectory(path(root.get()))) {
      throw new UsageException("--root `" + root.get() + "` is not a folder");
    }
  }

  /** Returns the arguments that are not options. */
  List<String> rest() {
    return line.getArgList();
  }

  /**
   * Returns the one file of a command.
   *
   * @param more what else the command needs, for the error message
   * @throws UsageException if there is none, or more than one
   */
  String oneFile(String command, String more) throws UsageException {
    if (rest().size() == 1) {
      return rest().get(0);
    }
    throw new UsageException(
        rest().isEmpty()
            ? command + " needs a file: gripwright " + command + " FILE" + more
            : command + " takes one file, not " + rest().size());
  }

  boolean has(Spec spec) {
    return line.hasOption(spec.name());
  }

  /**
   * Returns the whole number of an option.
   *
   * @throws UsageException if it is none, or outside these bounds
   */
  Optional<Integer> count(Spec spec, int low, int high) throws UsageException {
    Optional<String> written = value(spec);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    if (written.get().matches("\\d{1,9}")) {
      int number = Integer.parseInt(written.get());
      if (number >= low && number <= high) {
        return Optional.of(number);
      }
    }
    throw new UsageException(
        "--"
            + spec.name()
            + " is a number from "
            + low
            + " to "
            + high
            + ", not `"
            + written.get()
            + "`");
  }

  Optional<String> value(Spec spec) {
    return Optional.ofNullable(line.getOptionValue(spec.name()));
  }

  boolean asCsv() {
    return value(AS).orElse("text").equals("csv");
  }

  boolean asSarif() {
    return value(AS).orElse("text").equals("sarif");
  }

  boolean asJson() {
    return value(AS).orElse("text").equals("json");
  }

  /** Returns the depth of the edge, if it was given. */
  Optional<Length> edge() throws UsageException {
    Optional<String> written = value(EDGE);
    return written.isEmpty()
        ? Optional.empty()
        : Optional.of(AmountOption.edge("--edge", written.get()));
  }

  /** Returns the load, if it was given. */
  Optional<Load> load() throws UsageException {
    Optional<String> written = value(LOAD);
    return written.isEmpty()
        ? Optional.empty()
        : Optional.of(AmountOption.load("--load", written.get()));
  }

  /** Returns the day of an option, if it was given. */
  Optional<LocalDate> day(Spec option) throws UsageException {
    Optional<String> written = value(option);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.parse(written.get());
      if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
        return Optional.of(day);
      }
    } catch (DateTimeParseException e) {
      // reported below
    }
    throw new UsageException(
        "--" + option.name() + " needs a day such as 2027-01-31, not `" + written.get() + "`");
  }

  /** Returns how files are to be read. */
  ReadOptions readOptions() throws UsageException {
    ReadOptions options =
        ReadOptions.standard().withBudget(Budget.standard().withProgress(progress));
    if (value(ROOT).isPresent()) {
      options = options.withRoot(path(value(ROOT).get()));
    }
    return has(ALL) ? options.withAllFindings() : options;
  }

  /** Returns a path relative to the caller's folder. */
  Path path(String text) throws UsageException {
    try {
      return folder.resolve(text);
    } catch (InvalidPathException e) {
      throw new UsageException(
          "`"
              + text
              + "` is not the name of a file"
              + (text.chars().allMatch(c -> c < 0x80)
                  ? ""
                  : "; if it is one, start Java with `LC_ALL=C.UTF-8`, so that it knows the letters"));
    }
  }
}
