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
 * Training equipment: edges, weight to add, and weight that can be removed.
 *
 * @param edges depths, in the order written
 * @param added how load is added, if it can be
 * @param assist how load is removed, if it can be
 */
public record Equipment(List<Length> edges, Optional<Steps> added, Optional<Steps> assist) {

  /**
   * Loads that can be built: every multiple of a step up to a limit.
   *
   * @param step above 0 kg and up to 200 kg
   * @param limit the maximum, up to 1000 kg and at least one step
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

  /** Share of a step that counts as zero, so that rounding in 80.25 / 1.25 doesn't lose a step. */
  private static final double TOLERANCE = 1e-9;

  /** Maximum difference of two depths that count as one edge, in mm; the library's own choice. */
  private static final double SAME_EDGE = 0.2;

  /** A total up to this much, in kg, counts as no load. */
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

  /** Returns whether one of the edges has {@link #isSameEdge the same} depth. */
  public boolean has(Length edge) {
    return edges.stream().anyMatch(e -> isSameEdge(e, edge));
  }

  /**
   * Returns whether two depths count as one edge, which they do up to a difference of 0.2 mm. So
   * 0.79 inch (20.07 mm) is the edge of 20 mm; rounding inches to two decimals changes a depth by
   * up to 0.13 mm. The limit is the library's own choice.
   */
  public static boolean isSameEdge(Length one, Length other) {
    return Math.abs(one.millimetres() - other.millimetres()) <= SAME_EDGE + TOLERANCE;
  }

  /**
   * Returns the greatest total load that can be built without exceeding a wanted load.
   *
   * @param wanted the wanted total load
   * @param bodyMass the athlete's mass; zero for a weight lifted from the floor
   * @return the total, above 0 kg, or empty if even the smallest possible load exceeds the wanted
   *     one
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

  /**
   * Returns whether the greatest possible load is below a wanted one by a step or more, so that the
   * equipment lacks weight to add, not a smaller step.
   *
   * @param wanted the wanted total load
   * @param bodyMass the athlete's mass; zero for a weight lifted from the floor
   */
  public boolean endsBelow(Load wanted, Load bodyMass) {
    double difference = wanted.kilograms() - bodyMass.kilograms();
    return added
        .map(a -> whole(difference / a.step().kilograms()) > a.count())
        .orElse(difference > TOLERANCE);
  }

  private static Optional<Load> load(Load total) {
    return Optional.of(total).filter(t -> t.kilograms() > NOTHING);
  }

  /**
   * Returns the least total load above 0 kg that can be built.
   *
   * @param bodyMass the athlete's mass; zero for a weight lifted from the floor
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

  /** Returns whether a total load can be built, to a millionth of a kilogram. */
  public boolean canBuild(Load total, Load bodyMass) {
    return greatestUpTo(total.plus(Load.ofKilograms(1e-7)), bodyMass)
        .filter(built -> Math.abs(built.kilograms() - total.kilograms()) < 1e-6)
        .isPresent();
  }
}
