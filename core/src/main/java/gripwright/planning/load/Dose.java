package gripwright.planning.load;

import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.Derivation;
import java.util.List;
import java.util.Optional;

/**
 * An exercise as it stands in one week, before loads are known.
 *
 * @param scheme sets, holds and rests after progression and easing
 * @param whole the scheme before an eased week shortened its holds, if it did: loads are reckoned
 *     from it, so that a shorter hold is no heavier
 * @param edge depth of the edge after progression
 * @param loadFactor what the written load is multiplied by
 * @param loadStep what is added to the total load after that
 * @param ramp how far an introduced grip has come, if it is still on its way
 * @param why what progression did, in order
 * @param ceiling the most that may be loaded, where the log sets a limit
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
   * Where a grip stands between its first level and the written one.
   *
   * @param fromFraction first level, as a share of the maximum
   * @param position 0 at the first level, 1 at the written one
   */
  public record Ramp(double fromFraction, double position) {}

  /**
   * The most that may be loaded after trouble.
   *
   * @param most total load
   * @param why what happened
   */
  public record Ceiling(Load most, Cause why) {}

  public Dose {
    why = List.copyOf(why);
  }

  /** Returns an exercise as it is written, on an edge. */
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

  /** Returns this dose with what led to it. */
  public Dose because(List<Derivation> chain) {
    return new Dose(scheme, whole, edge, loadFactor, loadStep, ramp, chain, ceiling);
  }

  /** Returns this dose of a grip that is still on its way, if it is. */
  public Dose onRamp(Optional<Ramp> way) {
    return new Dose(scheme, whole, edge, loadFactor, loadStep, way, why, ceiling);
  }

  /** Returns this dose with other holds and sets. */
  public Dose with(Scheme other) {
    return new Dose(other, whole, edge, loadFactor, loadStep, ramp, why, ceiling);
  }

  /** Returns this dose with shorter holds, whose loads stay those of the holds as they are now. */
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

  /** Returns this dose with other sets and what led to them. */
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
