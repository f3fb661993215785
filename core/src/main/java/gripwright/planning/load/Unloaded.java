package gripwright.planning.load;

import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.plan.Exercise;
import gripwright.protocol.Hardness;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An exercise without a load, in the form that rules check: its written level, edge, grip and times
 * count, and its loads are a little above what is known to be light. It is never trained.
 *
 * @param light greatest load that is known to be light, if any is
 * @param mass load on the edge without added weight
 */
record Unloaded(Optional<Load> light, Load mass) {

  /** Added to a load that is known to be light; the load itself if none is. */
  private static final Load LITTLE = Load.ofKilograms(0.1);

  /** Returns the stand-in for a line. */
  PlannedExercise of(
      Exercise line, Setup setup, Dose dose, Map<Side, GripFit> fits, Prescription.Place place) {
    Load load = light.orElse(Load.ZERO).plus(LITTLE);
    List<Scheme.Hold> holds = dose.scheme().holds();
    OptionalDouble percent = percent(dose);
    boolean hard =
        percent.orElse(0) >= Hardness.SHARE_OF_MAX * 100
            || holds.stream().anyMatch(Hardness::isWritten);
    return PlannedExercise.builder(
            line.protocol().name(),
            setup,
            dose.scheme(),
            LoadedSteps.of(dose.scheme(), i -> written(holds.get(i).level()).orElse(load)),
            mass,
            place.path())
        .order(place.order())
        .fits(fits)
        .percentOfMax(percent)
        .hard(hard)
        .rehabilitation(line.rehabilitation())
        .warmUp(line.warmUp() && !hard)
        .alternating(line.alternating())
        .note(line.note())
        .build();
  }

  private Optional<Load> written(Level level) {
    if (level instanceof Level.Total total) {
      return Optional.of(total.load());
    }
    return level instanceof Level.BodyMass body
        ? Optional.of(mass.plus(body.added()))
        : Optional.empty();
  }

  /** Returns the level of all holds, if it is one share of the maximum. */
  private static OptionalDouble percent(Dose dose) {
    List<Level> levels =
        dose.scheme().written().stream().map(Scheme.Hold::level).distinct().toList();
    if (levels.size() != 1 || !(levels.get(0) instanceof Level.OfMax share)) {
      return OptionalDouble.empty();
    }
    double written = share.fraction() * dose.loadFactor();
    if (dose.ramp().isEmpty()) {
      return OptionalDouble.of(written * 100);
    }
    Dose.Ramp ramp = dose.ramp().get();
    double first = Math.min(written, ramp.fromFraction());
    return OptionalDouble.of((first + (written - first) * ramp.position()) * 100);
  }
}
