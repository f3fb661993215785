package gripwright.planning.load;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Derivation;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.strength.StrengthTest;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** How a level becomes a load that can be built, step by step, and what counts as hard. */
class PrescriptionTest {

  private static Exercise line(Level level) {
    return Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", level);
  }

  private static Exercise line(Level level, int seconds) {
    return line(level).with("work", Duration.ofSeconds(seconds));
  }

  private static CompiledPlan compile(
      Athlete athlete, Log log, int weeks, UnaryOperator<Block.Builder> more, Exercise line) {
    Block block =
        more.apply(Block.named("base", weeks).session(SessionPlan.of("strength", 1, line))).build();
    return Planner.compile(
        Plan.named("spring").athlete("ylva").from(MONDAY).block(block).build(),
        athlete,
        log,
        List.of());
  }

  private static CompiledPlan compile(Exercise line) {
    return compile(Skarvdal.ylva().build(), Skarvdal.tested(), 1, b -> b, line);
  }

  private static PlannedExercise exercise(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).get(0).exercises().get(0);
  }

  private static PlannedExercise first(Exercise line) {
    return exercise(compile(line), 1);
  }

  private static Derivation link(PlannedExercise exercise, String step) {
    return exercise.why().stream()
        .filter(w -> Words.step(w).equals(step))
        .findFirst()
        .orElseThrow();
  }

  private static double maximum(PlannedExercise exercise) {
    return exercise.maximum().orElseThrow().used().kilograms();
  }

  private static double kilograms(PlannedExercise exercise, String step) {
    assertEquals("kg", link(exercise, step).unit());
    return link(exercise, step).value();
  }

  @Test
  void aShareOfTheMaximumIsTakenOfItsLowerBound() {
    PlannedExercise exercise = first(line(Level.ofMax(84)));
    assertEquals(84, link(exercise, "level").value(), 1e-9);
    assertEquals("% max", Words.unit(link(exercise, "level")));
    assertEquals(0.84 * maximum(exercise), kilograms(exercise, "load wanted"), 1e-9);
    assertEquals(60, kilograms(exercise, "body mass"));
    double total = exercise.totalLoad().kilograms();
    assertEquals(total - 60, kilograms(exercise, "added"), 1e-9);
    assertEquals(total, kilograms(exercise, "total load"), 1e-9);
    assertEquals(84, exercise.percentOfMax().orElseThrow(), 1e-9);
  }

  @Test
  void aTotalLoadAndOneAgainstBodyMassAreTakenAsWritten() {
    PlannedExercise total = first(line(Level.total(Load.ofKilograms(50))));
    assertEquals(50, kilograms(total, "level"));
    assertEquals(10, kilograms(total, "taken off"));
    PlannedExercise body = first(line(Level.bodyMassPlus(Load.ofKilograms(5))));
    assertEquals(5, kilograms(body, "level"));
    assertEquals(65, kilograms(body, "load wanted"));
    assertEquals(5, kilograms(body, "added"));
    PlannedExercise bare = first(line(Level.total(Load.ofKilograms(60))));
    assertEquals(0, kilograms(bare, "added"), "nothing is taken off");
  }

  @Test
  void aReserveAndAnEffortAreReportedAsTheTimeThatCouldBeHeld() {
    PlannedExercise reserve = first(line(Level.reserve(Duration.ofMillis(3500))));
    assertEquals(13.5, link(reserve, "level").value(), 1e-9);
    assertEquals("s", Words.unit(link(reserve, "level")));
    PlannedExercise effort = first(line(Level.effort(8)));
    assertEquals(12.5, link(effort, "level").value(), 1e-9);
    assertTrue(kilograms(effort, "load wanted") > kilograms(reserve, "load wanted"));
  }

  private static Finding finding(CompiledPlan plan, String code) {
    return plan.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void aTimeBeyondTheCurveIsReportedWithTheHoldAndWhatItWouldNeed() {
    Finding range =
        finding(compile(line(Level.reserve(Duration.ofMinutes(10)), 12)), "plan.hold-range");
    assertEquals("12 s", range.arguments().get("hold"));
    assertEquals("612 s", range.arguments().get("needed"));
  }

  @Test
  void stepsInKilogramsAreAddedToTheLevel() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            2,
            b -> b.advance(Advance.weekly(new Advance.LoadBy(Load.ofKilograms(2.5)))),
            line(Level.ofMax(80)));
    PlannedExercise second = exercise(plan, 2);
    assertEquals(0.8 * maximum(second) + 2.5, kilograms(second, "load wanted"), 1e-9);
    assertEquals(80 + 250 / maximum(second), second.percentOfMax().orElseThrow(), 1e-9);
  }

  @Test
  void anIntroducedGripIsReportedWhereItStandsOnItsWay() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            3,
            b -> b.introduce(HALF_CRIMP, 0.5, 3),
            line(Level.ofMax(80)));
    Derivation half = link(exercise(plan, 2), "introduce");
    assertEquals(65, half.value(), 1e-9);
    assertEquals("% max", half.unit());
    assertEquals("from 50 % max towards the planned level", Words.say(half));
    assertEquals(
        0.65 * maximum(exercise(plan, 2)), kilograms(exercise(plan, 2), "load wanted"), 1e-9);
  }

  @Test
  void aLevelAboveTheMaximumIsReportedAndCutToIt() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            2,
            b -> b.advance(Advance.weekly(Advance.loadByPercent(2))),
            line(Level.ofMax(100)));
    Finding over = finding(plan, "plan.level-over-max");
    assertEquals("102 %", over.arguments().get("percent"));
    PlannedExercise second = exercise(plan, 2);
    assertEquals(maximum(second), kilograms(second, "load wanted"), 1e-9);
    assertEquals(
        Load.ofKilograms(maximum(second)).toString(),
        String.valueOf(over.arguments().get("maximum")));
    assertEquals(1, over.places().size(), "the first week is at the maximum");
  }

  private static Athlete.Builder unassisted() {
    return Athlete.named("ylva")
        .born(LocalDate.of(1996, 5, 20))
        .bodyMass(Load.ofKilograms(60))
        .trained(40)
        .ability(Skarvdal.ylva().build().ability())
        .hand(Skarvdal.ylva().build().left())
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
        .edge(EDGE);
  }

  @Test
  void aLoadThatCannotBeBuiltIsReportedWithTheLeastThatCan() {
    Finding assisted =
        finding(compile(line(Level.total(Load.ofKilograms(15)))), "plan.load-too-small");
    assertEquals("15 kg", String.valueOf(assisted.arguments().get("wanted")));
    assertEquals("20 kg", String.valueOf(assisted.arguments().get("least")));
    Finding bare =
        finding(
            compile(
                unassisted().build(),
                Skarvdal.tested(),
                1,
                b -> b,
                line(Level.total(Load.ofKilograms(50)))),
            "plan.load-too-small");
    assertEquals("60 kg", String.valueOf(bare.arguments().get("least")), "body mass");
  }

  private static Exercise lifted(Level level) {
    return Exercise.builder(HOLDS, new Exercise.On(HALF_CRIMP), EDGE)
        .with(Map.of("level", Argument.of(level)))
        .hands(Hands.LEFT)
        .lifting(true)
        .build();
  }

  @Test
  void bodyMassPlaysNoPartInALift() {
    PlannedExercise lift = first(lifted(Level.total(Load.ofKilograms(20))));
    assertEquals(0, lift.bodyMass().kilograms());
    assertEquals(20, kilograms(lift, "added"), 1e-9);
    assertTrue(lift.why().stream().noneMatch(w -> Words.step(w).equals("body mass")));
    Finding none =
        finding(compile(lifted(Level.total(Load.ofKilograms(0.5)))), "plan.load-too-small");
    assertEquals("1.25 kg", String.valueOf(none.arguments().get("least")), "the smallest plate");
  }

  @Test
  void withoutWeightsNothingIsLifted() {
    Finding finding =
        finding(
            compile(
                unassisted().build(),
                Skarvdal.tested(),
                1,
                b -> b,
                lifted(Level.total(Load.ofKilograms(20)))),
            "plan.nothing-to-lift");
    assertTrue(finding.arguments().containsKey("setup"), finding.toString());
  }

  @Test
  void fromEightyPerCentOnAHoldIsHard() {
    assertEquals(true, first(line(Level.ofMax(80))).hard());
    assertEquals(false, first(line(Level.ofMax(79))).hard());
  }

  @Test
  void aLongHoldIsHardWhereLittleTimeIsLeft() {
    assertEquals(true, first(line(Level.ofMax(70), 45)).hard());
    assertEquals(false, first(line(Level.ofMax(50), 12)).hard());
  }

  @Test
  void anEffortFromEightOnAndAReserveUpToThreeSecondsAreHard() {
    // So long that its load is far below 80 % and the best estimate leaves seconds.
    assertEquals(true, first(line(Level.effort(8), 120)).hard());
    assertEquals(false, first(line(Level.effort(7.9), 120)).hard());
    assertEquals(true, first(line(Level.reserve(Duration.ofSeconds(3)), 120)).hard());
    assertEquals(false, first(line(Level.reserve(Duration.ofSeconds(30)), 120)).hard());
  }

  @Test
  void anEdgeThatIsNotThereIsReportedWithThoseThatAre() {
    Finding missing =
        finding(
            compile(Exercise.of(HOLDS, HALF_CRIMP, Length.ofMillimetres(12))), "plan.edge-missing");
    assertEquals("12 mm", String.valueOf(missing.arguments().get("edge")));
    assertEquals("20 mm, 15 mm", missing.arguments().get("owned"));
  }

  private static Log with(StrengthTest.Result result, LocalDate day) {
    return Skarvdal.tested()
        .with(
            new LogEntry.Tested(
                new StrengthTest(day, Setup.of(HALF_CRIMP, EDGE), result), Optional.empty()));
  }

  @Test
  void aTestIsReportedWithItsLoadItsTimeAndItsWeight() {
    PlannedExercise exercise = first(line(Level.ofMax(80)));
    Derivation weight = link(exercise, "test's share");
    assertEquals("%", weight.unit());
    assertEquals("92.5 kg for 7 s, half-crimp edge 20 mm on 2027-02-22", Words.say(weight));
    assertEquals(
        "80th percentile of the estimate", Words.say(link(exercise, "maximum, upper bound")));
    assertEquals(
        exercise.maximum().orElseThrow().high().kilograms(),
        kilograms(exercise, "maximum, upper bound"));
    assertEquals(maximum(exercise), kilograms(exercise, "maximum, lower bound"));
  }

  @Test
  void aFailureCountsForNinetyDaysOnItsOwnSetup() {
    StrengthTest.Result failure =
        new StrengthTest.ToFailure(Load.ofKilograms(55), Duration.ofSeconds(13));
    Exercise reserve = line(Level.reserve(Duration.ofSeconds(3)));
    // The session lies on Tuesday 2 March.
    assertEquals(
        55,
        kilograms(
            exercise(
                compile(
                    Skarvdal.ylva().build(),
                    with(failure, MONDAY.minusDays(88)),
                    1,
                    b -> b,
                    reserve),
                1),
            "failed before"));
    assertTrue(
        exercise(
                compile(
                    Skarvdal.ylva().build(),
                    with(failure, MONDAY.minusDays(89)),
                    1,
                    b -> b,
                    reserve),
                1)
            .why()
            .stream()
            .noneMatch(w -> Words.step(w).equals("failed before")));
  }

  /** Returns the chain of a hold after more tests of the same setup, each a week apart. */
  private static List<String> basis(int tests) {
    Log log = Log.empty("ylva");
    for (int i = 1; i <= tests; i++) {
      log =
          log.with(
              new LogEntry.Tested(
                  Skarvdal.test(HALF_CRIMP, MONDAY.minusWeeks(i), 90), Optional.empty()));
    }
    PlannedExercise exercise =
        exercise(compile(Skarvdal.ylva().build(), log, 1, b -> b, line(Level.ofMax(80))), 1);
    return exercise.why().stream()
        .filter(
            w ->
                Words.step(w).equals("test's share")
                    || Words.step(w).equals("maximum, best estimate"))
        .map(
            w -> Words.step(w).equals("test's share") ? Math.round(w.value()) + " %" : Words.say(w))
        .toList();
  }

  @Test
  void ofManyTestsFourAreNamedAndTheOthersCounted() {
    assertEquals(List.of("100 %", "held for 7 s, from this test"), basis(1));
    List<String> two = basis(2);
    assertEquals(3, two.size(), two.toString());
    assertEquals("held for 7 s, from these tests", two.get(2));
    List<String> six = basis(6);
    assertEquals(5, six.size(), six.toString());
    assertEquals("held for 7 s, from these tests and 2 with smaller shares", six.get(4));
  }

  @Test
  void aMaximumOfAnotherGripSaysSo() {
    PlannedExercise modelled = first(Exercise.of(HOLDS, Skarvdal.FRONT_THREE, EDGE));
    assertTrue(
        Words.say(link(modelled, "maximum, best estimate"))
            .startsWith("held for 7 s, modelled from"));
  }

  @Test
  void aFailureOfAnotherSetupOrOfLongerShowsNothing() {
    Exercise reserve = line(Level.reserve(Duration.ofSeconds(3)));
    StrengthTest.Result longer =
        new StrengthTest.ToFailure(Load.ofKilograms(55), Duration.ofMillis(13_100));
    StrengthTest.Result sooner =
        new StrengthTest.ToFailure(Load.ofKilograms(55), Duration.ofSeconds(13));
    LogEntry onDrag =
        new LogEntry.Tested(
            new StrengthTest(MONDAY.minusDays(7), Setup.of(Skarvdal.DRAG, EDGE), sooner),
            Optional.empty());
    for (Log log :
        List.of(
            with(longer, MONDAY.minusDays(7)),
            Skarvdal.tested().with(onDrag),
            with(sooner, MONDAY.plusDays(20)))) {
      PlannedExercise exercise =
          exercise(compile(Skarvdal.ylva().build(), log, 1, b -> b, reserve), 1);
      assertTrue(exercise.why().stream().noneMatch(w -> Words.step(w).equals("failed before")));
    }
  }

  private static CompiledPlan adding(double step, double limit, Level level) {
    Athlete athlete =
        Skarvdal.ylva().added(Load.ofKilograms(step), Load.ofKilograms(limit)).build();
    return compile(athlete, Skarvdal.tested(), 1, b -> b, line(level));
  }

  private static List<Finding> outOfReach(CompiledPlan plan) {
    return plan.findings().stream().filter(f -> f.code().equals("plan.load-out-of-reach")).toList();
  }

  @Test
  void aLoadWellBeyondTheEquipmentIsReportedWithTheShareThatIsBuilt() {
    double maximum = maximum(first(line(Level.ofMax(84))));
    double reached = 70 / maximum;
    CompiledPlan far = adding(1, 10, new Level.OfMax(reached + 0.0501));
    PlannedExercise built = exercise(far, 1);
    assertEquals(reached * 100, built.builtPercentOfMax().orElseThrow(), 1e-9);
    assertEquals(reached * 100 + 5.01, built.percentOfMax().orElseThrow(), 1e-9, "as planned");
    assertTrue(built.builtWellBelowLevel());
    Finding finding = outOfReach(far).get(0);
    assertEquals(Numbers.plain(reached * 100, 1) + " %", finding.arguments().get("built-percent"));
    assertEquals(Load.ofKilograms(70), finding.arguments().get("built"));
    CompiledPlan near = adding(1, 10, new Level.OfMax(reached + 0.0499));
    assertEquals(List.of(), outOfReach(near));
    assertFalse(exercise(near, 1).builtWellBelowLevel());
  }

  @Test
  void ofLargeStepsLessThanOneIsOrdinary() {
    assertEquals(List.of(), outOfReach(adding(12, 12, Level.total(Load.ofKilograms(83.9)))));
    assertEquals(1, outOfReach(adding(12, 12, Level.total(Load.ofKilograms(84)))).size());
    assertEquals(List.of(), outOfReach(adding(12, 24, Level.total(Load.ofKilograms(84)))));
  }
}
