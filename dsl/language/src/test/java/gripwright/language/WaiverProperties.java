package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import gripwright.planning.GeneratedSeason;
import gripwright.planning.Reached;
import gripwright.rule.Rule;
import gripwright.rule.StandardRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A waiver covers the rule that it names at the place that it names, and hides nothing else. */
class WaiverProperties {

  private static final Set<String> WAIVABLE =
      StandardRules.sets().stream()
          .flatMap(set -> set.rules().stream())
          .filter(rule -> !rule.neverWaived())
          .map(Rule::name)
          .collect(Collectors.toSet());

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aWaiverMarksOneFindingAndNoOther(
      @ForAll GeneratedSeason season, @ForAll @IntRange(min = 0, max = 99) int which) {
    String text = SeasonText.of(season);
    List<Finding> before = findings(text);
    List<Finding> waivable =
        before.stream()
            .filter(f -> f.waivedBecause().isEmpty())
            .filter(f -> f.rule().filter(WAIVABLE::contains).isPresent())
            .filter(f -> waiver(f).isPresent())
            .filter(f -> isPlanned(season.plan(), f))
            .toList();
    Reached.reached(!waivable.isEmpty(), 30);
    if (waivable.isEmpty()) {
      return;
    }
    Finding chosen = waivable.get(which % waivable.size());
    String waived =
        text.replaceFirst("(?m)^(plan [^{]*\\{)$", "$1\n" + waiver(chosen).orElseThrow());
    List<Finding> after = findings(waived);
    assertEquals(said(before, chosen), said(after, chosen));
    assertEquals(places(before, chosen), waivedPlaces(after, chosen), waived);
  }

  /** Returns whether the plan has the exercise; what was trained beside it can't be waived. */
  private static boolean isPlanned(Plan plan, Finding finding) {
    int exercise = Integer.parseInt(step(finding, "exercise").orElseThrow());
    return plan.blocks().stream()
        .filter(block -> step(finding, "block").filter(block.name()::equals).isPresent())
        .flatMap(block -> block.content().sessions().stream())
        .filter(session -> step(finding, "session").filter(session.name()::equals).isPresent())
        .anyMatch(session -> session.content().exercises().size() >= exercise);
  }

  private static List<Finding> findings(String text) {
    return Gripwright.read("season.grip", text).season().compile().findings();
  }

  /** Returns all findings except those of the chosen one's rule on its line, including the past. */
  private static List<String> said(List<Finding> all, Finding chosen) {
    List<String> said = new ArrayList<>();
    for (Finding each : all) {
      if (!same(each, chosen)) {
        said.add(each.severity() + " " + each.code() + " " + each.place() + " " + each.places());
        said.add(each.arguments() + " " + each.waivedBecause());
      }
    }
    said.sort(null);
    return said;
  }

  /**
   * Returns the places where the rule of the chosen finding is broken on its line, including the
   * past.
   */
  private static Set<String> places(List<Finding> all, Finding chosen) {
    Set<String> places = new TreeSet<>();
    all.stream().filter(each -> same(each, chosen)).forEach(each -> places.addAll(places(each)));
    return places;
  }

  private static boolean same(Finding each, Finding chosen) {
    boolean rule =
        each.code().equals(chosen.code())
            || chosen.rule().equals(Optional.ofNullable(each.arguments().get("rule")));
    return rule && line(each.place()).equals(line(chosen.place()));
  }

  private static Set<String> places(Finding finding) {
    Set<String> places = new TreeSet<>();
    (finding.places().isEmpty() ? List.of(finding.place()) : finding.places())
        .forEach(place -> places.add(place.toString()));
    return places;
  }

  private static Set<String> waivedPlaces(List<Finding> all, Finding chosen) {
    Set<String> places = new TreeSet<>();
    all.stream()
        .filter(f -> f.code().equals(chosen.code()) && f.waivedBecause().isPresent())
        .forEach(f -> places.addAll(places(f)));
    return places;
  }

  private static ModelPath line(ModelPath place) {
    return place.without("for", "week", "date");
  }

  /** Writes a waiver of a finding's rule on its line, whatever the week. */
  private static Optional<String> waiver(Finding finding) {
    return step(finding, "block")
        .map(
            block ->
                "  waive "
                    + finding.rule().orElseThrow()
                    + " in "
                    + block
                    + step(finding, "session").map(s -> " session " + s).orElse("")
                    + step(finding, "exercise").map(e -> " exercise " + e).orElse("")
                    + " because \"the coach watches\"")
        .filter(written -> step(finding, "exercise").isPresent());
  }

  private static Optional<String> step(Finding finding, String kind) {
    return finding.place().steps().stream()
        .filter(step -> step.kind().equals(kind))
        .map(ModelPath.Step::name)
        .findFirst();
  }
}
