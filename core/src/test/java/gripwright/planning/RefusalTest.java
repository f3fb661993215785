package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Structure;
import gripwright.history.SessionMatches;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.review.Review;
import gripwright.season.CompiledPlan;
import gripwright.season.OddTests;
import gripwright.season.Planner;
import gripwright.strength.StrengthTest;
import gripwright.survey.GripSurvey;
import gripwright.survey.StrengthSurvey;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What can't be is refused where it is built, with the value and what would be right. */
class RefusalTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
  private static final SessionPlan STRENGTH = SessionPlan.of("strength", 2, LINE);

  private static void refused(String message, Executable built) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, built).getMessage());
  }

  private static Block.Builder base(int weeks) {
    return Block.named("base", weeks).session(STRENGTH);
  }

  private static Plan.Builder plan(Block.Builder... blocks) {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY);
    for (Block.Builder block : blocks) {
      plan.block(block.build());
    }
    return plan;
  }

  private static Plan.Waiver waiver(
      Optional<String> block, OptionalInt week, Optional<String> session, OptionalInt exercise) {
    return new Plan.Waiver("full-crimp-ceiling", block, week, session, exercise, "as agreed");
  }

  private static final Log OTHERS = Log.empty("tove");

  @Test
  void logOfAnotherAthleteIsRefusedEverywhere() {
    Athlete ylva = Skarvdal.ylva().build();
    Plan plan = plan(base(1)).build();
    CompiledPlan compiled = Planner.compile(plan, ylva, Log.empty("ylva"), List.of());
    String message = "the log of tove is not the log of ylva";
    refused(message, () -> Planner.compile(plan, ylva, OTHERS, List.of()));
    refused(message, () -> Planner.compile(plan, ylva, OTHERS, List.of(), Map.of()));
    refused(message, () -> Review.of(ylva, OTHERS, List.of(), StandardProtocols.byName(), MONDAY));
    refused(message, () -> OddTests.likely(ylva, OTHERS));
    refused(
        message,
        () -> GripSurvey.of(ylva, OTHERS, List.of(HALF_CRIMP), EDGE, Load.ofKilograms(60), MONDAY));
    refused(
        message,
        () -> StrengthSurvey.of(ylva, OTHERS, List.of(HALF_CRIMP), Optional.empty(), MONDAY));
    refused(message, () -> SessionMatches.of(compiled.schedule(), OTHERS, MONDAY));
  }

  @Test
  void aPlanForSomebodyElseIsRefused() {
    Athlete ylva = Skarvdal.ylva().build();
    Plan others = plan(base(1)).build();
    Athlete tove =
        Athlete.named("tove")
            .born(ylva.born())
            .bodyMass(ylva.bodyMass())
            .trained(ylva.trained())
            .ability(ylva.ability())
            .hand(ylva.left())
            .available(DayOfWeek.MONDAY, Duration.ofHours(2))
            .edge(EDGE)
            .build();
    refused(
        "plan spring is for ylva, not for tove",
        () -> Planner.compile(others, tove, OTHERS, List.of()));
    CompiledPlan compiled = Planner.compile(others, ylva, Log.empty("ylva"), List.of());
    refused(
        "plan spring was compiled for ylva, not for tove",
        () -> Review.of(tove, OTHERS, List.of(compiled), Map.of(), MONDAY));
    Plan early =
        Plan.named("early")
            .athlete("ylva")
            .from(LocalDate.of(1950, 1, 2))
            .block(base(1).build())
            .build();
    refused(
        "plan early begins on 1950-01-02, before the date of birth " + ylva.born(),
        () -> Planner.compile(early, ylva, Log.empty("ylva"), List.of()));
  }

  @Test
  void theMessageQuotesTheValueAndTheRange() {
    refused(
        "pain score NaN is outside 0 to 10",
        () -> LogEntry.Pain.builder(MONDAY, Finger.RING, Double.NaN).build());
    refused(
        "effort 11 is outside 0 to 10",
        () -> new Advance.WhenLogged(true, OptionalDouble.of(11), OptionalDouble.empty(), 1));
    refused(
        "weekly rise 1000 % is outside 0 % to 30 %", () -> plan(base(1)).weeklyRise(10).build());
    refused(
        "load 8400 kg is outside above 0 kg up to 1000 kg",
        () -> new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(8_400)));
    refused(
        "body mass -5 kg is outside 15 kg to 300 kg",
        () -> new LogEntry.BodyMass(MONDAY, Load.ofKilograms(-5)));
    refused(
        "time in training -5 months is outside 0 months to 1200 months",
        () -> Skarvdal.ylva().trained(-5));
    refused(
        "eased share of sets 6000 % is outside above 0 % up to 99 %", () -> base(4).ease(4, 60));
    refused(
        "rise of load -50 % is outside above 0 % up to 100 %", () -> new Advance.LoadByShare(-0.5));
    refused("number of sets -1 is outside 1 to 100", () -> new Advance.SetsTo(-1, 1));
    refused(
        "depth of an edge 0 mm is outside 1 mm to 200 mm",
        () -> Exercise.of(HOLDS, HALF_CRIMP, Length.ZERO));
    refused(
        "year 21999 of +21999-01-01 is outside 1900 to 2199",
        () -> new LogEntry.Skipped(LocalDate.of(21_999, 1, 1), "strength", Optional.empty()));
    refused(
        "rest " + Long.MAX_VALUE / 1_000_000_000L * 1e9 + " s is outside 0 s to 86400 s",
        () ->
            new gripwright.protocol.Scheme.Rest(
                Duration.ofSeconds(Long.MAX_VALUE / 1_000_000_000L * 1_000_000_000L)));
  }

  @Test
  void anEmptySessionOrBlockIsRefused() {
    refused(
        "number of exercises of a session 0 is outside 1 to 100",
        () -> SessionPlan.of("strength", 2));
    refused("a block without a session", () -> Block.named("base", 1).build());
    refused("plan spring has no block", () -> plan().build());
    refused("a retest of nothing", () -> PlannedTest.every(List.of(), Duration.ofSeconds(7), 4));
  }

  @Test
  void statementsOfABlockMustReferToThatBlock() {
    refused("block base: eased week 9 is outside 1 to 4", () -> base(4).ease(9, 0.6).build());
    refused("eased week 2 is there twice", () -> base(4).ease(2, 0.6).ease(2, 0.5).build());
    refused(
        "no session of the block trains three-finger-drag",
        () -> base(4).introduce(DRAG, 0.5, 3).build());
    Advance load = Advance.weekly(new Advance.LoadByShare(0.02));
    refused(
        "no session of the block trains three-finger-drag",
        () -> base(4).advance(load.on("three-finger-drag")).build());
    refused(
        "two ways to advance the same exercises",
        () -> base(4).advance(load).advance(load.on("half-crimp")).build());
    refused(
        "advanced grip half-crimp is there twice",
        () -> base(4).advance(load.on("half-crimp")).advance(load.on("half-crimp")).build());
    refused(
        "advance first load then the same: one or the other",
        () -> load.then(new Advance.LoadBy(Load.ofKilograms(1))));
    refused("session strength is there twice", () -> base(4).session(STRENGTH).build());
    assertEquals(2, base(4).ease(2, 0.6).ease(4, 0.6).build().content().eases().size());
  }

  @Test
  void statementsOfAPlanMustReferToThatPlan() {
    refused("plan spring: block base twice", () -> plan(base(1), base(2)).build());
    refused("plan spring: athlete ylva twice", () -> plan(base(1)).athlete("ylva").build());
    refused(
        "plan spring: block base has content for tove, who is not an athlete of the plan",
        () -> plan(base(1).onlyFor("tove", base(1).build().content())).build());
    refused(
        "plan spring: session strength has content for tove, who is not an athlete of the plan",
        () ->
            plan(Block.named("base", 1)
                    .session(STRENGTH.onlyFor("tove", SessionPlan.Content.of(LINE))))
                .build());
    refused(
        "plan spring: towards 2020-01-01 before its first day " + MONDAY,
        () -> plan(base(1)).towards(LocalDate.of(2020, 1, 1), "rock").build());
    Optional<String> here = Optional.of("base");
    Optional<String> none = Optional.empty();
    OptionalInt all = OptionalInt.empty();
    refused(
        "plan spring: a waiver in block peak, which is not there",
        () -> plan(base(1)).waive(waiver(Optional.of("peak"), all, none, all)).build());
    refused(
        "plan spring: a waiver in week 3 of block base is outside 1 to 2",
        () -> plan(base(2)).waive(waiver(here, OptionalInt.of(3), none, all)).build());
    refused(
        "plan spring: a waiver in session power, which is not there",
        () -> plan(base(2)).waive(waiver(here, all, Optional.of("power"), all)).build());
    refused(
        "plan spring: a waiver in exercise 2 is outside 1 to 1",
        () -> plan(base(2)).waive(waiver(none, all, none, OptionalInt.of(2))).build());
    refused(
        "why full-crimp-ceiling is waived without a word: \"  \"",
        () -> new Plan.Waiver("full-crimp-ceiling", none, all, none, all, "  "));
    refused(
        "a waiver of full-crimp-ceiling in week 1 of no block",
        () -> waiver(none, OptionalInt.of(1), none, all));
  }

  @Test
  void datesOfAnAthleteMustBeConsistent() {
    LocalDate born = Skarvdal.ylva().build().born();
    LocalDate before = born.minusDays(1);
    refused(
        "injury on " + before + " is before the date of birth " + born,
        () ->
            Skarvdal.ylva()
                .injury(Injury.builder(Finger.RING, Structure.A2, before).build())
                .build());
    refused(
        "training on " + before + " is before the date of birth " + born,
        () -> Skarvdal.ylva().trained(new Athlete.Experience(1, Optional.of(before))).build());
    refused(
        "athlete ylva: half-crimp is familiar twice",
        () -> Skarvdal.ylva().familiar("half-crimp", 3).familiar("half-crimp", 4).build());
    refused(
        "load step 2 kg is above the limit 1 kg",
        () -> new Equipment.Steps(Load.ofKilograms(2), Load.ofKilograms(1)));
    refused(
        "edge 20 mm is there twice", () -> Skarvdal.ylva().edge(Length.ofMillimetres(20)).build());
    refused(
        "a retest of one setup twice: [half-crimp edge 20 mm, half-crimp edge 20 mm]",
        () ->
            PlannedTest.every(
                List.of(Setup.of(HALF_CRIMP, EDGE), Setup.of(HALF_CRIMP, EDGE)),
                Duration.ofSeconds(7),
                4));
    refused(
        "knuckle's distance 59 mm of the ring finger: the wrist lies 57.98 mm behind the middle"
            + " finger's",
        () ->
            Hand.ofLength(Length.ofMillimetres(130))
                .withKnuckle(Finger.RING, Length.ofMillimetres(59)));
  }

  @Test
  void valueJustOutsideTheRangeIsNotRoundedIntoIt() {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> new LogEntry.BodyMass(MONDAY, Load.ofKilograms(Math.nextUp(300.0))))
            .getMessage();
    assertTrue(message.startsWith("body mass 300.00000000000006 kg "), message);
  }
}
