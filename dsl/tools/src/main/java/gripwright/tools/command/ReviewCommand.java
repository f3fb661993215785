package gripwright.tools.command;

import gripwright.athlete.Athlete;
import gripwright.export.csv.ReviewCsv;
import gripwright.export.text.ReviewText;
import gripwright.finding.Nearest;
import gripwright.finding.ReportedFinding;
import gripwright.language.Reading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.review.Review;
import gripwright.season.CompiledPlan;
import gripwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code review FILE --athlete NAME}: a review of one athlete's log, and what comes next. */
public final class ReviewCommand {

  /** What {@code review --help} prints. */
  public static final String HELP =
      """
      gripwright review FILE --athlete NAME [--plan NAME] [--on DATE]
                             [--as text|json|csv] [--root DIR] [--all]

      Summarises an athlete's log: sessions compared with the plan, load by week with
      monotony and strain, time under tension and impulse by grip, finger and pulley,
      change by all tests and how likely it is real, left against right, pain by place,
      and at most five next steps for the coach, each with its reason.

        --athlete NAME      whose log
        --plan NAME         the only plan to compare it with; by default every plan of
                            the athlete that has begun
        --on DATE           the day, such as 2027-01-31; later lines are ignored; the
                            day of the athlete's last log line by default
        --as text|json|csv  text for people (default), JSON for programs, or CSV with a
                            line for each exercise and each other line of the log
        --root DIR          the folder that `use` may read from; the file's own by
                            default
        --all               every finding; otherwise 30 a file and 100 in all

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read.
      """;

  private ReviewCommand() {}

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
            Arguments.PLAN,
            Arguments.ON,
            Arguments.AS_OR_CSV,
            Arguments.ROOT,
            Arguments.ALL);
    return AthleteOfFile.run(
        "review",
        given,
        console,
        (athlete, log, day, reading) -> {
          List<Plan> plans = plans(given, athlete, reading);
          Review review =
              day.map(on -> review(athlete, log, plans, on, reading))
                  .orElseGet(() -> Review.unlogged(athlete));
          write(review, reading, given, console);
        });
  }

  /** Returns the plan that was named, or all plans of the athlete. */
  private static List<Plan> plans(Arguments given, Athlete athlete, Reading reading)
      throws UsageException {
    List<Plan> own =
        reading.plans().values().stream()
            .filter(plan -> plan.athletes().contains(athlete.name()))
            .toList();
    Optional<String> name = given.value(Arguments.PLAN);
    if (name.isEmpty()) {
      return own;
    }
    List<String> names = own.stream().map(Plan::name).toList();
    if (names.contains(name.get())) {
      return own.stream().filter(plan -> plan.name().equals(name.get())).toList();
    }
    throw new UsageException(
        "there is no plan `"
            + name.get()
            + "` for `"
            + athlete.name()
            + "`"
            + (names.isEmpty()
                ? ""
                : "; "
                    + Nearest.to(name.get(), names)
                        .map(nearest -> "did you mean `" + nearest + "`?")
                        .orElse("there are " + String.join(", ", names))));
  }

  private static Review review(
      Athlete athlete, Log log, List<Plan> plans, LocalDate day, Reading reading) {
    Log known =
        new Log(log.athlete(), log.entries().stream().filter(e -> !e.date().isAfter(day)).toList());
    List<CompiledPlan> compiled =
        Season.of(
                plans.stream().filter(plan -> !plan.from().isAfter(day)).toList(),
                List.of(athlete),
                List.of(known),
                reading.ruleSets().values())
            .withProtocols(reading.protocols().values())
            .withMistakesLeftOut()
            .compile()
            .plans();
    return Review.of(athlete, log, compiled, reading.protocols(), day);
  }

  private static void write(Review review, Reading reading, Arguments given, Console console) {
    List<LocatedFinding> located = new ArrayList<>(reading.located());
    review.findings().forEach(finding -> located.add(reading.located(finding)));
    if (given.asJson()) {
      List<ReportedFinding> findings =
          located.stream().map(l -> l.report(Console.wording())).toList();
      console.out(Console.documents(reading.files()).review(review, findings));
      return;
    }
    console.out(given.asCsv() ? ReviewCsv.of(review) : ReviewText.of(review, Console.wording()));
    console.err(FindingText.plain().render(located));
  }
}
