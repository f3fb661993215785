package gripwright.planning.load;

import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.log.LogEntry.Done;
import gripwright.plan.Exercise;
import gripwright.protocol.Argument;
import gripwright.protocol.Hardness;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * Logged work that matches no exercise of the week, calculated from the defaults of its protocol
 * and from its line.
 */
public final class UnplannedWork {

  private final Map<String, Protocol> protocols;
  private final Prescription prescription;
  private final HandFits fits;

  /**
   * Prepares the calculation.
   *
   * @param protocols all known protocols, by name
   */
  public UnplannedWork(Map<String, Protocol> protocols, Prescription prescription, HandFits fits) {
    this.protocols = protocols;
    this.prescription = prescription;
    this.fits = fits;
  }

  /**
   * Returns the protocol's plan for the athlete on a day. Without a test that gives loads, the
   * logged load is used, otherwise body mass. Empty if the protocol is unknown, or if a weight was
   * lifted and no load is written.
   *
   * @param with parameters that replace the protocol's defaults; empty if none are known
   * @param path place of the work
   */
  public Optional<PlannedExercise> of(
      Done done, Map<String, Argument> with, LocalDate day, ModelPath path) {
    Protocol protocol = protocols.get(done.protocol());
    if (protocol == null) {
      return Optional.empty();
    }
    Setup setup = done.setup();
    Exercise exercise =
        Exercise.builder(protocol, new Exercise.On(setup.grip()), setup.edge())
            .with(with)
            .hands(setup.hands())
            .lifting(setup.lifting())
            .build();
    Dose dose = Dose.written(exercise.scheme(), setup.edge());
    return prescription
        .prescribe(
            exercise, setup.grip(), dose, new Prescription.Place(day, 1, path), new FindingList())
        .or(() -> byLine(done, exercise.scheme(), day, path));
  }

  /** The maximum is unknown, so work that isn't known to be light may be hard. */
  private Optional<PlannedExercise> byLine(
      Done done, Scheme scheme, LocalDate day, ModelPath path) {
    boolean lifting = done.setup().lifting();
    Load mass = lifting ? Load.ZERO : prescription.bodyMassOn(day);
    Load load = done.load().orElse(mass);
    if (load.kilograms() <= 0) {
      return Optional.empty();
    }
    boolean light = prescription.isKnownLight(done.setup(), load, day, false);
    return Optional.of(
        PlannedExercise.builder(
                done.protocol(),
                done.setup(),
                scheme.mapHolds(h -> h.at(Level.total(load))),
                LoadedSteps.of(scheme, hold -> load),
                mass,
                path)
            .fits(fits.of(done.setup()))
            .hard(!light || scheme.written().stream().anyMatch(Hardness::isWritten))
            .build());
  }
}
