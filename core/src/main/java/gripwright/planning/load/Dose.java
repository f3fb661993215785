package gripwright.planning.load;

import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.Derivation;
import java.util.List;
import java.util.Optional;

/**
 * An exercise in one week, before loads are known.
 *
 * @param scheme sets, holds and rests after progression and easing
 * @param whole the scheme before a deload week shortened its holds, if it did: loads are calculated
 *     from it, so that a shorter hold is no heavier
 * @param edge depth of the edge after progression
 * @param loadFactor factor of the written load
 * @param loadStep added to the total load after that
 * @param ramp position of an introduced grip on its ramp, while it is on one
 * @param why changes by progression, in order
 * @param ceiling the greatest load, if the log sets a limit
 */
public record Dose(
    Scheme scheme,
    Optional<Scheme> whole,
    Length edge,
    double loadFactor,
    Load loadStep,
    Optional<Ramp> ramp,
    List<Derivation> why,
    Optional<Ceiling> ceiling) {

  /**
   * Position of a grip between its first level and the written one.
   *
   * @param fromFraction first level, as a share of the maximum
   * @param position 0 at the first level, 1 at the written one
   */
  public record Ramp(double fromFraction, double position) {}

  /**
   * The greatest load after trouble in the log.
   *
   * @param most total load
   * @param why what happened
   */
  public record Ceiling(Load most, Cause why) {}

  public Dose {
    why = List.copyOf(why);
  }

  /** Returns an exercise as written, on an edge. */
  public static Dose written(Scheme scheme, Length edge) {
    return new Dose(
        scheme,
        Optional.empty(),
        edge,
        1,
        Load.ZERO,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  /** Returns this dose with a limit from the log, if there is one. */
  public Dose under(Optional<Ceiling> limit) {
    return limit.equals(ceiling)
        ? this
        : new Dose(scheme, whole, edge, loadFactor, loadStep, ramp, why, limit);
  }

  /** Returns this dose with its causes. */
  public Dose because(List<Derivation> chain) {
    return new Dose(scheme, whole, edge, loadFactor, loadStep, ramp, chain, ceiling);
  }

  /** Returns this dose on a ramp, if the grip is on one. */
  public Dose onRamp(Optional<Ramp> way) {
    return new Dose(scheme, whole, edge, loadFactor, loadStep, way, why, ceiling);
  }

  /** Returns this dose with other holds and sets. */
  public Dose with(Scheme other) {
    return new Dose(other, whole, edge, loadFactor, loadStep, ramp, why, ceiling);
  }

  /** Returns this dose with shorter holds, with loads calculated from the current holds. */
  public Dose shortened(Scheme shorter) {
    return new Dose(shorter, Optional.of(scheme), edge, loadFactor, loadStep, ramp, why, ceiling);
  }

  /** Returns this dose on another edge. */
  public Dose on(Length other) {
    return new Dose(scheme, whole, other, loadFactor, loadStep, ramp, why, ceiling);
  }

  /** Returns this dose with its load multiplied. */
  public Dose scaled(double factor) {
    return new Dose(scheme, whole, edge, loadFactor * factor, loadStep, ramp, why, ceiling);
  }

  /** Returns this dose with a load added to its total. */
  public Dose heavierBy(Load step) {
    return new Dose(scheme, whole, edge, loadFactor, loadStep.plus(step), ramp, why, ceiling);
  }

  /** Returns this dose with other sets and their causes. */
  public Dose withSets(int sets, List<Derivation> chain) {
    return new Dose(
        scheme.withSets(sets),
        whole.map(unshortened -> unshortened.withSets(sets)),
        edge,
        loadFactor,
        loadStep,
        ramp,
        chain,
        ceiling);
  }
}
