package gripwright.planning;

import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry.Done;
import gripwright.planning.load.Prescription;
import gripwright.protocol.Hardness;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.DoneLink;
import gripwright.schedule.LoadedSteps;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes of what an exercise was to be, and of its line in the log, what was done of it. */
final class WorkAsDone {

  /**
   * Below this share of the maximum what nobody asked for is not hard because something heavier of
   * its kind is; our own number.
   */
  private static final double LIGHTER = 0.6;

  private final SessionExpansion expansion;
  private final HandFits fits;

  WorkAsDone(SessionExpansion expansion, HandFits fits) {
    this.expansion = expansion;
    this.fits = fits;
  }

  /** Returns how many sets were done of an exercise. */
  static int sets(ExerciseMatch match, PlannedExercise like) {
    return match
        .done()
        .map(d -> d.sets().orElse(d.setsAsked().orElse(like.scheme().sets())))
        .orElse(0);
  }

  /**
   * Returns an exercise as it was done. Where nothing is known of the maximum, what is known to be
   * light is not hard, and all else may well be.
   */
  PlannedExercise of(
      PlannedExercise like, ExerciseMatch match, Prescription.Place place, Load bodyMass) {
    Done done = match.done().orElseThrow();
    int sets = sets(match, like);
    Setup setup = done.setup();
    Load load = done.load().orElse(like.totalLoad());
    boolean asPlanned = load.compareTo(like.totalLoad()) == 0;
    double share = load.kilograms() / like.totalLoad().kilograms();
    Scheme scheme =
        sets == like.scheme().sets()
            ? like.scheme()
            : expansion.within(like.scheme().withSets(sets));
    List<Load> loads =
        like.steps().stream().filter(LoadedStep::isHold).flatMap(s -> s.load().stream()).toList();
    List<LoadedStep> steps =
        LoadedSteps.of(
            scheme,
            hold -> {
              Load one = loads.get(hold % loads.size());
              boolean greatest = one.compareTo(like.totalLoad()) == 0;
              return asPlanned ? one : greatest ? load : Load.ofKilograms(one.kilograms() * share);
            });
    boolean sameSetup = setup.toString().equals(like.setup().toString());
    boolean felt = done.effort().orElse(0) >= Hardness.EFFORT;
    boolean hard = felt || isHard(like, setup, load, place.day(), match.asked().isPresent());
    return new PlannedExercise(
        place.order(),
        like.protocol(),
        setup,
        fits.of(setup),
        asPlanned ? scheme : scheme.mapHolds(h -> new Scheme.Hold(h.time(), new Level.Total(load))),
        steps,
        asPlanned && sameSetup ? like.percentOfMax() : OptionalDouble.empty(),
        sameSetup ? like.maximum() : Optional.empty(),
        setup.lifting() ? Load.ZERO : bodyMass,
        hard,
        Optional.empty(),
        like.rehabilitation(),
        Optional.empty(),
        why(like, done, sets, load, match.asked().isPresent()),
        place.path());
  }

  /**
   * Tells whether a load is hard by what is known of the maximum, or else may well be.
   *
   * @param asked true if it is what was planned, which stays as hard as it was to be
   */
  private boolean isHard(
      PlannedExercise like, Setup setup, Load load, LocalDate day, boolean asked) {
    Optional<Load> maximum = like.maximum().map(PlannedExercise.Maximum::used);
    if (maximum.isPresent() && setup.toString().equals(like.setup().toString())) {
      boolean less =
          !asked
              && load.compareTo(like.totalLoad()) < 0
              && load.compareTo(maximum.get().times(LIGHTER)) < 0;
      return (like.hard() && !less)
          || load.compareTo(maximum.get().times(Hardness.SHARE_OF_MAX)) >= 0;
    }
    boolean mayBe = like.hard() || maximum.isEmpty();
    return mayBe && !expansion.isKnownLight(setup, load, day, like);
  }

  private static List<Derivation> why(
      PlannedExercise like, Done done, int sets, Load load, boolean asked) {
    List<Derivation> why = new ArrayList<>();
    if (asked) {
      why.add(new DoneLink.Planned(like.totalLoad(), like.scheme().sets()));
    }
    why.add(new DoneLink.Done(load, sets, done.effort(), done.pain()));
    return why;
  }
}
