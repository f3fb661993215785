package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import gripwright.rule.RuleCheck;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** One exercise alone is stopped by the rule that a check of everything tells first. */
class StoppingRuleProperties {

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theRuleThatStopsAnExerciseIsTheFirstErrorOfItsCheck(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    for (DatedSession session : plan.sessions()) {
      PlanWeek week = plan.weeks().get(session.week() - 1);
      for (PlannedExercise exercise : session.exercises()) {
        CompiledPlan alone =
            LoneExercise.planned(
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
