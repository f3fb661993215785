package gripwright.planning.load;

import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Collects holds with their loads, and rests. A long exercise repeats a few of them, so equal ones
 * share one object. Not thread-safe.
 */
public final class LoadedSteps {

  private final List<LoadedStep> steps = new ArrayList<>();
  private final Map<LoadedStep, LoadedStep> known = new HashMap<>();

  /** Starts an empty list. */
  public LoadedSteps() {}

  /**
   * Returns the holds and rests of a scheme in the order they happen.
   *
   * @param load load of each hold by its position among the holds, from 0
   */
  public static List<LoadedStep> of(Scheme scheme, IntFunction<Load> load) {
    LoadedSteps steps = new LoadedSteps();
    Scheme.Bout.Visitor<Boolean> adding =
        new Scheme.Bout.Visitor<>() {
          private int holds;

          @Override
          public Boolean hold(Scheme.Hold hold) {
            steps.hold(hold, load.apply(holds++));
            return true;
          }

          @Override
          public Boolean rest(Scheme.Rest rest) {
            steps.rest(rest.seconds());
            return true;
          }
        };
    scheme.flat().forEach(step -> step.accept(adding));
    return steps.all();
  }

  /** Adds a hold. */
  public void hold(Scheme.Hold hold, Load load) {
    add(new LoadedStep(hold.seconds(), Optional.of(load), hold.extent()));
  }

  /** Adds a rest. */
  public void rest(double seconds) {
    add(new LoadedStep(seconds, Optional.empty()));
  }

  private void add(LoadedStep step) {
    LoadedStep same = known.putIfAbsent(step, step);
    steps.add(same == null ? step : same);
  }

  /** Returns what was added, in order. */
  public List<LoadedStep> all() {
    return List.copyOf(steps);
  }
}
