package gripwright.season;

import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.rule.Rule;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.rule.Winter;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The waivers of one plan, which all its athletes share. */
class SharedWaiversTest {

  private static final RuleSet CLUB =
      RuleSet.of(
          "club",
          Rule.warning("no-split", Scope.EXERCISE)
              .require(
                  Expression.subject(Kind.EXERCISE).get("grip").get("family").is("split").not())
              .message("a split grip")
              .build());

  private static CompiledPlan checked(Winter winter) {
    CompiledPlan plan = winter.rules("club").waive("no-split").compiled();
    return plan.withFindings(RuleCheck.check(plan.schedule(), plan.timeline(), List.of(CLUB)));
  }

  @Test
  void waiverIsUsedIfOneAthleteNeedsIt() {
    CompiledPlan needs = checked(new Winter().session(0, line(FRONT_TWO, 50)));
    CompiledPlan doesNot = checked(new Winter().session(0, line(HALF_CRIMP, 50)));
    List<CompiledPlan> both = SeasonRun.acrossAthletes(List.of(doesNot, needs));
    assertEquals(List.of(), both.get(0).findings());
    assertEquals(1, both.get(1).findings().size());
    List<CompiledPlan> neither = SeasonRun.acrossAthletes(List.of(doesNot, doesNot));
    assertEquals(1, neither.get(0).findings().size());
    assertEquals(List.of(), neither.get(1).findings());
  }

  /**
   * The limit is generous for a busy machine; comparing each with all would take ten thousand
   * million steps.
   */
  @Test
  @CountedWork
  void manyUnusedWaiversAreReportedQuickly() {
    CompiledPlan plan = new Winter().compiled();
    List<Finding> findings = new ArrayList<>();
    for (int i = 1; i <= 100_000; i++) {
      ModelPath place = plan.plan().path().then("waiver", i);
      findings.add(
          Finding.warning("plan.waiver-unused", place)
              .about(Topic.UNUSED_WAIVER)
              .with("rule", "sets"));
    }
    CompiledPlan many = plan.withFindings(findings);
    List<CompiledPlan> together =
        Work.atMost(100_000_000, () -> SeasonRun.acrossAthletes(List.of(many, many)));
    assertEquals(100_000, together.get(0).findings().size());
    assertEquals(0, together.get(1).findings().size());
  }
}
