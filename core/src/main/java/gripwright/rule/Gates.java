package gripwright.rule;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Checks the built-in rules for one exercise alone, as if nothing else were trained: which rules
 * close a grip to an athlete on a day, and which limit it.
 */
public final class Gates {

  /** The share of the maximum of a light hold, below every limit of the built-in rules. */
  private static final double LIGHT_SHARE = 0.5;

  /** The load of a hard hold as a multiple of body mass. */
  private static final double HARD_LOAD = 1.1;

  private static final Duration HOLD = Duration.ofSeconds(10);

  private final Athlete athlete;
  private final Log log;
  private final HandFits fits;
  private final LocalDate day;

  /**
   * Prepares checks for an athlete on a day. Time in training counts as written unless it has a
   * date.
   *
   * @param athlete the athlete
   * @param log what is known of the athlete
   * @param fits of the athlete's hands
   * @param day the day
   */
  public Gates(Athlete athlete, Log log, HandFits fits, LocalDate day) {
    this.athlete = athlete;
    this.log = log;
    this.fits = fits;
    this.day = day;
  }

  /**
   * Returns the first built-in rule that stops an exercise, see {@link RuleCheck#stopping}.
   *
   * @param exercise the exercise
   * @param session the session it would be part of, whose other exercises are left out
   * @param week the week of the session
   * @param waivers of the plan
   * @param timeline the plan, the athlete and what is known of the athlete
   * @return its name, or empty if no rule stops it
   */
  public static Optional<String> stopping(
      PlannedExercise exercise,
      DatedSession session,
      PlanWeek week,
      WaiverIndex waivers,
      LogTimeline timeline) {
    DatedSession alone =
        session.toBuilder()
            .hard(exercise.hard())
            .exercises(List.of(exercise))
            .happened(Optional.empty())
            .build();
    return RuleCheck.stopping(
        Schedule.builder(timeline.plan(), timeline.athlete())
            .sessions(List.of(alone))
            .weeks(List.of(week))
            .build(),
        timeline,
        waivers);
  }

  /**
   * Returns the first built-in rule that stops an exercise, with the waivers of the plan.
   *
   * @see #stopping(PlannedExercise, DatedSession, PlanWeek, WaiverIndex, LogTimeline)
   */
  public static Optional<String> stopping(
      PlannedExercise exercise, DatedSession session, PlanWeek week, LogTimeline timeline) {
    return stopping(exercise, session, week, WaiverIndex.of(timeline.plan()), timeline);
  }

  /**
   * Returns the rules that prevent even a light hold of a grip on an edge: with both hands, for 10
   * s at half the maximum, with nothing added to body mass.
   */
  public List<Finding> againstLightHold(Setup setup) {
    return against(setup, LIGHT_SHARE, LIGHT_SHARE);
  }

  /**
   * Returns the rules that prevent a maximal hold of a grip on an edge: with both hands, for 10 s
   * at the maximum, with a tenth of body mass added.
   */
  public List<Finding> againstHardHold(Setup setup) {
    return against(setup, 1, HARD_LOAD);
  }

  private List<Finding> against(Setup setup, double level, double byBodyMass) {
    String name = setup.grip().name();
    Protocol protocol =
        Protocol.named(name)
            .step(new Protocol.Part.Hold(Term.of(HOLD), Term.of(new Level.OfMax(level))))
            .build();
    Exercise line = Exercise.of(protocol, setup.grip(), setup.edge());
    Plan plan =
        Plan.named(name)
            .athlete(athlete.name())
            .from(day)
            .block(Block.named(name, 1).session(SessionPlan.of(name, 1, line)).build())
            .build();
    ModelPath path = athlete.path().then("grip", name);
    Load mass = log.bodyMassOn(day).orElse(athlete.bodyMass());
    PlannedExercise hold =
        PlannedExercise.builder(
                name,
                setup,
                line.scheme(),
                List.of(
                    new PlannedExercise.LoadedStep(
                        HOLD.toSeconds(), Optional.of(mass.times(byBodyMass)))),
                mass,
                path.then("exercise", 1))
            .fits(fits.of(setup))
            .percentOfMax(OptionalDouble.of(level * 100))
            .build();
    DatedSession session =
        DatedSession.builder(day, name, mass, path)
            .week(1)
            .block(name)
            .blockWeek(1)
            .minutes(1)
            .exercises(List.of(hold))
            .build();
    PlanWeek week = PlanWeek.builder(1, name, 1, day, path).build();
    Schedule schedule =
        Schedule.builder(plan, athlete).sessions(List.of(session)).weeks(List.of(week)).build();
    return RuleCheck.check(schedule, LogTimeline.of(plan, athlete, log), List.of()).stream()
        .filter(finding -> finding.rule().isPresent())
        .toList();
  }
}
