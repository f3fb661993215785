package gripwright.planning.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.hand.HandShape;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.planning.GeneratedSeason;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** What holds of the hands of every compiled plan. */
class HandFindingsProperties {

  private static List<PlannedExercise> exercises(CompiledPlan plan) {
    return plan.sessions().stream().flatMap(s -> s.exercises().stream()).toList();
  }

  @Property(edgeCases = EdgeCasesMode.NONE, tries = 300)
  void theFitsOfAPlanAreThoseOfTheHands(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.compile();
    Map<List<Object>, GripFit> direct = new HashMap<>();
    for (PlannedExercise exercise : exercises(plan)) {
      exercise
          .fits()
          .forEach(
              (side, fit) -> {
                GripFit own =
                    direct.computeIfAbsent(
                        List.of(exercise.setup().grip(), exercise.setup().edge(), side),
                        key ->
                            GripFit.of(
                                exercise.setup().grip(),
                                HandShape.of(season.athlete().hand(side), season.athlete().sex()),
                                exercise.setup().edge()));
                assertEquals(own, fit);
                assertEquals(own.pose(), fit.pose());
                assertTrue(fit.reachable(), fit.toString());
              });
      Statistics.label("hands").collect(exercise.setup().hands());
    }
    Statistics.label("hands alike")
        .collect(season.athlete().left().equals(season.athlete().right()));
  }

  @Property(edgeCases = EdgeCasesMode.NONE, tries = 300)
  void mirroredHandsHaveMirroredFits(@ForAll GeneratedSeason season) {
    Map<String, PlannedExercise> mirrored = new HashMap<>(); // a line may have several grips
    exercises(season.withoutSessionsLogged().mirrored().compile())
        .forEach(e -> mirrored.put(e.path() + " " + e.setup(), e));
    boolean oneHanded =
        season.log().tests().stream().anyMatch(t -> t.setup().hands() != Hands.BOTH);
    for (PlannedExercise exercise : exercises(season.withoutSessionsLogged().compile())) {
      PlannedExercise other = mirrored.get(exercise.path() + " " + exercise.setup());
      if (other != null && exercise.setup().hands() == Hands.BOTH) {
        assertEquals(exercise.fits().get(Side.LEFT), other.fits().get(Side.RIGHT));
        assertEquals(exercise.fits().get(Side.RIGHT), other.fits().get(Side.LEFT));
        if (!oneHanded) { // a test of one hand is not mirrored
          assertEquals(exercise.steps(), other.steps());
        }
      }
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void whatNoHandTakesIsReportedAndLeftOut(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.compile();
    boolean any = false;
    for (Block block : season.plan().blocks()) {
      boolean trained =
          plan.sessions().stream().map(DatedSession::block).anyMatch(block.name()::equals);
      boolean asked =
          block.content().sessions().stream()
              .flatMap(s -> s.content().exercises().stream())
              .anyMatch(e -> e.target().equals(new Exercise.On(PractisedGrips.STRAIGHT_FOUR)));
      if (trained && asked) {
        any = true;
        assertTrue(
            plan.findings().stream()
                .anyMatch(
                    f ->
                        f.code().equals("plan.grip-out-of-reach")
                            && f.place().toString().contains("block " + block.name())),
            () -> plan.findings().toString());
      }
    }
    assertTrue(
        exercises(plan).stream()
            .noneMatch(e -> e.setup().grip().equals(PractisedGrips.STRAIGHT_FOUR)));
    Statistics.label("out of reach").collect(any);
  }

  /** What is advised about a line that is trained is about a hard exercise or a test. */
  @Property(edgeCases = EdgeCasesMode.NONE, tries = 300)
  void onlyWhatIsHardIsAdvisedAgainstForce(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.compile();
    List<Finding> reported =
        plan.findings().stream().filter(f -> f.code().equals("plan.finger-not-forced")).toList();
    if (season.plan().retests().isEmpty()) { // tests are hard, too, and take the place of sessions
      List<ModelPath> hard =
          exercises(plan).stream()
              .filter(PlannedExercise::hard)
              .map(PlannedExercise::path)
              .toList();
      List<ModelPath> light = // what was trained may have been lighter than planned
          plan.sessions().stream()
              .filter(session -> session.happened().isEmpty())
              .flatMap(session -> session.exercises().stream())
              .filter(exercise -> !exercise.hard())
              .map(PlannedExercise::path)
              .filter(path -> !hard.contains(path)) // alternating hands share a line
              .toList();
      reported.forEach(
          f -> assertTrue(f.places().stream().noneMatch(light::contains), f.toString()));
    }
    for (PlannedExercise exercise : exercises(plan)) {
      if (exercise.hard()
          && exercise.setup().grip().equals(PractisedGrips.BACK_THREE_MIDDLE_OPEN)) {
        assertTrue(
            reported.stream().anyMatch(f -> f.places().contains(exercise.path())),
            exercise.toString());
      }
    }
    Statistics.label("told").collect(!reported.isEmpty());
  }
}
