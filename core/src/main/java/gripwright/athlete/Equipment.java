package gripwright.athlete;

import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What there is to train with: edges, weight to add, and weight that can be taken off.
 *
 * @param edges depths, in the order written
 * @param added how load is added, if it can be
 * @param assist how load is taken off, if it can be
 */
public record Equipment(List<Length> edges, Optional<Steps> added, Optional<Steps> assist) {

  /**
   * Loads that can be built: every multiple of a step up to a limit.
   *
   * @param step above 0 kg and up to 200 kg
   * @param limit the most, above 0 kg and up to 1000 kg, at least the step
   */
  public record Steps(Load step, Load limit) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if step or limit is outside its range, or the limit is below
     *     the step
     */
    public Steps {
      Objects.requireNonNull(step, "step");
      Objects.requireNonNull(limit, "limit");
      Range.LOAD_STEP.check(step);
      Range.LOAD_LIMIT.check(limit);
      if (limit.compareTo(step) < 0) {
        throw new IllegalArgumentException("load step " + step + " is above the limit " + limit);
      }
    }

    private long count() {
      return (long) Math.floor(limit.kilograms() / step.kilograms() + TOLERANCE);
    }
  }

  /** Share of a step that counts as none, so that 80.25 / 1.25 is not taken for a little less. */
  private static final double TOLERANCE = 1e-9;

  /** A total up to this much, in kg, is no load: nobody hangs from an edge by nothing. */
  private static final double NOTHING = 1e-6;

  /**
   * Copies and checks the edges.
   *
   * @throws IllegalArgumentException if there is none, a depth is outside 1 to 200 mm, or two are
   *     the same to a hundredth of a millimetre
   */
  public Equipment {
    Objects.requireNonNull(edges, "edges");
    Objects.requireNonNull(added, "added");
    Objects.requireNonNull(assist, "assist");
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("equipment without an edge");
    }
    Set<String> depths = new HashSet<>();
    for (Length edge : edges) {
      Range.EDGE.check(edge);
      if (!depths.add(Numbers.plain(edge.millimetres(), 2))) {
        throw new IllegalArgumentException("edge " + edge + " is there twice");
      }
    }
  }

  /** Tells whether there is an edge of this depth, to a hundredth of a millimetre. */
  public boolean has(Length edge) {
    return edges.stream().anyMatch(e -> Math.abs(e.millimetres() - edge.millimetres()) < 0.005);
  }

  /**
   * Returns the greatest total load that can be built and is not above a wanted one.
   *
   * @param wanted the total load asked for
   * @param bodyMass the athlete's mass; zero where a weight is lifted from the floor
   * @return the total, above 0 kg, or empty if even the least that can be built is above what is
   *     wanted
   */
  public Optional<Load> greatestUpTo(Load wanted, Load bodyMass) {
    double difference = wanted.kilograms() - bodyMass.kilograms();
    if (difference >= -TOLERANCE) {
      long steps =
          added.map(a -> Math.min(a.count(), whole(difference / a.step().kilograms()))).orElse(0L);
      double step = added.map(a -> a.step().kilograms()).orElse(0.0);
      return load(bodyMass.plus(Load.ofKilograms(Math.max(0, steps) * step)));
    }
    if (assist.isEmpty() || bodyMass.kilograms() == 0) {
      return Optional.empty();
    }
    double step = assist.get().step().kilograms();
    long steps = (long) Math.ceil(-difference / step - TOLERANCE);
    return steps <= assist.get().count()
        ? load(bodyMass.minus(Load.ofKilograms(steps * step)))
        : Optional.empty();
  }

  private static Optional<Load> load(Load total) {
    return Optional.of(total).filter(t -> t.kilograms() > NOTHING);
  }

  /**
   * Returns the least total load above 0 kg that can be built.
   *
   * @param bodyMass the athlete's mass; zero where a weight is lifted from the floor
   * @return the total, or empty if nothing can be built
   */
  public Optional<Load> least(Load bodyMass) {
    if (bodyMass.kilograms() <= NOTHING) {
      return added.filter(steps -> steps.count() > 0).map(Steps::step);
    }
    double off =
        assist
            .map(
                steps -> {
                  double step = steps.step().kilograms();
                  return Math.min(steps.count(), whole((bodyMass.kilograms() - NOTHING) / step))
                      * step;
                })
            .orElse(0.0);
    return Optional.of(bodyMass.minus(Load.ofKilograms(off)));
  }

  private static long whole(double steps) {
    return (long) Math.floor(steps + TOLERANCE);
  }

  /** Tells whether a total load can be built, to a millionth of a kilogram. */
  public boolean canBuild(Load total, Load bodyMass) {
    return greatestUpTo(total.plus(Load.ofKilograms(1e-7)), bodyMass)
        .filter(built -> Math.abs(built.kilograms() - total.kilograms()) < 1e-6)
        .isPresent();
  }
}
