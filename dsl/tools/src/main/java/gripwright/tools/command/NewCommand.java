package gripwright.tools.command;

import java.time.LocalDate;
import java.util.List;

/** {@code new FOLDER}: a starter project. */
public final class NewCommand {

  /** What {@code new --help} prints. */
  public static final String HELP =
      """
      gripwright new FOLDER [--squad N] [--units kg|lb] [--from DATE]

      Writes a starter project into a new or an empty folder: athletes.grip (who trains),
      log.grip (tests, and later what was trained) and plan.grip (the sessions). It
      compiles as it is; comments in the files say what to change first. All athletes are
      invented.

        --squad N       N athletes with one plan, 1 to 30; 1 by default
        --units kg|lb   kg by default. With lb: pounds, hand length in inches and YDS
                        grades; edges stay in mm
        --from DATE     first day of the plan, best a Monday; 2027-01-11 by default.
                        The tests are dated five days before it

      A folder that has files in it is refused. If a file can't be written, nothing is
      written.

      Exit: 0 written, 2 wrong usage or a folder that can't be written.
      """;

  private static final int FIRST_YEAR = 2000;

  /** Characters that a shell takes as they are. */
  private static final String PLAIN = "[\\p{L}\\p{N}_./\\\\:+,@%-]+";

  private NewCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong, or the project can't be written
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(arguments, console, Arguments.SQUAD, Arguments.UNITS, Arguments.FROM);
    if (given.rest().size() != 1 || given.rest().get(0).isBlank()) {
      throw new UsageException(
          given.rest().size() > 1
              ? "new takes one folder, not " + given.rest().size()
              : "new needs a folder: gripwright new FOLDER");
    }
    String folder = given.rest().get(0);
    Starter starter =
        new Starter(
            given.count(Arguments.SQUAD, 1, Starter.MOST).orElse(1),
            StarterUnits.of(given.value(Arguments.UNITS).orElse("kg")),
            from(given));
    OutputFolder.empty(given.path(folder), starter.files()).write();
    console.out(next(folder));
    return Exit.FINE;
  }

  private static LocalDate from(Arguments given) throws UsageException {
    LocalDate from = given.day(Arguments.FROM).orElse(Starter.FROM);
    if (from.getYear() < FIRST_YEAR) {
      throw new UsageException(
          "--from is a day from " + FIRST_YEAR + "-01-01 on, not `" + from + "`");
    }
    return from;
  }

  /** Returns what to do next. */
  private static String next(String folder) {
    return """
        A starter project is in %s:

          %-14s who trains: body mass, hand, free days, equipment
          %-14s tests, and later what was trained
          %-14s the sessions

        It compiles as it is:

          gripwright compile %s

        Then put your own athletes into %s, their tests into %s, and
        the first day into %s. The comments in the files say what to change first.
        """
        .formatted(
            folder,
            Starter.ATHLETES,
            Starter.LOG,
            Starter.PLAN,
            quoted(plan(folder)),
            Starter.ATHLETES,
            Starter.LOG,
            Starter.PLAN);
  }

  private static String plan(String folder) {
    String path = folder.replaceFirst("[/\\\\]+$", "") + "/" + Starter.PLAN;
    return path.startsWith("-") ? "./" + path : path;
  }

  /** Returns a path as it is typed in a shell. */
  private static String quoted(String path) {
    if (path.matches(PLAIN)) {
      return path;
    }
    return path.matches("[^\"$`!]*") ? "\"" + path + "\"" : "'" + path.replace("'", "'\\''") + "'";
  }
}
