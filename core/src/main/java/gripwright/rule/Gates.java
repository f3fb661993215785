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
import gripwright.schedule.PlacementReason;
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
        new DatedSession(
            session.date(),
            session.week(),
            session.block(),
            session.blockWeek(),
            session.name(),
            session.minutes(),
            exercise.hard(),
            session.eased(),
            session.bodyMass(),
            session.placedBecause(),
            List.of(exercise),
            session.path(),
            Optional.empty());
    return RuleCheck.stopping(
        new Schedule(
            timeline.plan(),
            timeline.athlete(),
            List.of(alone),
            List.of(week),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty()),
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
        new PlannedExercise(
            1,
            name,
            setup,
            fits.of(setup),
            line.scheme(),
            List.of(
                new PlannedExercise.LoadedStep(
                    HOLD.toSeconds(), Optional.of(mass.times(byBodyMass)))),
            OptionalDouble.of(level * 100),
            Optional.empty(),
            mass,
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            path.then("exercise", 1));
    DatedSession session =
        new DatedSession(
            day,
            1,
            name,
            1,
            name,
            1,
            false,
            false,
            mass,
            new PlacementReason.Unplaced(),
            List.of(hold),
            path,
            Optional.empty());
    PlanWeek week = new PlanWeek(1, name, 1, day, false, false, 0, 0, path);
    Schedule schedule =
        new Schedule(
            plan,
            athlete,
            List.of(session),
            List.of(week),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty());
    return RuleCheck.check(schedule, LogTimeline.of(plan, athlete, log), List.of()).stream()
        .filter(finding -> finding.rule().isPresent())
        .toList();
  }
}
