package gripwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.hand.Sex;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.PlannedExercise;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a builder does with the parts that it copied, and with the lists that it was given. */
class BuildersTest {

  private static final Length EDGE = Length.ofMillimetres(20);
  private static final Setup SETUP = Setup.of(StandardGrips.HALF_CRIMP, EDGE);
  private static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);
  private static final Exercise LINE =
      Exercise.of(StandardProtocols.MAX_HOLDS, StandardGrips.HALF_CRIMP, EDGE);

  @Test
  void optionalPartsOfPlanCanBeRemoved() {
    Plan plain = plan().build();
    Plan full =
        plan()
            .title("Winter")
            .towards(MONDAY.plusWeeks(4), "a long route")
            .taper(1, 0.5)
            .demand(StandardGrips.HALF_CRIMP, 1)
            .weeklyRise(0.05)
            .supervisedBy("a coach")
            .build();
    assertNotEquals(plain, full);
    assertEquals(
        plain,
        full.toBuilder()
            .title(Optional.empty())
            .towards(Optional.empty())
            .taper(Optional.empty())
            .demand(Map.of())
            .weeklyRise(OptionalDouble.empty())
            .supervisedBy(Optional.empty())
            .build());
  }

  @Test
  void demandIsReplacedAsAWhole() {
    Map<Grip, Double> shares = new LinkedHashMap<>();
    shares.put(StandardGrips.OPEN_FOUR, 0.4);
    shares.put(StandardGrips.HALF_CRIMP, 0.6);
    Plan plan = plan().demand(StandardGrips.FULL_CRIMP, 1).demand(shares).build();
    assertEquals(shares, plan.demand());
  }

  @Test
  void optionalPartsOfAthleteCanBeRemovedAndEdgesReplaced() {
    Athlete plain = athlete().build();
    Athlete full =
        athlete()
            .sex(Sex.FEMALE)
            .edge(Length.ofMillimetres(10))
            .added(Load.ofKilograms(1), Load.ofKilograms(40))
            .assist(Load.ofKilograms(2), Load.ofKilograms(30))
            .build();
    assertEquals(
        plain,
        full.toBuilder()
            .sex(Optional.empty())
            .edges(List.of(EDGE))
            .added(Optional.empty())
            .assist(Optional.empty())
            .build());
  }

  @Test
  void optionalPartsOfGripProtocolSessionAndExerciseCanBeRemoved() {
    Grip grip = StandardGrips.HALF_CRIMP.toBuilder().title(Optional.empty()).build();
    assertEquals(
        grip, grip.toBuilder().title("Ours").build().toBuilder().title(Optional.empty()).build());
    Protocol protocol =
        StandardProtocols.MAX_HOLDS.toBuilder()
            .title(Optional.empty())
            .aim(Optional.empty())
            .build();
    assertEquals(Optional.empty(), protocol.title());
    assertEquals(Optional.empty(), protocol.aim());
    assertEquals(StandardProtocols.MAX_HOLDS, StandardProtocols.MAX_HOLDS.toBuilder().build());
    SessionPlan session = SessionPlan.of("strength", 2, LINE);
    assertEquals(
        session,
        session.supervisedBy("a coach").toBuilder().supervisedBy(Optional.empty()).build());
    assertEquals(
        LINE, LINE.rehabilitation("a clinic").toBuilder().rehabilitation(Optional.empty()).build());
  }

  @Test
  void aWarmUpHasOneGripAndIsNoRehabilitationAndNoSessionOfItsOwn() {
    Exercise warmUp = LINE.asWarmUp().note("easily");
    assertEquals(LINE, warmUp.toBuilder().warmUp(false).note(Optional.empty()).build());
    assertThrows(IllegalArgumentException.class, () -> warmUp.rehabilitation("a clinic"));
    Exercise.BestOf best =
        new Exercise.BestOf(
            List.of(StandardGrips.HALF_CRIMP, StandardGrips.OPEN_FOUR), Optional.empty());
    assertThrows(IllegalArgumentException.class, () -> warmUp.toBuilder().target(best).build());
    assertThrows(
        IllegalArgumentException.class, () -> SessionPlan.of("strength", 2, warmUp, warmUp));
    assertEquals(2, SessionPlan.of("strength", 2, warmUp, LINE).content().exercises().size());
  }

  @Test
  void aSessionHasAsManyWeekdaysAsItNeeds() {
    SessionPlan twice = SessionPlan.of("strength", 2, LINE);
    assertEquals(
        List.of(DayOfWeek.TUESDAY, DayOfWeek.MONDAY),
        twice.onlyOn(DayOfWeek.TUESDAY, DayOfWeek.MONDAY).onlyOn());
    assertThrows(IllegalArgumentException.class, () -> twice.onlyOn(DayOfWeek.TUESDAY));
    assertThrows(
        IllegalArgumentException.class,
        () -> twice.onlyOn(DayOfWeek.TUESDAY, DayOfWeek.TUESDAY, DayOfWeek.MONDAY));
    assertEquals(
        twice,
        twice.onlyOn(DayOfWeek.TUESDAY, DayOfWeek.MONDAY).toBuilder().onlyOn(List.of()).build());
  }

  @Test
  void aTextForAWarmUpNeedsItsDuration() {
    Optional<String> text = Optional.of("skip");
    assertThrows(
        IllegalArgumentException.class,
        () -> new SessionPlan.Content(List.of(LINE), Optional.empty(), Optional.empty(), text));
    assertEquals(
        text,
        new SessionPlan.Content(
                List.of(LINE), Optional.of(Duration.ofMinutes(15)), Optional.empty(), text)
            .warmUpText());
    assertEquals(text, plan().warmUpText("skip").build().warmUpText());
  }

  @Test
  void exerciseBuilderTakesTheValuesThatAnExerciseTakes() {
    assertEquals(
        LINE.with("sets", 2).with("level", Level.ofMax(70)),
        LINE.toBuilder().with("sets", 2).with("level", Level.ofMax(70)).build());
  }

  @Test
  void laterChangesOfGivenListsDoNotReachTheBuilder() {
    List<Setup> setups = new ArrayList<>(List.of(SETUP));
    ModelPath path = ModelPath.of("plan", "winter");
    DatedRetest.Builder retest =
        DatedRetest.builder(MONDAY, 1, "base", setups, Duration.ofSeconds(7), path);
    Map<String, Argument> values = new LinkedHashMap<>(Map.of("sets", Argument.of(2)));
    Exercise.Builder exercise = LINE.toBuilder().with(values);
    setups.clear();
    values.clear();
    assertEquals(List.of(SETUP), retest.build().setups());
    assertEquals(Map.of("sets", Argument.of(2)), exercise.build().with());
  }

  @Test
  void plannedExerciseNeedsFits() {
    PlannedExercise.Builder builder =
        PlannedExercise.builder(
            "max-holds",
            SETUP,
            LINE.scheme(),
            List.of(),
            Load.ofKilograms(60),
            ModelPath.of("plan", "winter"));
    assertEquals(
        "exercise max-holds has no fits",
        assertThrows(IllegalStateException.class, builder::build).getMessage());
    builder.fits(Map.of());
    assertThrows(IllegalArgumentException.class, builder::build);
  }

  private static Plan.Builder plan() {
    SessionPlan session = SessionPlan.of("strength", 2, LINE);
    return Plan.named("winter")
        .athlete("runa")
        .from(MONDAY)
        .block(Block.named("base", 4).session(session).build());
  }

  private static Athlete.Builder athlete() {
    return Athlete.named("runa")
        .born(LocalDate.of(1998, 3, 14))
        .bodyMass(Load.ofKilograms(60))
        .trained(30)
        .ability(Ability.of(GradeScale.FRENCH, "7b"))
        .hand(Hand.ofLength(Length.ofMillimetres(180)))
        .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
        .edge(EDGE);
  }
}
