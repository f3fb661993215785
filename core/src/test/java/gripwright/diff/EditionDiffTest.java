package gripwright.diff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.grip.Grip;
import gripwright.grip.StandardGrips;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Changes of declarations and findings; plans have their own tests. */
class EditionDiffTest {

  private static final List<Rule> RULES =
      StandardRules.sets().stream().flatMap(set -> set.rules().stream()).limit(3).toList();

  private static Grip grip(String name) {
    return Objects.requireNonNull(StandardGrips.byName().get(name));
  }

  private static RuleSet rules(Rule... rules) {
    return new RuleSet("club", Optional.empty(), List.of(rules));
  }

  private static ReportedFinding finding(String place, String message, int line) {
    return finding(place, message, line, null);
  }

  private static ReportedFinding finding(
      String place, String message, int line, @Nullable String waived) {
    return ReportedFinding.builder("rule.x", Severity.WARNING, message)
        .file("a.grip")
        .line(line)
        .column(1)
        .endLine(line)
        .endColumn(9)
        .rule("x")
        .waivedBecause(waived)
        .place(place)
        .build();
  }

  private static EditionDiff between(Edition.Builder before, Edition.Builder after) {
    return EditionDiff.between(before.build(), after.build());
  }

  @Test
  void theRulesOfARuleSetAreReported() {
    EditionDiff diff =
        between(
            Edition.builder().rules(rules(RULES.get(0), RULES.get(1))),
            Edition.builder().rules(rules(RULES.get(2), RULES.get(1))));
    assertEquals(
        List.of(Redefinition.State.GONE, Redefinition.State.NEW).stream().sorted().toList(),
        diff.definitions().stream().map(Redefinition::state).sorted().toList());
    assertTrue(diff.definitions().stream().allMatch(d -> d.kind() == Redefinition.Kind.RULE));
    assertTrue(
        between(
                Edition.builder().rules(rules(RULES.get(0), RULES.get(1))),
                Edition.builder().rules(rules(RULES.get(1), RULES.get(0))))
            .isEmpty());
  }

  @Test
  void theOrderOfCautionsDoesNotMatter() {
    Grip grip = grip("half-crimp");
    List<String> cautions = new ArrayList<>(List.of("one", "two"));
    Grip one = with(grip, cautions);
    Collections.reverse(cautions);
    assertTrue(
        between(Edition.builder().grip(one), Edition.builder().grip(with(grip, cautions)))
            .isEmpty());
    assertEquals(
        List.of(new Redefinition(Redefinition.Kind.GRIP, "half-crimp", Redefinition.State.CHANGED)),
        between(Edition.builder().grip(one), Edition.builder().grip(with(grip, List.of("one"))))
            .definitions());
  }

  private static Grip with(Grip grip, List<String> cautions) {
    return grip.toBuilder().cautions(cautions).build();
  }

  @Test
  void aDeclarationWithAMistakeIsNotReportedAsRemoved() {
    Grip grip = grip("half-crimp");
    assertTrue(
        between(Edition.builder().grip(grip), Edition.builder().incomplete())
            .definitions()
            .isEmpty());
    assertEquals(1, between(Edition.builder().grip(grip), Edition.builder()).definitions().size());
  }

  @Test
  void aFindingIsTheSameOnAnotherLineWithAnotherNumberOrWaived() {
    String place = "plan a / block b / week 2 / session s / exercise 1";
    assertTrue(
        between(
                Edition.builder().finding(finding(place, "rises by 12 %", 4)),
                Edition.builder().finding(finding(place, "rises by 13 %", 9, "a trip")))
            .isEmpty());
    assertTrue(
        between(
                Edition.builder().finding(finding(place, "too short", 4)),
                Edition.builder()
                    .finding(
                        finding(
                            "plan a / block b / week 3 / session s / exercise 2", "too short", 4)))
            .isEmpty());
    EditionDiff another =
        between(
            Edition.builder().finding(finding(place, "too short", 4)),
            Edition.builder()
                .finding(finding(place, "too short", 4))
                .finding(finding("plan a / block c / week 2", "too long", 5)));
    assertEquals(List.of(5), another.findingsNew().stream().map(ReportedFinding::line).toList());
    assertEquals(List.of(), another.findingsGone());
  }

  @Test
  void oneOfTwoEqualFindingsMayBeRemoved() {
    EditionDiff diff =
        between(
            Edition.builder().finding(finding("plan a", "x", 1)).finding(finding("plan a", "x", 2)),
            Edition.builder().finding(finding("plan a", "x", 1)));
    assertEquals(1, diff.findingsGone().size());
    assertEquals(1, diff.ofPlan("a").findingsGone().size());
    assertTrue(diff.ofPlan("ab").isEmpty());
  }
}
