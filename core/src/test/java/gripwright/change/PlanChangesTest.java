package gripwright.change;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static gripwright.planning.Skarvdal.SERIES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.change.SessionChange.Measure;
import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.WrittenText;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.GeneratedSeason;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Numbers;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Changes between two compiled plans, one by one. */
class PlanChangesTest {

  private static final Exercise HOLD = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
  private static final Exercise SERIAL = Exercise.of(SERIES, DRAG, EDGE);

  private static Block.Builder base(int weeks, Exercise... exercises) {
    return Block.named("base", weeks).session(SessionPlan.of("strength", 2, exercises));
  }

  private static Block.Builder peak(Exercise... exercises) {
    return Block.named("peak", 1).session(SessionPlan.of("power", 1, exercises));
  }

  private static List<PlanChange> between(CompiledPlan before, CompiledPlan after) {
    return PlanChanges.between(before.schedule(), after.schedule());
  }

  private static CompiledPlan compile(Plan.Builder plan) {
    return Planner.compile(plan.build(), Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
  }

  private static Plan.Builder plan(LocalDate from, Block.Builder... blocks) {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(from);
    for (Block.Builder block : blocks) {
      plan.block(block.build());
    }
    return plan;
  }

  private static List<PlanChange> between(Plan.Builder before, Plan.Builder after) {
    return between(compile(before), compile(after));
  }

  @Test
  void anotherLevelIsAnotherLoadInEverySession() {
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(1, HOLD)),
            plan(MONDAY, base(1, HOLD.with("level", Level.ofMax(70)))));
    assertEquals(2, changes.size(), changes.toString());
    for (PlanChange change : changes) {
      SessionChange.ExerciseChanged load =
          assertInstanceOf(SessionChange.ExerciseChanged.class, change);
      assertEquals(Measure.LOAD, load.measure());
      assertTrue(load.after().totalLoad().compareTo(load.before().totalLoad()) < 0);
    }
  }

  @Test
  void moreSetsAreReportedAsSets() {
    List<PlanChange> changes =
        between(plan(MONDAY, base(1, HOLD)), plan(MONDAY, base(1, HOLD.with("sets", 6))));
    assertEquals(
        List.of(Measure.SETS, Measure.SETS),
        changes.stream().map(c -> ((SessionChange.ExerciseChanged) c).measure()).toList());
  }

  @Test
  void aPlanThatBeginsLaterIsOneMoveForAllSessions() {
    List<PlanChange> changes =
        between(plan(MONDAY, base(2, HOLD)), plan(MONDAY.plusWeeks(2), base(2, HOLD)));
    assertEquals(new PlanChange.PlanMoved(MONDAY, MONDAY.plusWeeks(2)), changes.get(0));
    assertTrue(changes.stream().noneMatch(SessionChange.SessionMoved.class::isInstance));
    assertTrue(
        changes.stream()
            .skip(1)
            .allMatch(
                c -> c instanceof SessionChange.ExerciseChanged e && e.measure() == Measure.LOAD),
        "only loads, which rest on tests that are older now");
  }

  @Test
  void aLongerBlockMovesTheNextAndAddsItsSessions() {
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(1, HOLD), peak(SERIAL)), plan(MONDAY, base(2, HOLD), peak(SERIAL)));
    assertTrue(
        changes.contains(new BlockChange.BlockResized("base", MONDAY, 1, 2)), changes.toString());
    assertTrue(
        changes.contains(new BlockChange.BlockMoved("peak", 7, MONDAY.plusWeeks(2))),
        changes.toString());
    assertEquals(2, changes.stream().filter(SessionChange.SessionAdded.class::isInstance).count());
    assertEquals(4, changes.size(), changes.toString());
  }

  @Test
  void removedAndAddedBlocksAreNamed() {
    List<PlanChange> changes =
        between(plan(MONDAY, base(1, HOLD), peak(SERIAL)), plan(MONDAY, base(1, HOLD)));
    assertTrue(
        changes.contains(new BlockChange.BlockDropped("peak", MONDAY.plusWeeks(1), 1)),
        changes.toString());
    assertTrue(
        between(plan(MONDAY, base(1, HOLD)), plan(MONDAY, base(1, HOLD), peak(SERIAL)))
            .contains(new BlockChange.BlockAdded("peak", MONDAY.plusWeeks(1), 1)));
  }

  @Test
  void boundsAndWarmUpsAreReported() {
    Protocol plain =
        Protocol.named("row")
            .step(
                new Protocol.Part.Repeat(
                    Term.of(3),
                    Term.of(Duration.ofMinutes(2)),
                    List.of(
                        new Protocol.Part.Hold(
                            Term.of(Duration.ofSeconds(5)), Term.of(Level.ofMax(30))))))
            .build();
    Protocol bound =
        plain.toBuilder()
            .steps(
                List.of(
                    new Protocol.Part.Repeat(
                        Term.of(3),
                        Term.of(Duration.ofMinutes(2)),
                        ((Protocol.Part.Repeat) plain.steps().get(0)).steps(),
                        true)))
            .build();
    Exercise row = Exercise.of(plain, DRAG, EDGE);
    assertEquals(
        List.of(Measure.BOUND, Measure.BOUND),
        measures(base(1, HOLD, row), base(1, HOLD, Exercise.of(bound, DRAG, EDGE))));
    assertEquals(
        List.of(Measure.WARM_UP, Measure.WARM_UP),
        measures(base(1, HOLD, row), base(1, HOLD, row.asWarmUp())));
    assertEquals(List.of(), measures(base(1, HOLD, row), base(1, HOLD, row.note("easily"))));
  }

  private static List<Measure> measures(Block.Builder before, Block.Builder after) {
    return between(plan(MONDAY, before), plan(MONDAY, after)).stream()
        .map(SessionChange.ExerciseChanged.class::cast)
        .map(SessionChange.ExerciseChanged::measure)
        .toList();
  }

  @Test
  void aNewExerciseIsOneChangeASession() {
    List<PlanChange> changes =
        between(plan(MONDAY, base(1, HOLD)), plan(MONDAY, base(1, HOLD, SERIAL)));
    assertEquals(2, changes.size(), changes.toString());
    assertTrue(changes.stream().allMatch(SessionChange.ExerciseAdded.class::isInstance));
  }

  @Test
  void exercisesThatChangePlacesAreReportedAsOrder() {
    List<PlanChange> changes =
        between(plan(MONDAY, base(1, HOLD, SERIAL)), plan(MONDAY, base(1, SERIAL, HOLD)));
    assertTrue(
        changes.stream()
            .allMatch(
                c -> c instanceof SessionChange.ExerciseChanged e && e.measure() == Measure.ORDER),
        changes.toString());
    assertEquals(4, changes.size());
  }

  @Test
  void anotherDayIsAMove() {
    CompiledPlan before = compile(plan(MONDAY, peak(HOLD)));
    CompiledPlan after =
        Planner.compile(
            plan(MONDAY, peak(HOLD)).build(),
            Skarvdal.ylva()
                .away(
                    new Athlete.Absence(
                        before.sessions().get(0).date(),
                        before.sessions().get(0).date(),
                        Optional.empty()))
                .build(),
            Skarvdal.tested(),
            List.of());
    SessionChange.SessionMoved moved =
        assertInstanceOf(SessionChange.SessionMoved.class, between(before, after).get(0));
    assertEquals(before.sessions().get(0).date(), moved.before().date());
    assertEquals(DayOfWeek.THURSDAY, moved.after().date().getDayOfWeek());
  }

  @Test
  void anEasedWeekAndAWaiverAreReported() {
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(3, HOLD))
                .waive(
                    new Plan.Waiver(
                        "level-near-limit",
                        Optional.empty(),
                        OptionalInt.empty(),
                        Optional.empty(),
                        OptionalInt.empty(),
                        "agreed with her")),
            plan(MONDAY, base(3, HOLD).ease(3, 0.6)));
    assertTrue(
        changes.stream()
            .anyMatch(c -> c instanceof BlockChange.WeekEased w && w.week().number() == 3));
    assertTrue(changes.stream().anyMatch(PlanChange.WaiverDropped.class::isInstance));
  }

  @Test
  void aGripThatBeginsLaterIsReported() {
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(1, HOLD, SERIAL), peak(SERIAL)),
            plan(MONDAY, base(1, HOLD), peak(SERIAL)));
    assertTrue(
        changes.stream()
            .anyMatch(c -> c instanceof PlanChange.GripStarts g && g.grip().equals(DRAG)),
        changes.toString());
  }

  @Test
  void testsAndTheGoalAreCompared() {
    PlannedTest tests =
        PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 2);
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(2, HOLD)),
            plan(MONDAY, base(2, HOLD))
                .retest(tests)
                .towards(new Plan.Goal(MONDAY.plusWeeks(6), Optional.of("a trip"))));
    assertTrue(
        changes.stream()
            .anyMatch(c -> c instanceof PlanChange.RetestChanged r && r.before().isEmpty()));
    assertTrue(changes.stream().anyMatch(PlanChange.GoalChanged.class::isInstance));
  }

  @Test
  void aLevelThatTheEquipmentCantBuildIsReportedWithoutALoad() {
    List<PlanChange> changes =
        between(
            plan(MONDAY, peak(HOLD.with("level", Level.ofMax(70)))),
            plan(MONDAY, peak(HOLD.with("level", new Level.OfMax(0.7001)))));
    assertEquals(
        List.of(Measure.LEVEL),
        changes.stream().map(c -> ((SessionChange.ExerciseChanged) c).measure()).toList());
  }

  @Test
  void aChangeThatShowsOnNoDayIsReportedOnce() {
    Advance later =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2),
                new Advance.WhenLogged(true, OptionalDouble.of(8), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    List<PlanChange> changes =
        between(
            plan(MONDAY, base(1, HOLD)),
            plan(MONDAY, base(1, HOLD).advance(later))
                .title("spring at the wall")
                .weeklyRise(0.1)
                .demand(HALF_CRIMP, 1));
    assertEquals(
        List.of(
            new PlanChange.PartChanged(
                MONDAY,
                PlanChange.Part.TITLE,
                Optional.empty(),
                Optional.of(new WrittenText("spring at the wall"))),
            new PlanChange.PartChanged(
                MONDAY,
                PlanChange.Part.DEMAND,
                Optional.empty(),
                Optional.of(
                    Listing.of(
                        Listing.Style.COMMAS,
                        List.of(
                            new Clause(
                                "diff.share",
                                Map.of(
                                    "grip", "half-crimp", "percent", BigDecimal.valueOf(100))))))),
            new PlanChange.PartChanged(
                MONDAY,
                PlanChange.Part.WEEKLY_RISE,
                Optional.empty(),
                Optional.of(Clause.of("diff.percent", "percent", BigDecimal.valueOf(10)))),
            new BlockChange.BlockRewritten("base", MONDAY)),
        changes);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aPlanDoesNotDifferFromItself(@ForAll GeneratedSeason season) {
    assertEquals(List.of(), between(season.compile(), season.compile()));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void plansOfTwoSeasonsDifferUnlessTheyTrainTheSame(
      @ForAll GeneratedSeason season, @ForAll GeneratedSeason other) {
    CompiledPlan one = season.compile();
    CompiledPlan two =
        Planner.compile(season.plan(), season.athlete(), Log.empty("ylva"), List.of());
    boolean same = trained(one).equals(trained(two)) && tests(one).equals(tests(two));
    assertEquals(same, between(one, two).isEmpty());
    CompiledPlan third = other.compile();
    List<PlanChange> there = between(one, third);
    List<PlanChange> back = between(third, one);
    assertEquals(reported(there, false), reported(back, true));
  }

  /**
   * Kinds of change with their numbers; an addition in the other direction is a removal in this
   * one.
   */
  private static SortedMap<String, Long> reported(List<PlanChange> changes, boolean back) {
    SortedMap<String, Long> reported = new TreeMap<>();
    for (PlanChange change : changes) {
      String kind = change.getClass().getSimpleName();
      if (change instanceof SessionChange.ExerciseChanged c) {
        kind += c.measure();
      }
      if (back) {
        kind =
            kind.endsWith("Added")
                ? kind.replace("Added", "Dropped")
                : kind.replace("Dropped", "Added");
      }
      reported.merge(kind, 1L, Long::sum);
    }
    return reported;
  }

  private static List<Object> tests(CompiledPlan plan) {
    return plan.retests().stream()
        .<Object>map(r -> List.of(r.date(), r.setups(), r.hold()))
        .toList();
  }

  /** Differences below a tenth of a gram are rounding noise. */
  private static List<Object> course(PlannedExercise exercise) {
    return exercise.steps().stream()
        .<Object>map(
            s -> List.of(s.seconds(), s.load().map(l -> Numbers.rounded(l.kilograms(), 4))))
        .toList();
  }

  private static List<Object> trained(CompiledPlan plan) {
    return plan.sessions().stream()
        .<Object>map(
            s ->
                List.of(
                    s.date(),
                    s.name(),
                    s.minutes(),
                    s.exercises().stream()
                        .map(
                            e ->
                                List.of(
                                    e.protocol(), e.setup(), e.steps(), e.percentOfMax(), e.hard()))
                        .toList()))
        .toList();
  }
}
