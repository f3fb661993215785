package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.budget.Stage;
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.schedule.ScheduleSize;
import gripwright.wording.Wording;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What goes over the budget of a compile is one finding, and nothing half done is kept. */
class SeasonBudgetTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);

  /** A rule that every exercise breaks, so that there are findings. */
  private static final RuleSet CLUB =
      RuleSet.of(
          "club",
          Rule.warning("few-sets", Scope.EXERCISE)
              .require(Expression.subject(Kind.EXERCISE).get("sets").atMost(Expression.number(1)))
              .message("many sets")
              .build());

  private static Athlete athlete(String name) {
    Athlete ylva = Skarvdal.ylva().build();
    return Athlete.named(name)
        .born(ylva.born())
        .bodyMass(ylva.bodyMass())
        .trained(40)
        .ability(ylva.ability())
        .hand(ylva.hand(Side.LEFT))
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
        .available(DayOfWeek.SATURDAY, Duration.ofMinutes(90))
        .edge(EDGE)
        .added(Load.ofKilograms(1.25), Load.ofKilograms(60))
        .build();
  }

  private static Log tested(String name) {
    return Log.empty(name)
        .with(
            new LogEntry.Tested(
                Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(7), 92.5), Optional.empty()));
  }

  private static Plan.Builder plan(String name, int weeks, String... athletes) {
    Plan.Builder plan =
        Plan.named(name)
            .from(MONDAY)
            .rules("club")
            .block(Block.named("base", weeks).session(SessionPlan.of("s", 2, LINE)).build());
    for (String athlete : athletes) {
      plan.athlete(athlete);
    }
    return plan;
  }

  private static Season season(Plan... plans) {
    return Season.of(
        List.of(plans),
        List.of(athlete("brit"), athlete("tove")),
        List.of(tested("brit"), tested("tove")),
        List.of(CLUB));
  }

  private static Season small() {
    return season(plan("spring", 3, "brit", "tove").build());
  }

  private static CompiledSeason compile(Season season, Budget budget) {
    return season.compile(SeasonOptions.standard().withBudget(budget));
  }

  private static List<Finding> overruns(CompiledSeason season) {
    return season.findings().stream().filter(f -> f.code().startsWith("budget.")).toList();
  }

  private static final Map<Limit, Long> LEAST = new EnumMap<>(Limit.class);

  /** Returns the lowest limit with which the season compiles. */
  private static long least(Limit limit) {
    return LEAST.computeIfAbsent(limit, SeasonBudgetTest::sought);
  }

  private static long sought(Limit limit) {
    long high = 1;
    while (!fits(limit, high)) {
      high *= 2;
    }
    long low = high / 2;
    while (high - low > 1) {
      long middle = (low + high) / 2;
      if (fits(limit, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private static boolean fits(Limit limit, long most) {
    return overruns(compile(small(), Budget.standard().with(limit, most))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = Limit.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"CHARACTERS", "TOKENS", "NESTING", "OPERATORS"})
  void exceedingTheLimitGivesOneFinding(Limit limit) {
    CompiledSeason all = small().compile();
    long least = least(limit);
    assertTrue(least > 1, "something is counted");
    assertEquals(all, compile(small(), Budget.standard().with(limit, least)));
    CompiledSeason less = compile(small(), Budget.standard().with(limit, least - 1));
    List<Finding> overruns = overruns(less);
    assertEquals(1, overruns.size(), overruns.toString());
    Finding finding = overruns.get(0);
    assertEquals("budget." + limit.word(), finding.code());
    assertEquals(least - 1, finding.arguments().get("limit"));
    assertTrue((Long) finding.arguments().get("found") >= least);
    assertFalse(less.usable());
    assertTrue(less.plans().size() < 2);
    for (CompiledPlan kept : less.plans()) {
      assertEquals(all.plan("spring", kept.athlete().name()), kept, "what is kept is whole");
    }
    assertFalse(Wording.english().report(finding).message().isEmpty());
  }

  @Test
  void reportedSizesAreThoseOfThePlan() {
    PlanSize size = PlanSize.of(plan("spring", 3, "brit", "tove").build());
    assertEquals(new PlanSize(3, 2, 2, 10, 12, 2 * (100 + 3 * (10 + 2 * (10 + 40)))), size);
    assertEquals(3, least(Limit.WEEKS));
    assertEquals(2, least(Limit.ATHLETES));
    assertEquals(2, least(Limit.WEEKLY));
    assertEquals(10, least(Limit.EXERCISE));
    assertEquals(12, least(Limit.SESSIONS));
    assertEquals(size.holds(), least(Limit.HOLDS));
  }

  @Test
  void theTypesAllowNoMoreThanTheDefaults() {
    assertEquals(Range.PLAN_WEEKS.high(), Limit.WEEKS.standard());
    assertEquals(Range.ATHLETES.high(), Limit.ATHLETES.standard());
    assertEquals(Range.STEPS.high(), Limit.EXERCISE.standard());
  }

  @Test
  void onlyThePlanThatIsTooLargeIsLeftOut() {
    Season both = season(plan("long", 5, "brit").build(), plan("short", 3, "brit").build());
    CompiledSeason compiled = compile(both, Budget.standard().with(Limit.WEEKS, 4));
    assertEquals(List.of("short"), compiled.plans().stream().map(p -> p.plan().name()).toList());
    assertEquals(
        List.of(ModelPath.of("plan", "long")),
        overruns(compiled).stream().map(Finding::place).toList());
  }

  @ParameterizedTest
  @EnumSource(
      value = Limit.class,
      names = {"WEEKS", "ATHLETES", "WEEKLY", "EXERCISE", "SESSIONS", "HOLDS"})
  void tooLargePlansAreRefusedBeforePlanning(Limit limit) {
    List<Long> weeks = new ArrayList<>();
    compile(
        small(),
        Budget.standard()
            .with(limit, least(limit) - 1)
            .withProgress((stage, done, of) -> weeks.add(done)));
    assertEquals(List.of(), weeks);
  }

  @Test
  void plansFromTheFirstThatExceedsTheBudgetAreLeftOut() {
    Season three =
        season(
            plan("a", 3, "brit").build(),
            plan("b", 4, "brit").build(),
            plan("c", 1, "brit").build());
    CompiledSeason compiled = compile(three, Budget.standard().with(Limit.SESSIONS, 13));
    assertEquals(List.of("a"), compiled.plans().stream().map(p -> p.plan().name()).toList());
    assertEquals(
        List.of(ModelPath.of("plan", "b")),
        overruns(compiled).stream().map(Finding::place).toList());
  }

  @Test
  void completedAthletesAreKeptWhenTheBudgetIsUsedUp() {
    CompiledSeason all = small().compile();
    CompiledSeason some =
        compile(small(), Budget.standard().with(Limit.WORK, least(Limit.WORK) - 1));
    assertEquals(List.of("brit"), some.plans().stream().map(p -> p.athlete().name()).toList());
    assertEquals(all.plan("spring", "brit").sessions(), some.plans().get(0).sessions());
    Finding finding = overruns(some).get(0);
    assertEquals(ModelPath.of("plan", "spring").then("for", "tove"), finding.place());
    assertTrue(finding.arguments().containsKey("rule"));
  }

  @Test
  void waiverIsNotReportedAsUnusedByAPartialResult() {
    Plan waived =
        plan("spring", 3, "brit", "tove")
            .waive(
                new Plan.Waiver(
                    "weekly-rise",
                    Optional.empty(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    OptionalInt.empty(),
                    "watched"))
            .build();
    Season season = season(waived);
    assertTrue(
        season.compile().findings().stream().anyMatch(f -> f.code().equals("plan.waiver-unused")));
    CompiledSeason some =
        compile(season, Budget.standard().with(Limit.WORK, least(Limit.WORK) - 1));
    assertEquals(1, some.plans().size());
    assertTrue(some.findings().stream().noneMatch(f -> f.code().equals("plan.waiver-unused")));
  }

  @Test
  void progressedSetsAreLimited() {
    Plan grows =
        Plan.named("spring")
            .athlete("brit")
            .from(MONDAY)
            .block(
                Block.named("base", 4)
                    .session(SessionPlan.of("s", 2, LINE))
                    .advance(Advance.weekly(new Advance.SetsTo(100, 50)))
                    .build())
            .build();
    Season season =
        Season.of(List.of(grows), List.of(athlete("brit")), List.of(tested("brit")), List.of());
    assertEquals(
        List.of("budget.exercise"),
        overruns(compile(season, Budget.standard().with(Limit.EXERCISE, 100))).stream()
            .map(Finding::code)
            .toList());
    assertEquals(List.of(), overruns(season.compile()));
  }

  /** A season whose first session was done with this many sets. */
  private static Season logged(int sets) {
    Log log =
        tested("brit")
            .with(
                new LogEntry.Trained(
                    MONDAY.plusDays(1),
                    "s",
                    List.of(
                        LogEntry.Done.builder(HOLDS.name(), Setup.of(HALF_CRIMP, EDGE))
                            .sets(sets)
                            .setsPlanned(5)
                            .build()),
                    Optional.empty()));
    return Season.of(
        List.of(plan("spring", 3, "brit").build()),
        List.of(athlete("brit")),
        List.of(log),
        List.of(CLUB));
  }

  @Test
  void loggedSetsAreLimited() {
    assertEquals(
        List.of("budget.exercise"),
        overruns(compile(logged(600), Budget.standard().with(Limit.EXERCISE, 1_000))).stream()
            .map(Finding::code)
            .toList());
    assertEquals(
        List.of(), overruns(compile(logged(500), Budget.standard().with(Limit.EXERCISE, 1_000))));
  }

  @Test
  void unplannedLoggedWorkIsLimited() {
    Season season = logged(600);
    assertEquals(List.of(), overruns(season.compile()));
    List<Long> weeks = new ArrayList<>();
    CompiledSeason stopped =
        compile(
            season,
            Budget.standard()
                .with(Limit.HOLDS, PlanSize.of(plan("spring", 3, "brit").build()).holds())
                .withProgress((stage, done, of) -> weeks.add(done)));
    assertEquals(List.of("budget.holds"), overruns(stopped).stream().map(Finding::code).toList());
    assertEquals(List.of(), weeks, "it stops in the week that goes over");
  }

  @Test
  void storedValuesAreCounted() {
    Meter meter = Budget.standard().meter();
    CompiledSeason compiled =
        new SeasonRun(small(), List.of(plan("spring", 3, "brit", "tove").build()), meter).compile();
    assertEquals(12, meter.taken(Limit.SESSIONS));
    assertEquals(
        compiled.plans().stream().mapToLong(p -> ScheduleSize.of(p.schedule()).holds()).sum(),
        meter.taken(Limit.HOLDS));
    assertTrue(compiled.findings().stream().anyMatch(f -> f.places().size() == 6));
    assertEquals(
        compiled.findings().stream()
            .mapToInt(f -> Limit.A_FINDING + Math.max(1, f.places().size()))
            .sum(),
        meter.taken(Limit.FINDINGS));
  }

  @Test
  void findingsOfPlanningAreCounted() {
    Plan crowded =
        Plan.named("crowded")
            .athlete("brit")
            .from(MONDAY)
            .block(Block.named("base", 4).session(SessionPlan.of("s", 5, LINE)).build())
            .build();
    Season season =
        Season.of(List.of(crowded), List.of(athlete("brit")), List.of(tested("brit")), List.of());
    Meter meter = Budget.standard().meter();
    List<Finding> findings = new SeasonRun(season, List.of(crowded), meter).compile().findings();
    Finding noDay =
        findings.stream().filter(f -> f.code().equals("plan.no-day")).findFirst().orElseThrow();
    assertEquals(4, noDay.places().size());
    assertEquals(
        findings.stream().mapToInt(f -> Limit.A_FINDING + Math.max(1, f.places().size())).sum(),
        meter.taken(Limit.FINDINGS));
  }

  @Test
  void aFlagCancelsMidway() {
    AtomicBoolean cancelled = new AtomicBoolean();
    List<Long> weeks = new ArrayList<>();
    CompiledSeason some =
        compile(
            small(),
            Budget.standard()
                .withCancellation(cancelled::get)
                .withProgress(
                    (stage, done, of) -> {
                      assertEquals(Stage.PLANNING, stage);
                      assertEquals(6, of);
                      weeks.add(done);
                      cancelled.set(done == 5);
                    }));
    assertEquals(List.of(1L, 2L, 3L, 4L, 5L), weeks);
    assertEquals(List.of("budget.cancelled"), overruns(some).stream().map(Finding::code).toList());
    assertEquals(List.of("brit"), some.plans().stream().map(p -> p.athlete().name()).toList());
    assertFalse(some.usable());
  }

  @Test
  void anInterruptCancelsMidwayAndTheThreadStaysInterrupted() {
    CompiledSeason some =
        compile(
            small(),
            Budget.standard()
                .withProgress(
                    (stage, done, of) -> {
                      if (done == 4) {
                        Thread.currentThread().interrupt();
                      }
                    }));
    assertTrue(Thread.interrupted());
    assertEquals(List.of("budget.cancelled"), overruns(some).stream().map(Finding::code).toList());
    assertEquals(1, some.plans().size());
  }

  @Test
  void deadlineFollowsTheClockOfTheHost() {
    AtomicLong now = new AtomicLong();
    Budget budget =
        Budget.standard()
            .withDeadline(Duration.ofSeconds(4), now::get)
            .withProgress((stage, done, of) -> now.addAndGet(1_000_000_000));
    CompiledSeason some = compile(small(), budget);
    assertEquals(List.of("budget.time"), overruns(some).stream().map(Finding::code).toList());
    assertEquals(Duration.ofSeconds(4), overruns(some).get(0).arguments().get("limit"));
    assertEquals(1, some.plans().size());
    assertEquals(
        List.of(),
        overruns(compile(small(), budget.withDeadline(Duration.ofSeconds(6), now::get))));
  }

  @Test
  void cancelledBeforeItsStartACompileDoesNothing() {
    CompiledSeason none = compile(small(), Budget.standard().withCancellation(() -> true));
    assertEquals(List.of(), none.plans());
    assertEquals(List.of("budget.cancelled"), none.findings().stream().map(Finding::code).toList());
  }
}
