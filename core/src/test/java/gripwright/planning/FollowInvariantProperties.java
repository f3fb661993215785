package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Equipment;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.StrengthLink;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** How loads follow a test that is higher than those before it. */
class FollowInvariantProperties {

  /**
   * From one week to the next, what levels are shares of rises by no more than the plan allows, or
   * by one step of the equipment; not from the first week of a grip, where a test may open it, and
   * not by the first test of a setup.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void referenceLoadRisesNoFasterThanThePlanAllows(
      @ForAll GeneratedSeason drawn,
      @ForAll @IntRange(min = 7, max = 35) int day,
      @ForAll @IntRange(min = 100, max = 140) int percent) {
    GeneratedSeason season = retested(drawn, day, percent / 100.0);
    SecondLook look = new SecondLook(season);
    double rise = season.plan().weeklyRise().orElse(0.1);
    double step =
        season
            .athlete()
            .equipment()
            .added()
            .map(Equipment.Steps::step)
            .orElse(Load.ZERO)
            .kilograms();
    boolean followed = false;
    Map<String, TreeMap<Integer, PlannedExercise>> weeks = new HashMap<>();
    Map<String, Integer> begun = new HashMap<>();
    Map<PlannedExercise, LocalDate> days = new HashMap<>();
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        begun.merge(exercise.setup().grip().name(), session.week(), Math::min);
        days.put(exercise, session.date());
        followed |= exercise.why().stream().anyMatch(StrengthLink.FollowsTest.class::isInstance);
        if (exercise.maximum().isPresent() && exercise.rehabilitation().isEmpty()) {
          weeks
              .computeIfAbsent(exercise.setup().toString(), s -> new TreeMap<>())
              .merge(
                  session.week(),
                  exercise,
                  (a, b) ->
                      Comparator.comparingDouble(FollowInvariantProperties::used).compare(a, b) >= 0
                          ? a
                          : b);
        }
      }
    }
    for (TreeMap<Integer, PlannedExercise> ofSetup : weeks.values()) {
      for (Map.Entry<Integer, PlannedExercise> later : ofSetup.entrySet()) {
        PlannedExercise before = ofSetup.get(later.getKey() - 1);
        PlannedExercise now = later.getValue();
        if (before == null
            || begun.getOrDefault(now.setup().grip().name(), 0) >= later.getKey() - 1
            || firstTested(season, now.setup(), days.get(before), days.get(now))) {
          continue;
        }
        double most = Math.max(used(before) * (1 + rise), used(before) + step);
        assertTrue(
            used(now) <= most + SecondLook.SLACK,
            now.path() + ": " + used(before) + " to " + used(now));
      }
    }
    Reached.reached(followed, 35);
  }

  /**
   * Invariants 1, 2 and 6 of plans in which a test is done again, after the first week: a test in
   * it opens the block where the log has no session before it.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void otherInvariantsOfLoadsHold(
      @ForAll GeneratedSeason drawn,
      @ForAll @IntRange(min = 7, max = 35) int day,
      @ForAll @IntRange(min = 100, max = 140) int percent) {
    GeneratedSeason season = retested(drawn, day, percent / 100.0);
    LoadInvariantProperties loads = new LoadInvariantProperties();
    loads.oneVariableAtMostGetsHarderFromOneTrainedWeekToTheNext(season);
    loads.anEasedWeekIsLowerInTimeLoadAndSets(season);
    loads.aWeeksLoadRisesNoMoreThanThePlanAllowsOrTheWeekIsNamed(season);
  }

  /**
   * Invariant 9 of plans in which a test is done again, as long as every test stays likely: what is
   * above counts as less, so that loads may follow it and steps wait.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void orderOfAthletesIsKept(
      @ForAll GeneratedSeason drawn,
      @ForAll @IntRange(min = 0, max = 35) int day,
      @ForAll @IntRange(min = 80, max = 140) int percent,
      @ForAll @IntRange(min = 101, max = 150) int stronger) {
    GeneratedSeason season = retested(drawn, day, percent / 100.0);
    new ChangedSeasonInvariantProperties()
        .proportionallyHigherTestsNeverLowerALoad(season, stronger / 100.0);
  }

  private static double used(PlannedExercise exercise) {
    return exercise.maximum().orElseThrow().used().kilograms();
  }

  private static boolean firstTested(
      GeneratedSeason season, Setup setup, LocalDate after, LocalDate upTo) {
    return season.log().tests().stream()
        .filter(test -> test.setup().equals(setup))
        .map(StrengthTest::date)
        .min(Comparator.naturalOrder())
        .filter(first -> first.isAfter(after.minusDays(6)) && !first.isAfter(upTo))
        .isPresent();
  }

  /** Returns a season whose first test was done again on two days of the plan. */
  private static GeneratedSeason retested(GeneratedSeason season, int day, double factor) {
    Log log = season.log();
    Optional<StrengthTest> first = log.tests().stream().findFirst();
    if (first.flatMap(StrengthTest::effort).isEmpty()) {
      return season;
    }
    Load load = first.get().effort().orElseThrow().load().times(factor);
    for (int later = 0; later < 2; later++) {
      log =
          log.with(
              new LogEntry.Tested(
                  new StrengthTest(
                      season.plan().from().plusDays(day + later),
                      first.get().setup(),
                      new StrengthTest.Held(Duration.ofSeconds(7), load)),
                  Optional.empty()));
    }
    return new GeneratedSeason(season.athlete(), log, season.plan());
  }
}
