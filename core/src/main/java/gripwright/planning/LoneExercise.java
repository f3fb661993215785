package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
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

  private static final Duration LIGHT_HOLD = Duration.ofSeconds(10);

  private LoneExercise() {}

  /**
   * Returns the rules that an exercise breaks; waivers of the plan are applied.
   *
   * @param exercise the exercise
   * @param session the session it would be part of, whose other exercises are left out
   * @param week the week of the session
   */
  static List<Finding> breaches(
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
            session.path());
    CompiledPlan trial =
        new CompiledPlan(
            plan, athlete, log, List.of(alone), List.of(week), List.of(), List.of(), List.of());
    return RuleCheck.check(trial, List.of()).stream().filter(f -> f.rule().isPresent()).toList();
  }

  /**
   * Returns the rules that stand against a grip on an edge however lightly it is held: with both
   * hands, for 10 s at half the maximum, with nothing added to body mass. Time in training counts
   * as written unless it says from which day.
   */
  static List<Finding> againstLightHold(
      Grip grip, Length edge, Athlete athlete, Log log, LocalDate day) {
    String name = grip.name();
    Plan plan =
        Plan.named(name)
            .athlete(athlete.name())
            .from(day)
            .block(Block.named(name, 1).build())
            .build();
    ModelPath path = athlete.path().then("grip", name);
    Load mass = log.bodyMassOn(day).orElse(athlete.bodyMass());
    Setup setup = Setup.of(grip, edge);
    PlannedExercise hold =
        new PlannedExercise(
            1,
            name,
            setup,
            new HandFits(athlete).of(setup),
            new Scheme(List.of(new Scheme.Hold(LIGHT_HOLD, new Level.OfMax(LIGHT_SHARE)))),
            List.of(
                new PlannedExercise.LoadedStep(
                    LIGHT_HOLD.toSeconds(), Optional.of(mass.times(LIGHT_SHARE)))),
            OptionalDouble.of(LIGHT_SHARE * 100),
            Optional.empty(),
            mass,
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            path.then("exercise", 1));
    DatedSession session =
        new DatedSession(day, 1, name, 1, name, 1, false, false, mass, "", List.of(hold), path);
    PlanWeek week = new PlanWeek(1, name, 1, day, false, false, 0, 0, path);
    return breaches(hold, session, week, plan, athlete, log);
  }
}
