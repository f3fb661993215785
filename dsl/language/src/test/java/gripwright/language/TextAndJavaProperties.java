package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.language.finding.LocatedFinding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.planning.GeneratedSeason;
import gripwright.planning.Reached;
import gripwright.season.CompiledPlan;
import gripwright.season.CompiledSeason;
import gripwright.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;

/** Text has no check that Java lacks, and a log from outside counts like one in the text. */
class TextAndJavaProperties {

  private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::toString);

  /** What only a text can say: that a line is in it twice, or that two of its lines disagree. */
  private static final Set<String> ABOUT_LINES = Set.of("log.repeated", "log.conflict");

  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().distinct().sorted(ORDER).toList();
  }

  private static List<Finding> findings(Compilation compilation) {
    return sorted(
        compilation.located().stream()
            .map(LocatedFinding::finding)
            .filter(f -> !ABOUT_LINES.contains(f.code()))
            .toList());
  }

  /** Returns the season with all of its objects as they were built. */
  private static Season built(GeneratedSeason season) {
    return Season.of(
        List.of(season.plan()), List.of(season.athlete()), List.of(season.log()), List.of());
  }

  /** Returns codes with their places: names of files and numbers of lines do not matter in them. */
  private static List<String> codes(List<Finding> findings) {
    return findings.stream()
        .map(f -> f.severity() + " " + f.code() + " " + f.place().without("entry"))
        .sorted()
        .toList();
  }

  private static Set<String> kinds(List<Finding> findings, boolean advice) {
    return findings.stream()
        .filter(f -> advice || f.severity() != Severity.ADVICE)
        .map(f -> f.severity() + " " + f.code())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Property(edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void theSameObjectsGiveTheSameSeasonReadOrBuilt(@ForAll GeneratedSeason season) {
    Reading reading =
        Gripwright.read(
            "season.grip", SeasonText.of(season), ReadOptions.standard().withAllFindings());
    if (reading.usable()) {
      Compilation read = reading.compile();
      CompiledSeason java =
          Season.of(
                  reading.plans().values(),
                  reading.athletes().values(),
                  reading.logs().values(),
                  reading.ruleSets().values())
              .compile();
      assertEquals(java.plans(), read.plans());
      assertEquals(sorted(java.findings()), sorted(reading.season().compile().findings()));
      Set<String> onlyRead = new TreeSet<>(kinds(findings(read), true));
      onlyRead.removeAll(kinds(java.findings(), true));
      assertEquals(Set.of(), onlyRead);
      assertEquals(
          kinds(java.findings(), false),
          kinds(findings(read), false),
          "text leaves out advice beside an error, and nothing else");
      CompiledSeason fromBuilders = built(season).compile();
      assertEquals(codes(fromBuilders.findings()), codes(java.findings()));
      assertEquals(fromBuilders.usable(), read.usable());
      Statistics.label("found something").collect(!java.findings().isEmpty());
    }
    Reached.reached(reading.usable(), 80);
  }

  @Property(edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void aLogFromOutsideCountsLikeOneInTheText(@ForAll GeneratedSeason season) {
    ReadOptions options = ReadOptions.standard().withAllFindings();
    Reading whole = Gripwright.read("season.grip", SeasonText.of(season), options);
    GeneratedSeason silent =
        new GeneratedSeason(season.athlete(), Log.empty(season.log().athlete()), season.plan());
    Reading bare = Gripwright.read("season.grip", SeasonText.of(silent), options);
    if (whole.usable() && bare.usable()) {
      Log log = whole.logs().getOrDefault(season.log().athlete(), season.log());
      Compilation read = whole.compile();
      Compilation with = bare.withLogs(List.of(log)).compile();
      assertEquals(read.plans(), with.plans());
      assertEquals(findings(read), findings(with));
      Statistics.label("logged").collect(!log.entries().isEmpty());
    }
    Reached.reached(whole.usable() && bare.usable(), 80);
  }

  @Example
  void aLogOfNobodyWhoWasReadIsRefused() {
    Reading reading = Gripwright.read("empty.grip", "language 1\n");
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> reading.withLogs(List.of(Log.empty("tove"))));
    assertEquals("a log of tove, who is none of []", refused.getMessage());
  }

  @Example
  void aFindingAboutALogFromOutsideIsAtTheBeginningOfTheFile() {
    Reading reading = Gripwright.read(Path.of("../../examples/plans/first-weeks.grip"));
    Log log =
        Log.empty("randi")
            .with(
                new LogEntry.Trained(
                    LocalDate.of(2027, 1, 12), "arms", List.of(), Optional.empty()));
    Compilation compiled = reading.withLogs(List.of(log)).compile();
    assertEquals(
        List.of("log.session-unknown 1:1"),
        compiled.findings().stream()
            .filter(f -> f.code().startsWith("log."))
            .map(f -> f.code() + " " + f.line() + ":" + f.column())
            .collect(Collectors.toList()));
    CompiledPlan plan = compiled.plans().get(0);
    assertEquals(log.entries().get(0), plan.log().entries().get(1), "after the test of the text");
  }
}
