package gripwright.tools.command;

import gripwright.export.picture.GripPicture;
import gripwright.export.text.GripText;
import gripwright.language.finding.FindingText;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.survey.GripSurvey;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code grips FILE --athlete NAME}: every grip fitted to one athlete's hand. */
public final class GripsCommand {

  /** What {@code grips --help} prints. */
  public static final String HELP =
      """
      gripwright grips FILE --athlete NAME [--edge DEPTH] [--load LOAD] [--on DATE]
                            [--newtons] [--as text|json] [--to FOLDER] [--root DIR] [--all]

      Fits every grip, from the catalogue and from the file, to an athlete's hand: whether
      the hand can take it, the angles of the joints, the share of each finger, an
      estimate of the load on tendons and pulleys, the effect of a slipping finger on
      the others, and which built-in rules close the grip to this athlete even for a
      light hold. Plans and their waivers are not used.

        --athlete NAME  whose hand
        --edge DEPTH    depth of the edge, such as 15mm or 0.5inch; 20 mm by default
        --load LOAD     load on both hands together, such as 75kg or 500N;
                        body mass by default
        --on DATE       the day, such as 2027-01-31, for age, training, injuries and
                        body mass; the day of the athlete's last log line by default
        --newtons       tendons and pulleys in newtons instead of times the athlete's own
                        hang; only the latter can be relied on. JSON has both
        --as text|json  text for people (default), or JSON for programs
        --to FOLDER     writes a picture of each grip into a folder instead, as SVG: the
                        four fingers from the side, with the angles of their joints
        --root DIR      the folder that `use` may read from; the file's own by default
        --all           every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read.
      """;

  private static final Length EDGE = Length.ofMillimetres(20);

  private GripsCommand() {}

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
            Arguments.LOAD,
            Arguments.ON,
            Arguments.NEWTONS,
            Arguments.AS,
            Arguments.TO,
            Arguments.ROOT,
            Arguments.ALL);
    Optional<Length> edge = given.edge();
    Optional<Load> load = given.load();
    return AthleteOfFile.run(
        "grips",
        given,
        console,
        (athlete, log, known, reading) -> {
          LocalDate day = AthleteOfFile.needed(known, athlete);
          GripSurvey survey =
              GripSurvey.of(
                  athlete,
                  log,
                  reading.grips().values(),
                  edge.orElse(EDGE),
                  load.or(() -> log.bodyMassOn(day)).orElse(athlete.bodyMass()),
                  day);
          if (given.has(Arguments.TO)) {
            console.out(pictures(survey, given));
            console.err(FindingText.plain().render(reading.located()));
          } else if (given.asJson()) {
            console.out(Console.documents(reading.files()).grips(survey, reading.findings()));
          } else {
            console.out(
                given.has(Arguments.NEWTONS)
                    ? GripText.withNewtons(survey, Console.wording())
                    : GripText.of(survey, Console.wording()));
            console.err(FindingText.plain().render(reading.located()));
          }
        });
  }

  /** Writes a picture of every grip and returns a line about them. */
  private static String pictures(GripSurvey survey, Arguments given) throws UsageException {
    if (given.value(Arguments.AS).isPresent()) {
      throw new UsageException(
          "--to writes pictures, --as chooses text or JSON: give one of the two");
    }
    String folder = given.value(Arguments.TO).orElseThrow();
    Path path = Output.folder(given.path(folder));
    for (GripSurvey.Row row : survey.rows()) {
      Output.replace(
          path.resolve(GripPicture.fileName(row)), GripPicture.of(survey, row, Console.wording()));
    }
    int count = survey.rows().size();
    return count + (count == 1 ? " picture" : " pictures") + " written to " + folder + "\n";
  }
}
