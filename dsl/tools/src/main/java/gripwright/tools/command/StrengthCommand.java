package gripwright.tools.command;

import gripwright.export.json.JsonDocuments;
import gripwright.export.text.StrengthText;
import gripwright.language.finding.FindingText;
import gripwright.quantity.Length;
import gripwright.survey.StrengthSurvey;
import java.util.List;
import java.util.Optional;

/** {@code strength FILE --athlete NAME}: what one athlete's tests tell of every grip. */
public final class StrengthCommand {

  /** What {@code strength --help} prints. */
  public static final String HELP =
      """
      gripwright strength FILE --athlete NAME [--edge DEPTH] [--on DATE]
                               [--as text|json] [--root DIR] [--all]

      Says what an athlete's tests tell of strength on a day: the greatest load held for
      7 s in every grip, those of the catalogue and those of the file, with an interval;
      the greatest load by how long it is held; and critical force. One hand, two hands
      and lifts are told apart. Plans and rules play no part.

        --athlete NAME  whose strength
        --edge DEPTH    the one edge to reckon, such as 15mm or 0.5inch, loads by time
                        too; by default those that were tested, in JSON also those the
                        athlete owns
        --on DATE       the day, such as 2027-01-31; later tests are not known yet, and
                        older ones count less; the day of the athlete's last log line by
                        default
        --as text|json  text for people (default), or JSON for programs
        --root DIR      the folder that `use` may read from; the file's own by default
        --all           every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read.
      """;

  private StrengthCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if it was called wrongly
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(
            arguments,
            console,
            Arguments.ATHLETE,
            Arguments.EDGE,
            Arguments.ON,
            Arguments.AS,
            Arguments.ROOT,
            Arguments.ALL);
    Optional<Length> edge = given.edge();
    return AthleteOfFile.run(
        "strength",
        given,
        console,
        (athlete, log, day, reading) -> {
          StrengthSurvey survey =
              day.map(on -> StrengthSurvey.of(athlete, log, reading.grips().values(), edge, on))
                  .orElseGet(() -> StrengthSurvey.untested(athlete));
          if (given.asJson()) {
            console.out(JsonDocuments.strength(survey, reading.findings(), Console.wording()));
          } else {
            console.out(StrengthText.of(survey, Console.wording()));
            console.err(FindingText.plain().render(reading.located()));
          }
        });
  }
}
