package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.rule.Gates;
import gripwright.rule.Rule;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** One exercise alone is stopped by the rule that a check of everything tells first. */
class StoppingRuleProperties {

  /** Else one exercise alone could be stopped by a rule that is never asked of it. */
  @Example
  void everyBuiltInErrorIsAboutAnExercise() {
    for (RuleSet set : StandardRules.sets()) {
      for (Rule rule : set.rules()) {
        assertTrue(
            rule.severity() != Severity.ERROR || rule.scope() == Scope.EXERCISE, rule.name());
      }
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theRuleThatStopsAnExerciseIsTheFirstErrorOfItsCheck(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    for (DatedSession session : plan.sessions()) {
      PlanWeek week = plan.weeks().get(session.week() - 1);
      for (PlannedExercise exercise : session.exercises()) {
        CompiledPlan alone =
            Gates.planned(
                exercise, session, week, season.plan(), season.athlete(), season.log());
        Optional<String> checked =
            RuleCheck.check(alone, List.of()).stream()
                .filter(finding -> finding.rule().isPresent() && finding.blocks())
                .findFirst()
                .flatMap(Finding::rule);
        assertEquals(checked, RuleCheck.stopping(alone));
        Statistics.label("rule").collect(checked.orElse("none"));
      }
    }
  }
}
