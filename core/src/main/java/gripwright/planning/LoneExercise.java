package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Load;
import gripwright.rule.RuleCheck;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the built-in rules say of one exercise alone, as if nothing else were trained. */
final class LoneExercise {

  /** The share of the maximum of a light hold: below every ceiling of the built-in rules. */
  static final double LIGHT_SHARE = 0.5;

  /** What a hard hold loads by body mass. */
  private static final double HARD_LOAD = 1.1;

  private static final Duration HOLD = Duration.ofSeconds(10);

  private LoneExercise() {}

  /**
   * Returns a plan whose one exercise is that of a session.
   *
   * @param exercise the exercise
   * @param session the session it would be part of, whose other exercises are left out
   * @param week the week of the session
   */
  static CompiledPlan planned(
      PlannedExercise exercise,
      DatedSession session,
      PlanWeek week,
      Plan plan,
      Athlete athlete,
      Log log) {
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
    return new CompiledPlan(
        plan, athlete, log, List.of(alone), List.of(week), List.of(), List.of(), List.of());
  }

  /**
   * Returns the rules that stand against a grip on an edge however lightly it is held: with both
   * hands, for 10 s at half the maximum, with nothing added to body mass. Time in training counts
   * as written unless it says from which day.
   *
   * @param fits of the athlete's hands
   */
  static List<Finding> againstLightHold(
      Setup setup, HandFits fits, Athlete athlete, Log log, LocalDate day) {
    return against(setup, LIGHT_SHARE, LIGHT_SHARE, fits, athlete, log, day);
  }

  /**
   * Returns the rules that stand against a grip on an edge where it is held as hard as it can be:
   * with both hands, for 10 s at the maximum, with a tenth of body mass added.
   *
   * @param fits of the athlete's hands
   */
  static List<Finding> againstHardHold(
      Setup setup, HandFits fits, Athlete athlete, Log log, LocalDate day) {
    return against(setup, 1, HARD_LOAD, fits, athlete, log, day);
  }

  private static List<Finding> against(
      Setup setup,
      double level,
      double byBodyMass,
      HandFits fits,
      Athlete athlete,
      Log log,
      LocalDate day) {
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
            "",
            List.of(hold),
            path,
            Optional.empty());
    PlanWeek week = new PlanWeek(1, name, 1, day, false, false, 0, 0, path);
    return RuleCheck.check(planned(hold, session, week, plan, athlete, log), List.of()).stream()
        .filter(finding -> finding.rule().isPresent())
        .toList();
  }
}
