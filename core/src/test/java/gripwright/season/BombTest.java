package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.protocol.Term;
import gripwright.quantity.Unit;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Plans, rules and waivers that are made to cost time or memory, built in Java. */
class BombTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
  private static final Expression EXERCISE = Expression.subject(Kind.EXERCISE);
  private static final Expression ALL = EXERCISE.get("plan").get("exercises");

  private static Expression load(int depth) {
    return Expression.outer(Kind.EXERCISE, depth).get("load");
  }

  /** A rule that visits all exercises for all exercises of each exercise. */
  private static RuleSet nested(Expression where) {
    return RuleSet.of(
        "club",
        Rule.warning("all-with-all", Scope.EXERCISE)
            .require(ALL.every(ALL.countWhere(where).atLeast(Expression.number(1))))
            .message("all are compared with all")
            .build());
  }

  private static Plan.Builder plan(int weeks) {
    return Plan.named("long")
        .athlete("ylva")
        .from(MONDAY)
        .rules("club")
        .block(Block.named("base", weeks).session(SessionPlan.of("s", 2, LINE)).build());
  }

  private static Season season(Plan plan, RuleSet rules) {
    return Season.of(
        List.of(plan),
        List.of(Skarvdal.ylva().build()),
        List.of(Skarvdal.tested()),
        List.of(rules));
  }

  private static long work(int weeks, RuleSet rules) {
    Season season = season(plan(weeks).build(), rules);
    Meter meter = Budget.standard().meter();
    CompiledSeason compiled = new SeasonRun(season, List.of(plan(weeks).build()), meter).compile();
    assertEquals(1, compiled.plans().size());
    return meter.taken(Limit.WORK);
  }

  @Test
  void ruleThatComparesAllWithAllIsStoppedByName() {
    RuleSet each = nested(load(0).atMost(load(1)).and(load(0).atMost(load(2))));
    long some = work(20, each);
    assertTrue(work(40, each) > 6 * some, "the work grows with the third power of the weeks");
    CompiledSeason stopped =
        season(plan(52).build(), each)
            .compile(
                SeasonOptions.standard().withBudget(Budget.standard().with(Limit.WORK, 100_000)));
    Finding finding = stopped.findings().get(stopped.findings().size() - 1);
    assertEquals("budget.work", finding.code());
    assertEquals("all-with-all", finding.arguments().get("rule"));
    assertTrue((Long) finding.arguments().get("found") < 101_000, "it stops where it goes over");
    assertEquals(List.of(), stopped.plans());
  }

  @Test
  void expressionOfTheOutermostSubjectIsEvaluatedOnce() {
    RuleSet outermost = nested(load(0).atMost(load(2).times(Expression.number(2))));
    long some = work(10, outermost);
    long more = work(20, outermost);
    assertTrue(more < 5 * some, more + " for twice the weeks of " + some);
    RuleSet none =
        nested(
            load(0)
                .atMost(
                    Expression.amount(1e6, Unit.KILOGRAM)
                        .times(Expression.amount(1e6, Unit.SECOND))));
    assertTrue(work(20, none) < 3 * work(10, none));
  }

  @Test
  void squadForTenYearsIsRefusedBeforePlanning() {
    List<Athlete> athletes = new ArrayList<>();
    Plan.Builder plan = Plan.named("squad").from(MONDAY);
    Athlete ylva = Skarvdal.ylva().build();
    for (int i = 0; i < 109; i++) {
      plan.athlete("a" + i);
      athletes.add(
          Athlete.named("a" + i)
              .born(ylva.born())
              .bodyMass(ylva.bodyMass())
              .trained(40)
              .ability(ylva.ability())
              .hand(ylva.left())
              .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
              .edge(EDGE)
              .build());
    }
    Block.Builder block = Block.named("base", 520);
    for (int i = 0; i < 7; i++) {
      block.session(SessionPlan.of("s" + i, 1, LINE));
    }
    Season season =
        Season.of(List.of(plan.block(block.build()).build()), athletes, List.of(), List.of());
    Meter meter = Budget.standard().meter();
    CompiledSeason compiled = new SeasonRun(season, List.of(plan.build()), meter).compile();
    assertEquals(List.of(), compiled.plans());
    assertEquals(
        List.of("budget.sessions"), compiled.findings().stream().map(Finding::code).toList());
    for (Limit limit : Limit.values()) {
      assertEquals(0, meter.taken(limit), limit.toString());
    }
  }

  private static Plan waived(int waivers, int weeks) {
    Plan.Builder plan = plan(weeks);
    for (int i = 0; i < waivers; i++) {
      plan.waive(
          new Plan.Waiver(
              "many",
              Optional.of("base"),
              OptionalInt.empty(),
              Optional.empty(),
              OptionalInt.empty(),
              "reason " + i));
    }
    return plan.build();
  }

  private static long stepsWithWaivers(int waivers, int weeks) {
    RuleSet many =
        RuleSet.of(
            "club",
            Rule.warning("many", Scope.EXERCISE)
                .require(EXERCISE.get("sets").atMost(Expression.number(1)))
                .message("many sets")
                .build());
    Season season = season(waived(waivers, weeks), many);
    CompiledSeason compiled = Work.atMost(1_000_000_000, season::compile);
    assertTrue(compiled.findings().stream().anyMatch(f -> f.waivedBecause().isPresent()));
    return Work.taken();
  }

  @Test
  @CountedWork
  void costOfWaiversDoesNotGrowWithCoveredPlaces() {
    stepsWithWaivers(1, 30); // loads classes, which takes memory
    long without = stepsWithWaivers(1, 30);
    long some = stepsWithWaivers(2_500, 30) - without;
    long more = stepsWithWaivers(10_000, 30) - without;
    assertTrue(more < 5 * some, more + " for four times " + some);
    assertTrue(more < 10_000 * 40L, more + " steps for 10,000 waivers");
  }

  @Test
  @CountedWork
  void longSchemesAreMeasuredWithoutWritingThemOut() {
    List<Scheme.Step> steps = List.of(new Scheme.Hold(Duration.ofSeconds(3), Level.ofMax(50)));
    for (int depth = 0; depth < 4; depth++) {
      steps = List.of(new Scheme.Repeat(1_000, Duration.ofSeconds(1), steps));
    }
    Scheme endless = new Scheme(steps);
    List<Object> measured =
        Work.atMost(
            10_000,
            () ->
                List.of(
                    endless.size(),
                    endless.duration().toDays(),
                    endless.timeUnderLoad().toDays(),
                    endless.levels(),
                    endless.holdTime().orElseThrow(),
                    endless.repetitionsPerSet()));
    assertEquals(
        List.of(
            Scheme.ENDLESS,
            46_296_296L,
            34_722_222L,
            List.of(Level.ofMax(50)),
            Duration.ofSeconds(3),
            1_000_000_000),
        measured);
  }

  @Test
  void aProtocolHasTheSizeOfItsScheme() {
    Protocol protocol =
        Protocol.named("nested")
            .given("inner", 4)
            .step(
                new Protocol.Part.Repeat(
                    Term.of(3),
                    Term.of(Duration.ofSeconds(5)),
                    List.of(
                        new Protocol.Part.Repeat(
                            Term.given("inner"),
                            Term.of(Duration.ofSeconds(2)),
                            List.of(
                                new Protocol.Part.Hold(
                                    Term.of(Duration.ofSeconds(7)), Term.of(Level.ofMax(50))))))))
            .build();
    assertEquals(3 * (4 * 2 + 1), protocol.size(Map.of()));
    assertEquals(protocol.bind(Map.of()).size(), protocol.size(Map.of()));
    assertEquals(3 * (6 * 2 + 1), protocol.size(Map.of("inner", Argument.of(6))));
  }
}
