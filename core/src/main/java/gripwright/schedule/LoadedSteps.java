package gripwright.schedule;

import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Collects holds with their loads, and rests. A long exercise repeats a few of them, so that equal
 * ones are one object. Not thread-safe.
 */
public final class LoadedSteps {

  private final List<LoadedStep> steps = new ArrayList<>();
  private final Map<LoadedStep, LoadedStep> known = new HashMap<>();

  /** Begins with none. */
  public LoadedSteps() {}

  /** Adds a hold. */
  public void hold(double seconds, Load load) {
    add(new LoadedStep(seconds, Optional.of(load)));
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
