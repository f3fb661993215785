package gripwright.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.planning.GeneratedSeason;
import gripwright.protocol.Level;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** What holds for every compiled plan, whatever the athlete, the log and the plan. */
class PlannerProperties {

  @Property(edgeCases = EdgeCasesMode.NONE)
  void sessionsAreOnAvailableDaysAndFitTheTime(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.withoutSessionsLogged().compile();
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
  void loadAboveTheMaximumIsAnError(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.withoutSessionsLogged().compile();
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
  void testIsOnARestedDayOrReplacesASession(@ForAll GeneratedSeason season) {
    CompiledPlan plan = season.withoutSessionsLogged().compile();
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
