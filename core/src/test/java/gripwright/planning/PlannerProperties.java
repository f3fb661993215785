package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import gripwright.plan.SessionPlan;
import gripwright.planning.Seasons.Season;
import gripwright.protocol.Level;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** What holds for every compiled plan, whatever the athlete, the log and the plan. */
class PlannerProperties {

  @Property(edgeCases = EdgeCasesMode.NONE)
  void sessionsLieOnAvailableDaysOfTheirWeekAndFitTheTime(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    for (DatedSession session : plan.sessions()) {
      assertTrue(
          season.athlete().availableOn(session.date()).toMinutes() >= session.minutes(),
          session.toString());
      PlanWeek week = plan.weeks().get(session.week() - 1);
      assertTrue(
          !session.date().isBefore(week.from()) && !session.date().isAfter(week.to()),
          session.toString());
    }
    Statistics.label("sessions")
        .collect(plan.sessions().isEmpty() ? "none" : plan.sessions().size() < 6 ? "few" : "many");
    Statistics.label("away").collect(plan.weeks().stream().anyMatch(PlanWeek::away));
    Statistics.label("usable").collect(plan.usable());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void sessionsOfOneNameKeepTheirGap(@ForAll Season season) {
    List<DatedSession> sessions = season.compile().sessions();
    for (int i = 1; i < sessions.size(); i++) {
      long days = ChronoUnit.DAYS.between(sessions.get(i - 1).date(), sessions.get(i).date());
      long hours = gapHours(season, sessions.get(i));
      assertTrue(days * 24 >= hours, sessions.get(i).date() + " after " + days + " days");
    }
  }

  private static long gapHours(Season season, DatedSession session) {
    return season.plan().blocks().stream()
        .filter(b -> b.name().equals(session.block()))
        .flatMap(b -> b.content().sessions().stream())
        .map(SessionPlan::gap)
        .findFirst()
        .orElseThrow()
        .toHours();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void hardDaysOnSharedFingersAreTwoDaysApart(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    List<LocalDate> hard =
        plan.sessions().stream().filter(DatedSession::hard).map(DatedSession::date).toList();
    for (LocalDate day : hard) {
      for (LocalDate climbing : plan.climbing()) {
        assertTrue(Math.abs(ChronoUnit.DAYS.between(day, climbing)) >= 2, day + " " + climbing);
      }
    }
    for (int i = 1; i < hard.size(); i++) {
      assertTrue(ChronoUnit.DAYS.between(hard.get(i - 1), hard.get(i)) >= 2);
    }
    Statistics.label("hard").collect(!hard.isEmpty(), !plan.climbing().isEmpty());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyLoadCanBeBuiltAndIsNotAboveWhatWasWanted(@ForAll Season season) {
    for (DatedSession session : season.compile().sessions()) {
      for (PlannedExercise exercise : session.exercises()) {
        exercise.steps().stream()
            .flatMap(s -> s.load().stream())
            .forEach(
                load ->
                    assertTrue(
                        season.athlete().equipment().canBuild(load, session.bodyMass()),
                        load + " with " + season.athlete().equipment()));
        exercise
            .percentOfMax()
            .ifPresent(
                percent ->
                    assertTrue(
                        exercise.totalLoad().kilograms()
                            <= exercise.maximum().orElseThrow().used().kilograms() * percent / 100
                                + 1e-6));
      }
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void nothingIsAboveTheMaximumWithoutAnError(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    List<gripwright.finding.ModelPath> said =
        plan.findings().stream()
            .filter(f -> f.code().equals("plan.level-over-max") && f.blocks())
            .flatMap(f -> f.places().stream())
            .toList();
    boolean above = false;
    for (DatedSession session : plan.sessions()) {
      for (PlannedExercise exercise : session.exercises()) {
        boolean mayExceed =
            exercise.scheme().holds().stream()
                .allMatch(
                    h -> h.level() instanceof Level.Reserve || h.level() instanceof Level.Effort);
        double maximum = exercise.maximum().map(m -> m.used().kilograms()).orElse(1e9);
        assertTrue(mayExceed || exercise.totalLoad().kilograms() <= maximum + 1e-6);
        if (exercise.percentOfMax().orElse(0) > 100 + 1e-6) {
          above = true;
          assertTrue(said.contains(exercise.path()), exercise.path().toString());
        }
      }
    }
    Statistics.label("asked above the maximum").collect(above);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void atMostOneVariableGetsHarderFromOneTrainedWeekToTheNext(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    for (Block block : season.plan().blocks()) {
      List<DatedSession> firsts =
          plan.weeks().stream()
              .filter(w -> w.block().equals(block.name()) && !w.eased())
              .flatMap(w -> plan.sessionsOf(w.number()).stream().limit(1))
              .toList();
      for (int i = 1; i < firsts.size(); i++) {
        for (PlannedExercise later : firsts.get(i).exercises()) {
          firsts.get(i - 1).exercises().stream()
              .filter(e -> FindingList.line(e.path()).equals(FindingList.line(later.path())))
              .forEach(earlier -> assertTrue(harder(earlier, later) <= 1, later.toString()));
        }
      }
    }
  }

  private static int harder(PlannedExercise earlier, PlannedExercise later) {
    double load =
        later.scheme().holdTime().equals(earlier.scheme().holdTime())
                && later.setup().edge().equals(earlier.setup().edge())
            ? later.totalLoad().kilograms() - earlier.totalLoad().kilograms()
            : 0; // a reserve or another edge changes the load by itself
    int count = load > 1e-9 ? 1 : 0;
    count += later.scheme().sets() > earlier.scheme().sets() ? 1 : 0;
    count +=
        later.scheme().holds().get(0).seconds() > earlier.scheme().holds().get(0).seconds() ? 1 : 0;
    count += later.setup().edge().millimetres() < earlier.setup().edge().millimetres() ? 1 : 0;
    return count;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void anEasedWeekIsLowerInSetsAndTime(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    boolean any = false;
    for (DatedSession eased : plan.sessions().stream().filter(DatedSession::eased).toList()) {
      for (DatedSession other : plan.sessions()) {
        boolean before = other.block().equals(eased.block()) && other.week() < eased.week();
        if (before && !other.eased()) {
          any = true;
          for (PlannedExercise exercise : eased.exercises()) {
            other.exercises().stream()
                .filter(e -> FindingList.line(e.path()).equals(FindingList.line(exercise.path())))
                .filter(e -> isLastBefore(plan, other, eased))
                .forEach(
                    e -> assertTrue(exercise.timeUnderLoadSeconds() < e.timeUnderLoadSeconds()));
          }
        }
      }
    }
    Statistics.label("eased after a week of work").collect(any);
  }

  private static boolean isLastBefore(CompiledPlan plan, DatedSession other, DatedSession eased) {
    return plan.sessions().stream()
        .filter(s -> s.block().equals(eased.block()) && !s.eased() && s.week() < eased.week())
        .mapToInt(DatedSession::week)
        .max()
        .stream()
        .anyMatch(w -> w == other.week());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void movingEverythingByWeeksMovesTheDatesAlone(
      @ForAll Season season, @ForAll @IntRange(min = 1, max = 300) int weeks) {
    CompiledPlan plan = season.compile();
    CompiledPlan later = season.later(weeks).compile();
    assertEquals(plan.sessions().size(), later.sessions().size());
    for (int i = 0; i < plan.sessions().size(); i++) {
      DatedSession one = plan.sessions().get(i);
      DatedSession other = later.sessions().get(i);
      assertEquals(one.date().plusWeeks(weeks), other.date());
      assertEquals(one.minutes(), other.minutes());
      assertEquals(
          one.exercises().stream().map(PlannedExercise::steps).toList(),
          other.exercises().stream().map(PlannedExercise::steps).toList());
    }
    assertEquals(
        plan.findings().stream().map(Finding::code).toList(),
        later.findings().stream().map(Finding::code).toList());
  }

  @Property(edgeCases = EdgeCasesMode.NONE, maxDiscardRatio = 100)
  void strongerTestsNeverLowerALoad(
      @ForAll Season season, @ForAll @DoubleRange(min = 1, max = 2) double factor) {
    CompiledPlan plan = season.compile();
    Assume.that(plan.usable()); // an exercise that can't be loaded leaves room for others
    CompiledPlan stronger = season.stronger(factor).compile();
    for (DatedSession session : plan.sessions()) {
      stronger.sessions().stream()
          .filter(s -> s.path().equals(session.path()))
          .flatMap(s -> s.exercises().stream())
          .forEach(
              e ->
                  session.exercises().stream()
                      .filter(x -> x.path().equals(e.path()))
                      .forEach(
                          x ->
                              assertTrue(
                                  e.totalLoad().kilograms() >= x.totalLoad().kilograms() - 1e-9)));
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theSameSeasonGivesTheSamePlan(@ForAll Season season) {
    assertEquals(season.compile(), season.compile());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aTestStandsOnARestedDayOrInPlaceOfASession(@ForAll Season season) {
    CompiledPlan plan = season.compile();
    plan.retests()
        .forEach(
            r -> {
              boolean own = r.insteadOf().isEmpty();
              Statistics.label("test on a day of its own").collect(own);
              if (own) {
                plan.sessions().stream()
                    .filter(DatedSession::hard)
                    .forEach(
                        s ->
                            assertTrue(
                                Math.abs(ChronoUnit.DAYS.between(s.date(), r.date())) >= 2,
                                r.toString()));
              }
            });
  }
}
