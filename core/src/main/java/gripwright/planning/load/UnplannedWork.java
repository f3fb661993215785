package gripwright.planning.load;

import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.log.LogEntry.Done;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.LoadedSteps;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Work that was logged and that no exercise of the week stands for, reckoned from its protocol's
 * defaults and from its line.
 */
public final class UnplannedWork {

  private final Map<String, Protocol> protocols;
  private final Prescription prescription;
  private final HandFits fits;

  /**
   * Prepares to reckon.
   *
   * @param protocols all that are known, by name
   */
  public UnplannedWork(Map<String, Protocol> protocols, Prescription prescription, HandFits fits) {
    this.protocols = protocols;
    this.prescription = prescription;
    this.fits = fits;
  }

  /**
   * Returns what the protocol would ask of the athlete on a day; without a test that gives loads,
   * what the line says was loaded, else body mass. Empty if the protocol is not known, or if a
   * weight was lifted and no load is written.
   *
   * @param path where it stands
   */
  public Optional<PlannedExercise> of(Done done, LocalDate day, ModelPath path) {
    Protocol protocol = protocols.get(done.protocol());
    if (protocol == null) {
      return Optional.empty();
    }
    Setup setup = done.setup();
    Exercise exercise =
        new Exercise(
            protocol,
            Map.of(),
            new Exercise.On(setup.grip()),
            setup.edge(),
            setup.hands(),
            setup.lifting(),
            Optional.empty());
    Dose dose = Dose.written(exercise.scheme(), setup.edge());
    return prescription
        .prescribe(
            exercise, setup.grip(), dose, new Prescription.Place(day, 1, path), new FindingList())
        .or(() -> byLine(done, exercise.scheme(), day, path));
  }

  /** Nothing is known of the maximum, so the holds may well be hard. */
  private Optional<PlannedExercise> byLine(
      Done done, Scheme scheme, LocalDate day, ModelPath path) {
    boolean lifting = done.setup().lifting();
    Load mass = lifting ? Load.ZERO : prescription.bodyMassOn(day);
    Load load = done.load().orElse(mass);
    if (load.kilograms() <= 0) {
      return Optional.empty();
    }
    LoadedSteps steps = new LoadedSteps();
    for (Scheme.Bout step : scheme.flat()) {
      if (step instanceof Scheme.Hold hold) {
        steps.hold(hold.seconds(), load);
      } else {
        steps.rest(step.seconds());
      }
    }
    return Optional.of(
        new PlannedExercise(
            1,
            done.protocol(),
            done.setup(),
            fits.of(done.setup()),
            scheme.mapHolds(h -> new Scheme.Hold(h.time(), new Level.Total(load))),
            steps.all(),
            OptionalDouble.empty(),
            Optional.empty(),
            mass,
            true,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            path));
  }
}
