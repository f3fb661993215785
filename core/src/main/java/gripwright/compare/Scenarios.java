package gripwright.compare;

import gripwright.grip.Setup;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/** Evaluates arms by other published models, at their published parameters. */
final class Scenarios {

  private static final int ALL_FINGERS = 4;

  private final People people;
  private final List<Setup> setups;
  private final Set<Measure> measures;

  Scenarios(People people, List<Setup> setups, Set<Measure> measures) {
    this.people = people;
    this.setups = setups;
    this.measures = measures;
  }

  /**
   * The arms by another model.
   *
   * @param name the model
   * @param concerns the measures that it may change
   * @param values of each arm, by measure
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
  record Modelled(String name, Predicate<Measure> concerns, double[][] values) {}

  /**
   * Returns the arms by each other model that may change one of the measures. Loads stay as
   * prescribed: what is prescribed doesn't know which model is right.
   *
   * @param prepared the people
   * @param best values of each arm by the models of plans
   * @param others returns the same people by other models
   * @param evaluations of the arms, by a model of fatigue
   */
  List<Modelled> of(
      People.Prepared prepared,
      double[][] best,
      Function<Models, People> others,
      Function<FatigueScenario, List<Evaluation>> evaluations) {
    List<Modelled> scenarios = new ArrayList<>();
    if (measures.stream().anyMatch(Evaluation::isFatigue)) {
      for (FatigueScenario scenario : FatigueScenario.others()) {
        scenarios.add(
            new Modelled(
                scenario.name(),
                Evaluation::isFatigue,
                SubjectRun.values(evaluations.apply(scenario), prepared.reference())));
      }
    }
    boolean pulleys = measures.stream().anyMatch(Evaluation::isExposure);
    for (Models.Other other : Models.AS_IN_PLANS.others()) {
      if (mayChange(other.subject())) {
        Person reference = others.apply(other.models()).prepare(setups, pulleys).reference();
        double[][] values =
            SubjectRun.values(evaluations.apply(FatigueScenario.AS_IN_PLANS), reference);
        if (other.subject() != Models.Subject.FINGERS || !Arrays.deepEquals(values, best)) {
          scenarios.add(
              new Modelled(other.name(), measure -> concerns(other.subject(), measure), values));
        }
      }
    }
    return scenarios;
  }

  private boolean mayChange(Models.Subject subject) {
    return switch (subject) {
      case PULLEYS -> measures.stream().anyMatch(Evaluation::isExposure);
      case CRITICAL_FORCE -> people.size() == 0 && measures.contains(Measure.IMPULSE_ABOVE_CF);
      case FINGERS ->
          setups.stream().anyMatch(setup -> setup.grip().fingers().count() < ALL_FINGERS);
    };
  }

  private static boolean concerns(Models.Subject subject, Measure measure) {
    return switch (subject) {
      case PULLEYS -> Evaluation.isExposure(measure);
      case CRITICAL_FORCE -> measure == Measure.IMPULSE_ABOVE_CF;
      case FINGERS -> true;
    };
  }
}
