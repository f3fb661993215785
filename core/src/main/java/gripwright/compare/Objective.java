package gripwright.compare;

import java.util.Objects;

/**
 * A measure of which the user prefers more or less. Objectives are never weighed against each
 * other.
 *
 * @param more true if more is preferred, false if less
 * @param measure the measure
 */
public record Objective(boolean more, Measure measure) {
  /** Refuses null. */
  public Objective {
    Objects.requireNonNull(measure, "measure");
  }

  /** Returns the objective as written, such as {@code less a2-exposure}. */
  @Override
  public String toString() {
    return (more ? "more " : "less ") + measure;
  }
}
