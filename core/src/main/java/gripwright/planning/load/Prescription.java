package gripwright.planning.load;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.schedule.StrengthLink;
import gripwright.strength.LoadEstimate;
import gripwright.strength.OutlierTests;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns an exercise as it stands in a week into loads that this athlete can build on a day. */
public final class Prescription {

  /** How many tests a load's derivation names at most, and the share from which it does. */
  private static final int TESTS_TOLD = 4;

  private static final double LEAST_TOLD = 0.01;

  /** For how many days a failure in a test stands against a load; the library's own choice. */
  static final int RECENT_DAYS = 90;

  private final Athlete athlete;
  private final Log log;
  private final LocalDate planFrom;
  private final Map<LocalDate, StrengthMap> maps = new HashMap<>();
  private final Map<Setup, Posture> postures = new HashMap<>();
  private final IdentityHashMap<Dose, Map<List<Object>, Loading.Loaded>> loads =
      new IdentityHashMap<>();
  private final HandFindings hands;

  public Prescription(Athlete athlete, Log log, LocalDate planFrom, HandFindings hands) {
    this.athlete = athlete;
    this.log = log;
    this.planFrom = planFrom;
    this.hands = hands;
  }

  /** Returns the body mass that loads on a day are reckoned with. */
  public Load bodyMassOn(LocalDate day) {
    return log.bodyMassOn(day).orElse(athlete.bodyMass());
  }

  /**
   * Returns what is known of the athlete's strength on a day. Between tests the knowledge stays as
   * it was on the later of the plan's first day and the last test, so that a plan's loads do not
   * sink while its weeks pass.
   */
  public StrengthMap strengthOn(LocalDate day) {
    LocalDate known =
        log.tests().stream()
            .map(StrengthTest::date)
            .filter(d -> !d.isAfter(day) && d.isAfter(planFrom))
            .reduce((first, second) -> second)
            .orElse(planFrom.isAfter(day) ? day : planFrom);
    return maps.computeIfAbsent(
        known, date -> StrengthMap.of(supported(date), this::postureOf, date));
  }

  /** Returns the tests up to a day that may give loads: one that stands alone too high may not. */
  private List<StrengthTest> supported(LocalDate day) {
    return new OutlierTests(this::postureOf)
        .supported(log.tests().stream().filter(test -> !test.date().isAfter(day)).toList());
  }

  /**
   * Where an exercise is trained.
   *
   * @param day the day
   * @param order position among the session's exercises, from 1
   * @param path where it stands
   */
  public record Place(LocalDate day, int order, ModelPath path) {}

  /**
   * Prescribes an exercise.
   *
   * @param exercise the line of the plan
   * @param grip the grip, chosen where the line leaves a choice
   * @param dose what progression made of it
   * @param place where it is trained
   * @param findings what can't be met is added here
   * @return empty if no load can be given
   */
  public Optional<PlannedExercise> prescribe(
      Exercise exercise, Grip grip, Dose dose, Place place, FindingList findings) {
    LocalDate day = place.day();
    ModelPath path = place.path();
    Setup setup = exercise.setup(grip).withEdge(dose.edge());
    if (!athlete.equipment().has(setup.edge())) {
      findings.add(
          Finding.error("plan.edge-missing", path)
              .with("edge", setup.edge())
              .with("owned", owned()));
      return Optional.empty();
    }
    Optional<Finding> outOfReach = hands.outOfReach(setup, path);
    if (outOfReach.isPresent()) {
      findings.add(outOfReach.get());
      return Optional.empty();
    }
    StrengthMap strength = strengthOn(day);
    Optional<StrengthMap.Estimate> estimate = strength.maximum(setup);
    if (estimate.isEmpty() && needsMaximum(exercise, dose)) {
      findings.add(UntestedSetup.of(setup, log, day, path));
      return Optional.empty();
    }
    estimate
        .filter(e -> !e.tested())
        .ifPresent(
            e ->
                findings.add(
                    Finding.advice("plan.load-modelled", path)
                        .with("setup", setup)
                        .with("from", e.weightiest().setup())));
    Load mass = setup.lifting() ? Load.ZERO : bodyMassOn(day);
    Loading.Loaded loaded = loaded(setup, dose, mass, strength, failures(setup, dose, day));
    loaded.misses().forEach(miss -> findings.add(miss.finding().at(path), miss.by()));
    if (loaded.steps().isEmpty()) {
      return Optional.empty();
    }
    if (loaded.hard()) {
      hands.notForced(setup, path).ifPresent(findings::add);
    }
    return Optional.of(
        new PlannedExercise(
            place.order(),
            exercise.protocol().name(),
            setup,
            hands.fits().of(setup),
            dose.scheme(),
            loaded.steps(),
            loaded.percentOfMax(),
            estimate.map(e -> new Maximum(e.load().low(), e.load().best(), e.load().high())),
            mass,
            loaded.hard(),
            Optional.empty(),
            exercise.rehabilitation(),
            Optional.empty(),
            loaded.why(),
            path));
  }

  /** Returns the loads of a dose, which is asked for on many days while the same is known. */
  private Loading.Loaded loaded(
      Setup setup,
      Dose dose,
      Load mass,
      StrengthMap strength,
      List<StrengthTest.ToFailure> failures) {
    return loads
        .computeIfAbsent(dose, d -> new HashMap<>())
        .computeIfAbsent(
            List.of(strength, mass.kilograms(), failures),
            known -> {
              List<Derivation> why = new ArrayList<>();
              strength.maximum(setup).ifPresent(estimate -> explain(estimate, why));
              return new Loading(
                      athlete.equipment(), setup, dose, mass, strength.curve(setup), failures)
                  .load(why);
            });
  }

  private Posture postureOf(Setup setup) {
    return postures.computeIfAbsent(setup, s -> Posture.of(hands.fits().of(s).values()));
  }

  private String owned() {
    Set<String> edges = new LinkedHashSet<>();
    athlete.equipment().edges().forEach(e -> edges.add(e.toString()));
    return String.join(", ", edges);
  }

  private static boolean needsMaximum(Exercise exercise, Dose dose) {
    return dose.ramp().isPresent()
        || exercise.scheme().written().stream()
            .map(Scheme.Hold::level)
            .anyMatch(level -> level instanceof Level.OfMax || level.byTime());
  }

  private static void explain(StrengthMap.Estimate estimate, List<Derivation> why) {
    int told = 0;
    for (StrengthMap.Weight weight : estimate.basis()) {
      if (told == TESTS_TOLD || Math.abs(weight.share()) < LEAST_TOLD) {
        break;
      }
      StrengthTest test = weight.test();
      why.add(
          new StrengthLink.TestShare(
              weight.share(),
              test.effort().map(e -> new StrengthLink.Held(e.load(), e.seconds())),
              test.setup(),
              test.date()));
      told++;
    }
    LoadEstimate load = estimate.load();
    why.add(
        new StrengthLink.BestEstimate(
            load.best(), estimate.tested(), told, estimate.basis().size() - told));
    why.add(new StrengthLink.UpperBound(load.high()));
    why.add(new StrengthLink.LowerBound(load.low()));
  }

  /** Returns what failed in recent tests of this very setup, where a level speaks of failure. */
  private List<StrengthTest.ToFailure> failures(Setup setup, Dose dose, LocalDate day) {
    boolean matters =
        dose.scheme().written().stream().map(Scheme.Hold::level).anyMatch(Level::byTime);
    if (!matters) {
      return List.of();
    }
    return log.tests().stream()
        .filter(test -> !test.date().isAfter(day))
        .filter(test -> test.date().isAfter(day.minusDays(RECENT_DAYS)))
        .filter(test -> test.setup().equals(setup))
        .map(StrengthTest::result)
        .filter(StrengthTest.ToFailure.class::isInstance)
        .map(StrengthTest.ToFailure.class::cast)
        .toList();
  }
}
