package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.Prescription;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HandsInTurn;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlannedExercise;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The parts of a session around its exercises: duration, hardness and place. */
final class SessionFrame {

  private final Plan plan;
  private final Athlete athlete;
  private final Prescription prescription;

  SessionFrame(Plan plan, Athlete athlete, Prescription prescription) {
    this.plan = plan;
    this.athlete = athlete;
    this.prescription = prescription;
  }

  /** Returns a session on a day with its exercises. */
  DatedSession dated(
      WeekContext week,
      SessionPlan session,
      LocalDate day,
      List<PlannedExercise> exercises,
      PlacementReason because) {
    return DatedSession.builder(
            day, session.name(), prescription.bodyMassOn(day), week.path(session.name(), day))
        .week(week.number())
        .block(week.block().name())
        .blockWeek(week.blockWeek())
        .minutes(minutes(session, exercises))
        .hard(exercises.stream().anyMatch(PlannedExercise::hard))
        .eased(week.eased())
        .placedBecause(because)
        .exercises(exercises)
        .warmUpText(warmUpText(session))
        .notes(session.contentFor(athlete.name()).notes())
        .build();
  }

  /** Returns the words for the warm-up of a session: its own, if it has a warm-up of its own. */
  private Optional<String> warmUpText(SessionPlan session) {
    SessionPlan.Content content = session.contentFor(athlete.name());
    return content.warmUp().isPresent() ? content.warmUpText() : plan.warmUpText();
  }

  /** Returns the duration of a session with these exercises, in minutes, rounded up. */
  int minutes(SessionPlan session, List<PlannedExercise> exercises) {
    Duration time = session.contentFor(athlete.name()).warmUp().orElse(plan.warmUp());
    time = time.plus(HandsInTurn.time(exercises, restBetween(session)));
    long seconds = time.toSeconds() + (time.toNanosPart() > 0 ? 1 : 0);
    return (int) ((seconds + 59) / 60);
  }

  /** Returns the rest between two exercises of tests. */
  Duration restBetween() {
    return plan.restBetween();
  }

  /** Returns the rest between two exercises. */
  Duration restBetween(SessionPlan session) {
    return session.contentFor(athlete.name()).restBetween().orElse(plan.restBetween());
  }
}
