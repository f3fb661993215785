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
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** One exercise alone is stopped by the rule that a check of everything reports first. */
class StoppingRuleProperties {

  /** Doses of a session, a day or a week, which no choice of a grip changes. */
  private static final Set<String> DOSES =
      Set.of(
          "youth-session-holds", "youth-session-time", "youth-day-sessions", "youth-week-sessions");

  /** Errors about the athlete, whatever is trained: no choice among exercises could mend them. */
  private static final Set<String> OF_THE_ATHLETE = Set.of("climbing-hours", "injured-climbing");

  /** Else one exercise alone could be stopped by a rule that is never asked of it. */
  @Example
  void everyBuiltInErrorButThoseOfDosesIsAboutAnExercise() {
    for (RuleSet set : StandardRules.sets()) {
      for (Rule rule : set.rules()) {
        assertTrue(
            rule.severity() != Severity.ERROR
                || rule.scope() == Scope.EXERCISE
                || DOSES.contains(rule.name())
                || OF_THE_ATHLETE.contains(rule.name()),
            rule.name());
      }
    }
  }

  /** A schedule with one exercise and nothing else. */
  private static Schedule alone(
      CompiledPlan plan, DatedSession session, PlanWeek week, PlannedExercise exercise) {
    DatedSession only =
        session.toBuilder()
            .hard(exercise.hard())
            .exercises(List.of(exercise))
            .happened(Optional.empty())
            .build();
    return Schedule.builder(plan.plan(), plan.athlete())
        .sessions(List.of(only))
        .weeks(List.of(week))
        .build();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theRuleThatStopsAnExerciseIsTheFirstErrorOfItsCheck(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.compile();
    for (DatedSession session : plan.sessions()) {
      PlanWeek week = plan.weeks().get(session.week() - 1);
      for (PlannedExercise exercise : session.exercises()) {
        Schedule alone = alone(plan, session, week, exercise);
        Optional<String> checked =
            RuleCheck.check(alone, plan.timeline(), List.of()).stream()
                .filter(finding -> finding.rule().filter(r -> !DOSES.contains(r)).isPresent())
                .filter(Finding::blocks)
                .findFirst()
                .flatMap(Finding::rule);
        assertEquals(checked, RuleCheck.stopping(alone, plan.timeline()));
        assertEquals(checked, Gates.stopping(exercise, session, week, plan.timeline()));
        Statistics.label("rule").collect(checked.orElse("none"));
      }
    }
  }
}
