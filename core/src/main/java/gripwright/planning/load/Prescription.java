package gripwright.planning.load;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.KnownLight;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the exercises of a week into loads that this athlete can build on a day. */
public final class Prescription {

  /** Loads that differ by less are equal, in kg. */
  private static final double TOLERANCE = 1e-9;

  private final Athlete athlete;
  private final Log log;
  private final LocalDate planFrom;
  private final Map<Known, StrengthMap> maps = new HashMap<>();
  private final Map<Setup, Posture> postures = new HashMap<>();
  private final IdentityHashMap<Dose, Map<List<Object>, Loading.Loaded>> loads =
      new IdentityHashMap<>();
  private final HandFindings hands;
  private final UsableTests usable;
  private final BelievedMaximum believed;

  public Prescription(Athlete athlete, Log log, LocalDate planFrom, HandFindings hands) {
    this.athlete = athlete;
    this.log = log;
    this.planFrom = planFrom;
    this.hands = hands;
    this.usable =
        new UsableTests(
            log.tests(),
            this::postureOf,
            this::bodyMassOn,
            day -> KnownLight.isUnder16(athlete, day));
    this.believed =
        new BelievedMaximum(
            log,
            planFrom,
            athlete.equipment().added().map(Equipment.Steps::step).orElse(Load.ZERO),
            new Knowledge());
  }

  /** Returns the body mass used for the loads of a day. */
  public Load bodyMassOn(LocalDate day) {
    return log.bodyMassOn(day).orElse(athlete.bodyMass());
  }

  /**
   * Returns the athlete's known strength on a day. Between tests it stays as it was on the later of
   * the plan's first day and the last test, so that a plan's loads don't fall as its weeks pass.
   */
  public StrengthMap strengthOn(LocalDate day) {
    return strengthOn(day, Optional.empty());
  }

  /**
   * Returns the athlete's known strength on a day, for fingers that were injured.
   *
   * @param hurt tests before this day count with a reduced load
   */
  private StrengthMap strengthOn(LocalDate day, Optional<LocalDate> hurt) {
    LocalDate known = knownOn(day);
    return maps.computeIfAbsent(
        new Known(known, hurt),
        key -> StrengthMap.of(afterInjury(usable.on(known), hurt), this::postureOf, known));
  }

  /**
   * Returns the latest test of exactly a setup, held for 7 s, that a share of a test may refer to:
   * not from before an injury, and not more than six months older than what is known.
   */
  private Optional<StrengthTest> exactTest(Setup setup, LocalDate day, Optional<LocalDate> hurt) {
    LocalDate known = knownOn(day);
    return usable.on(known).stream()
        .filter(test -> test.setup().equals(setup) && test.heldForReference())
        .filter(test -> !isBefore(test, hurt))
        .filter(test -> !test.date().isBefore(known.minusMonths(UsableTests.OLD_MONTHS)))
        .max(Comparator.comparing(StrengthTest::date));
  }

  /** Returns the day before which tests of a setup count only in part, if any do. */
  private Optional<LocalDate> hurt(Setup setup, LocalDate day, boolean rehabilitation) {
    return rehabilitation
        ? Optional.empty()
        : AfterInjury.testsBefore(athlete, setup, day, planFrom);
  }

  /**
   * The inputs of a strength map.
   *
   * @param day the day on which the tests were known
   * @param hurt tests before this day count with a reduced load
   */
  private record Known(LocalDate day, Optional<LocalDate> hurt) {}

  private final class Knowledge implements BelievedMaximum.Knowledge {
    @Override
    public List<StrengthTest> tests(LocalDate day) {
      return usable.on(knownOn(day));
    }

    @Override
    public StrengthMap strength(Setup setup, LocalDate day, boolean rehabilitation) {
      return strengthOn(day, hurt(setup, day, rehabilitation));
    }

    @Override
    public double rise(Setup setup, LocalDate day, boolean rehabilitation, double ofPlan) {
      return hurt(setup, day, rehabilitation).isPresent()
          ? Math.min(ofPlan, AfterInjury.RISE)
          : ofPlan;
    }

    @Override
    public LocalDate since(LocalDate day) {
      return knownOn(day);
    }
  }

  /**
   * Returns whether the load of a setup still follows a higher test on a day.
   *
   * @param rise the weeks in which it may
   */
  public boolean follows(Setup setup, LocalDate day, boolean rehabilitation, Rise rise) {
    return believed.on(setup, day, rehabilitation, rise).follows().isPresent();
  }

  private static List<StrengthTest> afterInjury(
      List<StrengthTest> tests, Optional<LocalDate> hurt) {
    return tests.stream()
        .map(test -> isBefore(test, hurt) ? test.atShare(AfterInjury.SHARE) : test)
        .toList();
  }

  private static boolean isBefore(StrengthTest test, Optional<LocalDate> hurt) {
    return hurt.filter(test.date()::isBefore).isPresent();
  }

  private LocalDate knownOn(LocalDate day) {
    List<StrengthTest> tests = log.tests();
    for (int i = tests.size() - 1; i >= 0; i--) {
      LocalDate tested = tests.get(i).date();
      if (!tested.isAfter(day)) {
        if (tested.isAfter(planFrom)) {
          return tested;
        }
        break; // older tests are no later than the plan's start either
      }
    }
    return planFrom.isAfter(day) ? day : planFrom;
  }

  /**
   * Where an exercise is trained.
   *
   * @param day the day
   * @param order position among the session's exercises, from 1
   * @param path place in the plan
   * @param rise the weeks in which its load may follow a higher test
   * @param planned true if it is planned for the time at {@code at}; false for logged work, which
   *     may have been at any place
   * @param at name of the place, if there is one
   */
  public record Place(
      LocalDate day, int order, ModelPath path, Rise rise, boolean planned, Optional<String> at) {

    /** Returns the place of a logged exercise, whose load is fixed and follows no test. */
    public Place(LocalDate day, int order, ModelPath path) {
      this(day, order, path, Rise.of(0), false, Optional.empty());
    }
  }

  /**
   * Prescribes an exercise.
   *
   * @param exercise the line of the plan
   * @param grip the grip, chosen if the line leaves a choice
   * @param dose the exercise after progression
   * @param place where it is trained
   * @param findings violated limits are added here
   * @return empty if no load can be given
   */
  public Optional<PlannedExercise> prescribe(
      Exercise exercise, Grip grip, Dose dose, Place place, FindingList findings) {
    LocalDate day = place.day();
    ModelPath path = place.path();
    Setup setup = exercise.setup(grip).withEdge(dose.edge());
    Equipment equipment =
        place.planned() ? athlete.equipmentAt(place.at()) : athlete.equipmentWith(setup.edge());
    if (!equipment.has(setup.edge())) {
      Finding missing =
          Finding.error("plan.edge-missing", path)
              .with("edge", setup.edge())
              .with("owned", owned(equipment));
      findings.add(place.at().map(name -> missing.with("place", name)).orElse(missing));
      return Optional.empty();
    }
    Optional<Finding> outOfReach = hands.outOfReach(setup, path);
    if (outOfReach.isPresent()) {
      findings.add(outOfReach.get());
      return Optional.empty();
    }
    boolean rehabilitation = exercise.rehabilitation().isPresent();
    Optional<LocalDate> hurt = hurt(setup, day, rehabilitation);
    StrengthMap strength = strengthOn(day, hurt);
    Optional<StrengthMap.Estimate> estimate = strength.maximum(setup);
    Optional<Load> light = knownLight(setup, day, rehabilitation);
    boolean testable = !KnownLight.forbidsTests(athlete, setup, day);
    if (estimate.isEmpty() && UntestedSetup.needsMaximum(dose, light)) {
      findings.add(
          testable
              ? UntestedSetup.of(
                  setup,
                  usable.on(knownOn(day)),
                  UntestedSetup.firstAfter(day, setup, log.tests()),
                  UntestedSetup.small(dose, light),
                  path)
              : UntestedSetup.withoutTest(setup, light, path));
      return Optional.empty();
    }
    Optional<StrengthTest> exact =
        UntestedSetup.needsTest(dose) ? exactTest(setup, day, hurt) : Optional.empty();
    if (exact.isEmpty() && UntestedSetup.needsTest(dose)) {
      findings.add(
          testable
              ? Finding.error("plan.no-test", path).with("setup", setup).with("exact", setup)
              : UntestedSetup.withoutTest(setup, light, path));
      return Optional.empty();
    }
    estimate
        .filter(e -> !e.tested())
        .ifPresent(e -> findings.add(modelled(setup, e.weightiest().setup(), testable, path)));
    estimate
        .map(StrengthMap.Estimate::weightiest)
        .filter(test -> isBefore(test, hurt))
        .ifPresent(test -> findings.add(AfterInjury.finding(setup, test, path)));
    Load mass = setup.lifting() ? Load.ZERO : bodyMassOn(day);
    BelievedMaximum.Believed counts = believed.on(setup, day, rehabilitation, place.rise());
    Loading.Loaded loaded =
        loaded(
            new Held(setup, equipment),
            dose,
            new Loading.Body(mass, light, counts, exact),
            strength,
            RecentFailures.of(log, setup, dose, day),
            hurt);
    loaded.violations().forEach(each -> findings.add(each.finding().at(path), each.magnitude()));
    if (loaded.steps().isEmpty()) {
      return Optional.empty();
    }
    if (loaded.hard()) {
      hands.notForced(setup, path).ifPresent(findings::add);
    }
    return Optional.of(
        PlannedExercise.builder(
                exercise.protocol().name(), setup, dose.scheme(), loaded.steps(), mass, path)
            .order(place.order())
            .fits(hands.fits().of(setup))
            .percentOfMax(loaded.percentOfMax())
            .maximum(
                estimate.map(
                    e ->
                        new Maximum(
                            e.load().low().times(counts.share()),
                            e.load().best(),
                            e.load().high())))
            .test(exact.map(test -> test.result().greatest()))
            .hard(loaded.hard())
            .rehabilitation(exercise.rehabilitation())
            .warmUp(exercise.warmUp())
            .alternating(exercise.alternating())
            .inForce(isInForce(dose, estimate, exact))
            .note(exercise.note())
            .why(loaded.why())
            .build());
  }

  /**
   * Returns the load of a test to failure that can be built, if it is known on a day.
   *
   * @param level a share of the maximum or of a test, a load, or body mass
   * @param place where it is tested
   */
  public Optional<Load> loadOf(Setup setup, Level level, Place place) {
    LocalDate day = place.day();
    Optional<LocalDate> hurt = hurt(setup, day, false);
    Load mass = setup.lifting() ? Load.ZERO : bodyMassOn(day);
    double share = believed.on(setup, day, false, place.rise()).share();
    Optional<Load> wanted =
        level.accept(
            new TestLoad(
                strengthOn(day, hurt).maximum(setup).map(e -> e.load().low().times(share)),
                exactTest(setup, day, hurt).map(test -> test.result().greatest()),
                mass));
    return wanted.flatMap(load -> athlete.equipmentAt(place.at()).greatestUpTo(load, mass));
  }

  /** Returns whether a load follows from a test in N, and not from kilograms that are written. */
  private static boolean isInForce(
      Dose dose, Optional<StrengthMap.Estimate> estimate, Optional<StrengthTest> exact) {
    boolean byStrength =
        dose.scheme().levels().stream()
            .anyMatch(
                level ->
                    level.byTime()
                        || level instanceof Level.OfMax
                        || level instanceof Level.OfTest);
    return byStrength
        && exact
            .or(() -> estimate.map(StrengthMap.Estimate::weightiest))
            .filter(StrengthTest::inForce)
            .isPresent();
  }

  /**
   * Returns an exercise without a load in the form that rules check, so that one breach never hides
   * another; empty if a hand can't take the grip.
   */
  public Optional<PlannedExercise> unloaded(Exercise exercise, Grip grip, Dose dose, Place place) {
    Setup setup = exercise.setup(grip).withEdge(dose.edge());
    if (hands.outOfReach(setup, place.path()).isPresent()) {
      return Optional.empty();
    }
    Load mass = setup.lifting() ? Load.ZERO : bodyMassOn(place.day());
    Optional<Load> light = knownLight(setup, place.day(), exercise.rehabilitation().isPresent());
    return Optional.of(
        new Unloaded(light, mass).of(exercise, setup, dose, hands.fits().of(setup), place));
  }

  /** Returns the loads of a dose; they are kept, since many days share the same knowledge. */
  private Loading.Loaded loaded(
      Held held,
      Dose dose,
      Loading.Body body,
      StrengthMap strength,
      List<StrengthTest.ToFailure> failures,
      Optional<LocalDate> hurt) {
    return loads
        .computeIfAbsent(dose, d -> new HashMap<>())
        .computeIfAbsent(
            List.of(strength, body, failures, held.equipment()),
            known -> {
              Setup setup = held.setup();
              List<Derivation> why = new ArrayList<>();
              strength
                  .maximum(setup)
                  .ifPresent(
                      estimate ->
                          why.addAll(KnownStrength.why(estimate, hurt, body.believed(), log)));
              return new Loading(
                      held.equipment(), setup, dose, body, strength.curve(setup), failures)
                  .load(why);
            });
  }

  private Posture postureOf(Setup setup) {
    return postures.computeIfAbsent(setup, s -> Posture.of(hands.fits().of(s).values()));
  }

  /**
   * What is held, and what its load is built with.
   *
   * @param setup grip, edge and hands
   * @param equipment the edges and weights
   */
  private record Held(Setup setup, Equipment equipment) {}

  private static String owned(Equipment equipment) {
    Set<String> edges = new LinkedHashSet<>();
    equipment.edges().forEach(e -> edges.add(e.toString()));
    return String.join(", ", edges);
  }

  /**
   * Returns the greatest total load that is known to be light on a day without a test.
   *
   * @param rehabilitation true if a practitioner's plan decides, so that the limits for adults
   *     apply
   */
  Optional<Load> knownLight(Setup setup, LocalDate day, boolean rehabilitation) {
    boolean restricted = !rehabilitation && KnownLight.restricted(athlete, setup, day);
    return KnownLight.most(setup, bodyMassOn(day), restricted);
  }

  /**
   * Returns whether a total load is known to be light on a day without a test.
   *
   * @param rehabilitation true if a practitioner's plan decides, so that the limits for adults
   *     apply
   */
  public boolean isKnownLight(Setup setup, Load load, LocalDate day, boolean rehabilitation) {
    return knownLight(setup, day, rehabilitation)
        .filter(most -> load.kilograms() <= most.kilograms() + TOLERANCE)
        .isPresent();
  }

  private static Finding modelled(Setup setup, Setup from, boolean testable, ModelPath path) {
    Finding finding =
        Finding.advice("plan.load-modelled", path).with("setup", setup).with("from", from);
    return testable ? finding : finding.with("untestable", setup);
  }
}
