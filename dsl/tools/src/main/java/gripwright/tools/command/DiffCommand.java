package gripwright.tools.command;

import gripwright.diff.EditionDiff;
import gripwright.export.text.DiffText;
import gripwright.finding.Nearest;
import gripwright.finding.ReportedFinding;
import gripwright.language.EditionReading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.season.CompiledPlan;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** {@code diff OLD NEW}: what changed in meaning. */
public final class DiffCommand {

  /** What {@code diff --help} prints. */
  public static final String HELP =
      """
      gripwright diff OLD NEW [--plan NAME] [--athlete NAME] [--as text|json]
                              [--root DIR]

      Reports what changed in meaning between two versions of plans: sessions, loads, dates,
      tests, waivers, findings, and athlete data. A new layout, other comments or another
      order of declarations are not changes. OLD and NEW are files, or folders, of which
      every file that ends in .grip is read; links in them are not followed.

        --plan NAME     only this plan
        --athlete NAME  only this athlete's plans
        --as text|json  text for people (default), or JSON for programs
        --root DIR      the folder that `use` may read from, on both sides; each folder, or
                        each file's own, by default

      Exit: 0 with or without differences, 1 errors in the files (what compiles is still
      compared), 2 wrong usage or a file that can't be read.
      """;

  private DiffCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(
            arguments, console, Arguments.PLAN, Arguments.ATHLETE, Arguments.AS, Arguments.ROOT);
    if (given.rest().size() != 2) {
      throw new UsageException("diff needs two files or folders: gripwright diff OLD NEW");
    }
    EditionReading before = read(given.rest().get(0), given);
    EditionReading after = read(given.rest().get(1), given);
    if (!before.fileRead() || !after.fileRead()) {
      List<LocatedFinding> located = new ArrayList<>(before.located());
      located.addAll(after.located());
      List<ReportedFinding> findings = new ArrayList<>(before.edition().findings());
      findings.addAll(after.edition().findings());
      List<SourceFile> files = new ArrayList<>(before.files());
      files.addAll(after.files());
      Refusal.write(files, findings, located, given, console);
      return Exit.USAGE;
    }
    EditionDiff diff =
        chosen(EditionDiff.between(before.edition(), after.edition()), given, before, after);
    if (given.asJson()) {
      console.out(
          Console.documents(before.files(), after.files())
              .diff(diff, before.edition().findings(), after.edition().findings()));
    } else {
      sayErrors("OLD", given.rest().get(0), before, console);
      sayErrors("NEW", given.rest().get(1), after, console);
      console.out(DiffText.of(diff, Console.wording()));
    }
    return before.usable() && after.usable() ? Exit.FINE : Exit.ERRORS;
  }

  private static EditionReading read(String place, Arguments given) throws UsageException {
    try {
      return EditionReading.of(given.path(place), given.readOptions());
    } catch (IOException e) {
      throw new UsageException("cannot compare `" + place + "`: " + e.getMessage());
    }
  }

  private static EditionDiff chosen(
      EditionDiff diff, Arguments given, EditionReading before, EditionReading after)
      throws UsageException {
    Optional<String> plan = given.value(Arguments.PLAN);
    Optional<String> athlete = given.value(Arguments.ATHLETE);
    EditionDiff left = diff;
    if (plan.isPresent()) {
      find("plan", plan.get(), before, after, p -> p.plan().name());
      left = left.ofPlan(plan.get());
    }
    if (athlete.isPresent()) {
      find("athlete", athlete.get(), before, after, p -> p.athlete().name());
      left = left.ofAthlete(athlete.get());
    }
    return left;
  }

  /**
   * Looks for a name on both sides; if one side has errors, the name may be missing because of
   * them.
   *
   * @throws UsageException if it is on neither
   */
  private static void find(
      String kind,
      String name,
      EditionReading before,
      EditionReading after,
      Function<CompiledPlan, String> nameOf)
      throws UsageException {
    SortedSet<String> names = new TreeSet<>();
    Stream.of(before, after)
        .flatMap(side -> side.edition().plans().stream())
        .forEach(p -> names.add(nameOf.apply(p)));
    if (!names.contains(name) && before.edition().whole() && after.edition().whole()) {
      throw new UsageException(
          "there is no plan "
              + (kind.equals("plan") ? "" : "for ")
              + "`"
              + name
              + "` on either side"
              + Nearest.to(name, names)
                  .map(nearest -> "; did you mean `" + nearest + "`?")
                  .orElse(names.isEmpty() ? "" : "; there are " + String.join(", ", names)));
    }
  }

  private static void sayErrors(
      String side, String place, EditionReading reading, Console console) {
    List<LocatedFinding> errors =
        reading.located().stream().filter(f -> f.finding().blocks()).toList();
    if (!errors.isEmpty()) {
      FindingText text = console.colour() ? FindingText.coloured() : FindingText.plain();
      console.err(
          "errors in "
              + side
              + ", `"
              + place
              + "`; the parts that need them are not compared:\n\n");
      console.err(text.render(errors));
    }
  }
}
