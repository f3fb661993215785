package gripwright.rule;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.ModelPath;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import gripwright.rule.view.PlanView;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Checking a plan four times as long takes four times the work, counted in things visited. */
class LinearWorkTest {

  private static final Expression EXERCISE = subject(Kind.EXERCISE);
  private static final Expression SESSION = subject(Kind.SESSION);
  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression FINGER = subject(Kind.FINGER);

  private static final RuleSet CLUB =
      RuleSet.of(
          "club",
          rule("sets", Scope.EXERCISE, EXERCISE.get("sets").atMost(number(2))),
          rule(
              "share-of-the-session",
              Scope.SESSION,
              SESSION
                  .get("exercises")
                  .every(
                      EXERCISE
                          .get("load")
                          .atMost(percent(50).times(outer(Kind.SESSION, 1).get("load"))))),
          rule(
              "share-of-the-plan",
              Scope.EXERCISE,
              EXERCISE
                  .get("load")
                  .atMost(
                      EXERCISE
                          .get("plan")
                          .get("exercises")
                          .summarize(Expression.Summary.MEAN, EXERCISE.get("load")))),
          rule(
              "finger",
              Scope.WEEK,
              WEEK.get("fingers")
                  .every(FINGER.get("a2-exposure").atMost(FINGER.get("recent-a2-exposure")))),
          rule(
              "block-sessions",
              Scope.WEEK,
              WEEK.get("block").get("sessions").count().atMost(number(3))),
          rule(
              "pair",
              Scope.PAIR_OF_SESSIONS,
              subject(Kind.PAIR).get("gap").atLeast(amount(3, Unit.DAY))));

  private static Rule rule(String name, Scope scope, Expression require) {
    return Rule.warning(name, scope).require(require).message("broken").build();
  }

  /** One block of three sessions a week, with broken rules, pain and waivers. */
  private static PlanView plan(int weeks) {
    CompiledPlan pattern =
        new Winter().session(0, line(HALF_CRIMP, 70), line(FRONT_TWO, 85)).compiled();
    List<PlannedExercise> exercises = pattern.sessions().get(0).exercises();
    Plan.Builder plan =
        Plan.named("long")
            .athlete("tove")
            .from(Winter.MONDAY)
            .rules("club")
            .block(Block.named("base", weeks).content(Winter.content()).build());
    ModelPath block = ModelPath.of("plan", "long").then("for", "tove").then("block", "base");
    List<DatedSession> sessions = new ArrayList<>();
    List<PlanWeek> planWeeks = new ArrayList<>();
    List<LocalDate> climbing = new ArrayList<>();
    Log log = Log.empty("tove");
    for (int week = 1; week <= weeks; week++) {
      LocalDate monday = Winter.MONDAY.plusWeeks(week - 1L);
      ModelPath path = block.then("week", week);
      boolean eased = week > 1;
      for (int day = 0; day < 6; day += 2) {
        sessions.add(session(monday.plusDays(day), week, eased, path, exercises));
      }
      climbing.add(monday.plusDays(6));
      planWeeks.add(
          PlanWeek.builder(week, "base", week, monday, path)
              .eased(eased)
              .timeUnderLoadSeconds(180)
              .loadIndex(180 * 70)
              .build());
      log = log.with(LogEntry.Pain.builder(monday, Finger.RING, 7).side(Side.LEFT).build());
      for (String rule : List.of("sets", "pair", "hard-days-apart")) {
        plan.waive(
            new Plan.Waiver(
                rule,
                Optional.of("base"),
                OptionalInt.of(week),
                Optional.empty(),
                OptionalInt.empty(),
                "watched"));
      }
    }
    Plan built = plan.build();
    Schedule schedule =
        Schedule.builder(built, pattern.athlete())
            .sessions(sessions)
            .weeks(planWeeks)
            .climbing(climbing)
            .build();
    return new PlanView(schedule, LogTimeline.of(built, pattern.athlete(), log));
  }

  private static DatedSession session(
      LocalDate date, int week, boolean eased, ModelPath path, List<PlannedExercise> exercises) {
    return DatedSession.builder(
            date,
            "strength",
            Load.ofKilograms(60),
            path.then("session", "strength").then("date", date.toString()))
        .week(week)
        .block("base")
        .blockWeek(week)
        .minutes(40)
        .hard(true)
        .eased(eased)
        .exercises(exercises)
        .build();
  }

  private static long steps(int weeks) {
    PlanView view = plan(weeks);
    assertTrue(RuleCheck.check(view, List.of(CLUB)).size() > 5);
    return view.evaluation.taken();
  }

  @Test
  void fourTimesTheSessionsTakeFourTimesTheWork() {
    long some = steps(50);
    long more = steps(200);
    assertTrue(some > 50 * 3 * 2, "everything was looked at");
    assertTrue(more <= 4.2 * some, more + " steps for four times " + some);
  }

  @Test
  void whatComparesEachWithAllIsCounted() {
    // the only rule a coach can write that visits everything again for each element
    Rule each =
        rule(
            "each-with-all",
            Scope.EXERCISE,
            EXERCISE
                .get("plan")
                .get("exercises")
                .every(EXERCISE.get("load").atMost(outer(Kind.EXERCISE, 1).get("load"))));
    long[] steps = new long[2];
    for (int i = 0; i < 2; i++) {
      PlanView view = plan(i == 0 ? 40 : 160);
      RuleCheck.check(view, List.of(RuleSet.of("club", each)));
      steps[i] = view.evaluation.taken();
    }
    assertTrue(steps[1] > 8 * steps[0], "the count sees work that grows faster than the plan");
  }
}
