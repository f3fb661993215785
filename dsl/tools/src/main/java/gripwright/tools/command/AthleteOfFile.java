package gripwright.tools.command;

import gripwright.athlete.Athlete;
import gripwright.finding.Nearest;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.log.Log;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the athlete and the day that a command is for. */
final class AthleteOfFile {

  private AthleteOfFile() {}

  /** The work of a command for one athlete. */
  interface Work {
    /**
     * Does the work.
     *
     * @param day the day given, or the last day of the log; empty if there is neither
     * @throws UsageException if it needs a day
     */
    void write(Athlete athlete, Log log, Optional<LocalDate> day, Reading reading)
        throws UsageException;
  }

  /**
   * Reads the file, finds athlete and day, and does the work; if the file has errors, reports them
   * instead.
   *
   * @return the exit code
   * @throws UsageException if the arguments are wrong
   */
  static int run(String command, Arguments given, Console console, Work work)
      throws UsageException {
    Optional<LocalDate> on = given.day(Arguments.ON);
    String file = given.oneFile(command, " --athlete NAME");
    Reading reading = Gripwright.read(given.path(file), given.readOptions());
    if (!reading.fileRead()) {
      Refusal.write(reading.files(), reading.findings(), reading.located(), given, console);
      return Exit.USAGE;
    }
    String name = name(given, reading, file, command);
    if (!reading.usable()) {
      Refusal.write(reading.files(), reading.findings(), reading.located(), given, console);
      return Exit.ERRORS;
    }
    Athlete athlete = find(name, reading, file);
    Log log = reading.logs().getOrDefault(athlete.name(), Log.empty(athlete.name()));
    work.write(athlete, log, day(on, athlete, log), reading);
    return Exit.FINE;
  }

  /**
   * Returns the name that was given.
   *
   * @throws UsageException if none was given; the message lists the names in the file
   */
  private static String name(Arguments given, Reading reading, String file, String command)
      throws UsageException {
    Optional<String> name = given.value(Arguments.ATHLETE);
    if (name.isPresent()) {
      return name.get();
    }
    Set<String> athletes = reading.athletes().keySet();
    throw new UsageException(
        command
            + " needs an athlete: "
            + (athletes.size() == 1
                ? "add --athlete " + athletes.iterator().next()
                : "add --athlete NAME"
                    + (athletes.isEmpty()
                        ? ""
                        : "; " + file + " has " + String.join(", ", athletes))));
  }

  /**
   * Returns the athlete of a name, in a file without errors.
   *
   * @throws UsageException if there is none of this name
   */
  private static Athlete find(String name, Reading reading, String file) throws UsageException {
    Athlete athlete = reading.athletes().get(name);
    if (athlete != null) {
      return athlete;
    }
    Set<String> athletes = reading.athletes().keySet();
    throw new UsageException(
        "there is no athlete `"
            + name
            + "` in "
            + file
            + (athletes.isEmpty()
                ? ""
                : "; "
                    + Nearest.to(name, athletes)
                        .map(nearest -> "did you mean `" + nearest + "`?")
                        .orElse("it has " + String.join(", ", athletes))));
  }

  /**
   * Returns the day of an athlete, for a command that needs one.
   *
   * @throws UsageException if there is none
   */
  static LocalDate needed(Optional<LocalDate> day, Athlete athlete) throws UsageException {
    return day.orElseThrow(
        () ->
            new UsageException(
                "nothing is logged for `"
                    + athlete.name()
                    + "`, so the day is not known: add --on DATE, such as --on 2027-01-31"));
  }

  /**
   * Returns the day given, or the last day of the athlete's log; empty if there is neither.
   *
   * @throws UsageException if it is before the athlete's birth
   */
  private static Optional<LocalDate> day(Optional<LocalDate> given, Athlete athlete, Log log)
      throws UsageException {
    List<LocalDate> days = log.entries().stream().map(e -> e.date()).toList();
    Optional<LocalDate> day =
        given.or(() -> days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1)));
    if (day.filter(date -> date.isBefore(athlete.born())).isPresent()) {
      throw new UsageException(
          "--on "
              + day.get()
              + " is before `"
              + athlete.name()
              + "` was born, on "
              + athlete.born());
    }
    return day;
  }
}
