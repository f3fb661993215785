package gripwright.tools.command;

import gripwright.export.calendar.AthleteCalendar;
import gripwright.export.study.Pseudonyms;
import gripwright.finding.Finding;
import gripwright.language.Compilation;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.season.CompiledPlan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** {@code calendar FILE}: a calendar for each athlete of the plans in a file. */
public final class CalendarCommand {

  /** What {@code calendar --help} prints. */
  public static final String HELP =
      """
      gripwright calendar FILE --to FOLDER [--previous FOLDER] [--remind MINUTES]
                               [--codes KEYFILE] [--root DIR] [--all]

      Writes the sessions, planned tests and goal of each athlete as a calendar by RFC 5545,
      `ATHLETE.ics`, with every plan of the file.

        --to FOLDER       the folder of the calendars; of an older run, only files that
                          nobody changed are replaced
        --previous FOLDER the folder of the calendars that athletes have now, which may be
                          the same: changed events get a higher number (SEQUENCE), and
                          events that are gone are cancelled
        --remind MINUTES  a reminder before each future event, 1 to 10080 minutes; a day
                          begins at midnight, so 300 is 19:00 on the day before
        --codes KEYFILE   codes instead of the athletes' names. The key is a CSV file
                          `athlete,code` outside the folder; a new one with random codes
                          is written if there is none
        --root DIR        the folder that `use` may read from; the file's own by default
        --all             every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read. With an error that concerns one athlete, that athlete's calendar has no future
      sessions, and those of the others are written as usual. With an error that concerns
      everybody, and with 2, no file is written.
      """;

  private static final int MOST_MINUTES = (int) AthleteCalendar.LONGEST_REMINDER.toMinutes();

  private final CompileCommand.Run run;
  private final Arguments given;
  private final Set<CompiledPlan> usable;

  private CalendarCommand(CompileCommand.Run run, Arguments given) {
    this.run = run;
    this.given = given;
    this.usable = Set.copyOf(run.compilation().usablePlans());
  }

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
            Arguments.TO,
            Arguments.PREVIOUS,
            Arguments.REMIND,
            Arguments.CODES,
            Arguments.ROOT,
            Arguments.ALL);
    String file = given.oneFile("calendar", " --to FOLDER");
    if (!given.has(Arguments.TO)) {
      throw new UsageException("calendar needs a folder: gripwright calendar FILE --to FOLDER");
    }
    Optional<Duration> reminder =
        given.count(Arguments.REMIND, 1, MOST_MINUTES).map(Duration::ofMinutes);
    Optional<Path> previous = previous(given);
    CompileCommand.Run run = CompileCommand.compiled(file, given);
    if (run.exit() == Exit.USAGE || concernsEverybody(run.compilation())) {
      Refusal.write(
          run.files(), run.compilation().findings(), run.compilation().located(), given, console);
      return run.exit();
    }
    CalendarCommand command = new CalendarCommand(run, given);
    String written = command.write(previous, reminder);
    console.out(written);
    console.err(FindingText.plain().render(run.compilation().located()));
    command.stopped().forEach(athlete -> console.err(stopped(athlete)));
    return run.exit();
  }

  private static Optional<Path> previous(Arguments given) throws UsageException {
    Optional<String> written = given.value(Arguments.PREVIOUS);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    Path folder = given.path(written.get());
    if (!Files.isDirectory(folder)) {
      throw new UsageException("--previous `" + written.get() + "` is not a folder");
    }
    return Optional.of(folder);
  }

  /**
   * Returns whether an error is not about athletes alone, so that nobody's sessions may be used.
   */
  private static boolean concernsEverybody(Compilation compilation) {
    return compilation.usablePlans().isEmpty()
        && (compilation.plans().isEmpty()
            || compilation.located().stream()
                .map(LocatedFinding::finding)
                .filter(Finding::blocks)
                .anyMatch(finding -> finding.athletes().isEmpty()));
  }

  private static String stopped(String athlete) {
    return "gripwright: the calendar of "
        + athlete
        + " has no future sessions, since an error above concerns "
        + athlete
        + "; correct it and run the command again\n";
  }

  /** Returns the athletes whose sessions may not be used. */
  private Set<String> stopped() {
    Set<String> names = new TreeSet<>();
    run.compilation().plans().stream()
        .filter(plan -> !usable.contains(plan))
        .forEach(plan -> names.add(plan.athlete().name()));
    return names;
  }

  private String write(Optional<Path> previous, Optional<Duration> reminder) throws UsageException {
    Map<String, List<CompiledPlan>> athletes = new TreeMap<>();
    for (CompiledPlan plan : run.compilation().plans()) {
      athletes.computeIfAbsent(plan.athlete().name(), name -> new ArrayList<>()).add(plan);
    }
    String folderName = given.value(Arguments.TO).orElseThrow();
    Path folder = given.path(folderName);
    Optional<CodeKey> key = CodeKey.of(given, folder, athletes.keySet(), run.reading());
    Pseudonyms names = CodeKey.names(key, run.reading());
    Map<String, String> files = new LinkedHashMap<>();
    for (Map.Entry<String, List<CompiledPlan>> athlete : athletes.entrySet()) {
      String name = names.of(athlete.getKey()) + ".ics";
      AthleteCalendar calendar =
          AthleteCalendar.of(athlete.getValue(), Console.wording()).withNames(names);
      if (!usable.containsAll(athlete.getValue())) {
        calendar = calendar.withoutFuture();
      }
      if (reminder.isPresent()) {
        calendar = calendar.remindingBefore(reminder.get());
      }
      if (previous.isPresent()) {
        calendar = after(calendar, previous.get().resolve(name));
      }
      files.put(name, calendar.text());
    }
    OutputFolder output = OutputFolder.checked(folder, files);
    if (key.isPresent()) {
      key.get().write();
    }
    output.write();
    int number = files.size();
    return number + (number == 1 ? " calendar" : " calendars") + " written to " + folderName + "\n";
  }

  private static AthleteCalendar after(AthleteCalendar calendar, Path earlier)
      throws UsageException {
    if (!Files.exists(earlier)) {
      return calendar;
    }
    try {
      return calendar.after(new String(Files.readAllBytes(earlier), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UsageException("cannot read `" + earlier + "`: " + Output.reason(e));
    } catch (IllegalArgumentException e) {
      throw new UsageException("`" + earlier + "` is not a calendar that this program wrote");
    }
  }
}
