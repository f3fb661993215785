package gripwright.planning;

import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry.Done;
import gripwright.planning.load.LoadedSteps;
import gripwright.planning.load.Prescription;
import gripwright.protocol.Hardness;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.DoneLink;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Combines a planned exercise with its log entry into the exercise as done. */
final class WorkAsDone {

  /**
   * Share of the maximum below which unplanned work is not hard, even if similar planned work is;
   * the library's own choice.
   */
  private static final double LIGHTER = 0.6;

  private final SessionExpansion expansion;
  private final HandFits fits;

  WorkAsDone(SessionExpansion expansion, HandFits fits) {
    this.expansion = expansion;
    this.fits = fits;
  }

  /** Returns the number of sets done of an exercise. */
  static int sets(ExerciseMatch match, PlannedExercise like) {
    return match
        .done()
        .map(d -> d.sets().orElse(d.setsPlanned().orElse(like.scheme().sets())))
        .orElse(0);
  }

  /**
   * Returns an exercise as done. If the maximum is unknown, it counts as hard unless it is known to
   * be light.
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
        sets == like.scheme().sets() && !like.scheme().setsUpTo()
            ? like.scheme()
            : expansion.within(like.scheme().withSetsDone(sets));
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
    boolean hard = felt || isHard(like, setup, load, place.day(), match.planned().isPresent());
    return PlannedExercise.builder(
            like.protocol(),
            setup,
            asPlanned ? scheme : scheme.mapHolds(h -> h.at(Level.total(load))),
            steps,
            setup.lifting() ? Load.ZERO : bodyMass,
            place.path())
        .order(place.order())
        .fits(fits.of(setup))
        .percentOfMax(asPlanned && sameSetup ? like.percentOfMax() : OptionalDouble.empty())
        .maximum(sameSetup ? like.maximum() : Optional.empty())
        .hard(hard)
        .rehabilitation(like.rehabilitation())
        .warmUp(like.warmUp() && !hard)
        .alternating(like.alternating() && setup.hands() != Hands.BOTH)
        .inForce(asPlanned && sameSetup && like.inForce())
        .toFailure(like.isToFailure())
        .note(like.note())
        .why(why(like, done, sets, load, match.planned().isPresent()))
        .build();
  }

  /**
   * Returns whether a load is hard relative to the maximum, or may be if that is unknown.
   *
   * @param planned true for planned work, which keeps its planned hardness
   */
  private boolean isHard(
      PlannedExercise like, Setup setup, Load load, LocalDate day, boolean planned) {
    Optional<Load> maximum = like.maximum().map(PlannedExercise.Maximum::used);
    if (maximum.isPresent() && setup.toString().equals(like.setup().toString())) {
      boolean less =
          !planned
              && load.compareTo(like.totalLoad()) < 0
              && load.compareTo(maximum.get().times(LIGHTER)) < 0;
      return (like.hard() && !less)
          || load.compareTo(maximum.get().times(Hardness.SHARE_OF_MAX)) >= 0;
    }
    boolean mayBe = like.hard() || maximum.isEmpty();
    return mayBe && !expansion.isKnownLight(setup, load, day, like);
  }

  private static List<Derivation> why(
      PlannedExercise like, Done done, int sets, Load load, boolean planned) {
    List<Derivation> why = new ArrayList<>();
    if (planned) {
      why.add(new DoneLink.Planned(like.totalLoad(), like.scheme().sets()));
    }
    why.add(new DoneLink.Done(load, sets, done.effort(), done.pain()));
    return why;
  }
}
