package gripwright.tools.command;

import gripwright.export.text.StrengthText;
import gripwright.history.CompletedHolds;
import gripwright.language.finding.FindingText;
import gripwright.quantity.Length;
import gripwright.survey.StrengthSurvey;
import java.util.List;
import java.util.Optional;

/** {@code strength FILE --athlete NAME}: what one athlete's tests show for every grip. */
public final class StrengthCommand {

  /** What {@code strength --help} prints. */
  public static final String HELP =
      """
      gripwright strength FILE --athlete NAME [--edge DEPTH] [--on DATE]
                               [--as text|json] [--root DIR] [--all]

      Estimates an athlete's strength on a day from the tests in the log: the greatest load
      held for 7 s in every grip, from the catalogue and from the file, with an interval;
      the greatest load by hold time; and critical force. One hand, two hands and lifts
      are separate. Of a grip tested on two days it shows the change and how likely it is
      real; completed training holds narrow the interval of a grip without tests, and
      raise no load. Plans and rules are not used.

        --athlete NAME  whose strength
        --edge DEPTH    the only edge to estimate, such as 15mm or 0.5inch, for loads by
                        time too; by default those that were tested, in JSON also those
                        the athlete owns
        --on DATE       the day, such as 2027-01-31; later tests are ignored, older ones
                        count less; the day of the athlete's last log line by
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
   * @throws UsageException if the arguments are wrong
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
              day.map(
                      on ->
                          StrengthSurvey.of(
                              athlete,
                              log,
                              reading.grips().values(),
                              edge,
                              on,
                              CompletedHolds.in(log, reading.protocols())))
                  .orElseGet(() -> StrengthSurvey.untested(athlete));
          if (given.asJson()) {
            console.out(Console.documents(reading.files()).strength(survey, reading.findings()));
          } else {
            console.out(StrengthText.of(survey, Console.wording()));
            console.err(FindingText.plain().render(reading.located()));
          }
        });
  }
}
