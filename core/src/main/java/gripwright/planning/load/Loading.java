package gripwright.planning.load;

import gripwright.athlete.Equipment;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.protocol.Hardness;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Derivation;
import gripwright.schedule.HoldChain;
import gripwright.schedule.LoadLink;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.StrengthLink;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Calculates the loads of an exercise's holds, independent of its day and place. */
final class Loading {

  /** Placeholder for the place of the exercise, which the caller knows. */
  private static final ModelPath NOWHERE = ModelPath.of("exercise", "");

  private static final double TOLERANCE = 1e-9;

  /**
   * Highest share of the maximum that becomes a load known to be light if there is no test; our own
   * number.
   */
  static final double LIGHT_SHARE = 0.4;

  private final Equipment equipment;
  private final Setup setup;
  private final Dose dose;
  private final Load mass;
  private final Optional<Load> light;
  private final double believed;
  private final Optional<StrengthTest> tested;
  private final Optional<ForceTime> strength;
  private final Optional<Double> maximum;
  private final List<StrengthTest.ToFailure> failures;
  private final List<Violation> violations = new ArrayList<>();
  private final Set<Double> percents = new LinkedHashSet<>();
  private boolean hard;

  /**
   * Prepares the calculation.
   *
   * @param body load at body mass, and what is known to be light
   * @param strength the force-time curve, if the setup's maximum is known
   * @param failures recent tests of the setup to failure
   */
  Loading(
      Equipment equipment,
      Setup setup,
      Dose dose,
      Body body,
      Optional<ForceTime> strength,
      List<StrengthTest.ToFailure> failures) {
    this.equipment = equipment;
    this.setup = setup;
    this.dose = dose;
    this.mass = body.mass();
    this.light = body.light();
    this.believed = body.believed().share();
    this.tested = body.tested();
    this.strength = strength;
    this.maximum = strength.map(curve -> low(curve, ForceTime.REFERENCE_SECONDS));
    this.failures = failures;
  }

  /**
   * Loads that depend on an athlete's body mass on a day.
   *
   * @param mass load on the edge without added weight; none if a weight is lifted
   * @param light greatest total load that is known to be light without a test, if any is
   * @param believed the part of the maximum's lower bound that counts
   * @param tested the latest valid test of exactly the setup, if there is one
   */
  record Body(
      Load mass,
      Optional<Load> light,
      BelievedMaximum.Believed believed,
      Optional<StrengthTest> tested) {}

  /**
   * A violated limit.
   *
   * @param finding the finding, without its place
   * @param magnitude size of the violation; of several in one line, the largest is reported
   */
  record Violation(Finding finding, double magnitude) {}

  /**
   * The loads of an exercise.
   *
   * @param steps holds with their loads, and rests; empty if no load can be given
   * @param percentOfMax the level of all holds, if it is the same
   * @param hard true if a hold is hard
   * @param why derivation of the load of the first hold
   * @param violations violated limits
   */
  record Loaded(
      List<LoadedStep> steps,
      OptionalDouble percentOfMax,
      boolean hard,
      List<Derivation> why,
      List<Violation> violations) {

    Loaded {
      steps = List.copyOf(steps);
      why = List.copyOf(why);
      violations = List.copyOf(violations);
    }
  }

  /**
   * Returns the loads.
   *
   * @param known how the maximum is known
   */
  Loaded load(List<Derivation> known) {
    Steps steps = new Steps(known);
    for (Scheme.Bout bout : dose.scheme().flat()) {
      if (!bout.accept(steps)) {
        return new Loaded(List.of(), OptionalDouble.empty(), hard, steps.why, violations);
      }
    }
    hard |= isHardInARow(steps.loaded.all());
    OptionalDouble percent =
        percents.size() == 1
            ? OptionalDouble.of(percents.iterator().next())
            : OptionalDouble.empty();
    return new Loaded(steps.loaded.all(), percent, hard, steps.why, violations);
  }

  /** Adds holds with loads and rests in order; returns whether every hold got a load. */
  private final class Steps implements Scheme.Bout.Visitor<Boolean> {
    private final LoadedSteps loaded = new LoadedSteps();
    private final List<Derivation> why;
    private final Iterator<Scheme.Hold> whole =
        dose.whole().orElse(dose.scheme()).holds().iterator();
    private boolean explained;
    private Scheme.@Nullable Hold lastHold;
    private Scheme.@Nullable Hold lastWhole;
    private Optional<Load> lastLoad = Optional.empty();

    Steps(List<Derivation> known) {
      why = new ArrayList<>(known);
    }

    @Override
    public Boolean hold(Scheme.Hold hold) {
      Scheme.Hold wholeHold = whole.next();
      if (!hold.equals(lastHold) || !wholeHold.equals(lastWhole)) {
        lastLoad = loadOf(hold, wholeHold, explained ? new ArrayList<>() : why);
        lastHold = hold;
        lastWhole = wholeHold;
        explained |= lastLoad.isPresent();
      }
      lastLoad.ifPresent(l -> loaded.hold(hold, l));
      return lastLoad.isPresent();
    }

    @Override
    public Boolean rest(Scheme.Rest rest) {
      loaded.rest(rest.seconds());
      return true;
    }
  }

  /** Loads a hold as if it had its full length before easing. */
  private Optional<Load> loadOf(Scheme.Hold hold, Scheme.Hold whole, List<Derivation> why) {
    Optional<Double> written = written(whole, why);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    why.addAll(dose.why());
    double wanted = written.get() * dose.loadFactor() + dose.loadStep().kilograms();
    if (dose.ramp().isPresent() && maximum.isPresent()) {
      wanted = ramped(wanted, dose.ramp().get(), maximum.get(), why);
    }
    if (maximum.isEmpty() && hold.level() instanceof Level.OfMax) {
      wanted = Math.min(wanted, light.orElseThrow().kilograms());
    }
    Optional<Dose.Ceiling> ceiling = ceiling(wanted);
    double allowed = ceiling.map(c -> c.most().kilograms()).orElse(wanted);
    if (isShare(hold.level()) && maximum.isPresent()) {
      percents.add(allowed / maximum.get() * 100);
    }
    wanted = Math.min(allowed, capped(hold, wanted));
    ceiling.ifPresent(c -> why.add(new LoadLink.Limited(c.most(), c.why())));
    why.add(new LoadLink.Wanted(wanted));
    return built(hold, wanted, why);
  }

  private static boolean isShare(Level level) {
    return level instanceof Level.OfMax || level instanceof Level.OfTest;
  }

  /** Returns the limit of the log if the load that would be built is above it. */
  private Optional<Dose.Ceiling> ceiling(double wanted) {
    return dose.ceiling()
        .filter(
            c ->
                equipment
                    .greatestUpTo(Load.ofKilograms(wanted), mass)
                    .filter(built -> built.kilograms() > c.most().kilograms() + TOLERANCE)
                    .isPresent());
  }

  /** Returns the load of the written level, in kg; none if the force-time curve ends before. */
  private Optional<Double> written(Scheme.Hold hold, List<Derivation> why) {
    return hold.level().accept(new WrittenLoad(hold, why));
  }

  private final class WrittenLoad implements Level.Visitor<Optional<Double>> {
    private final Scheme.Hold hold;
    private final List<Derivation> why;

    WrittenLoad(Scheme.Hold hold, List<Derivation> why) {
      this.hold = hold;
      this.why = why;
    }

    @Override
    public Optional<Double> total(Level.Total level) {
      why.add(new LoadLink.WrittenTotal(level.load()));
      return Optional.of(level.load().kilograms());
    }

    @Override
    public Optional<Double> bodyMass(Level.BodyMass level) {
      why.add(new LoadLink.WrittenAgainstBodyMass(level.added()));
      return Optional.of(mass.kilograms() + level.added().kilograms());
    }

    @Override
    public Optional<Double> ofTest(Level.OfTest level) {
      StrengthTest test = tested.orElseThrow();
      Load load = test.result().greatest();
      why.add(new LoadLink.WrittenShareOfTest(level.fraction(), load, test.date(), test.inForce()));
      return Optional.of(load.kilograms() * believed * level.fraction());
    }

    @Override
    public Optional<Double> ofMax(Level.OfMax level) {
      why.add(new LoadLink.WrittenShare(level.fraction()));
      if (maximum.isPresent()) {
        return Optional.of(maximum.get() * level.fraction());
      }
      Load most = light.orElseThrow();
      Load load = most.times(level.fraction() / LIGHT_SHARE);
      why.add(new LoadLink.KnownLight(most));
      violation(
          Finding.advice("plan.level-light", NOWHERE)
              .with("setup", setup)
              .with("level", level)
              .with("load", equipment.greatestUpTo(load, mass).orElse(UntestedSetup.rounded(load)))
              .with("most", UntestedSetup.rounded(most)),
          level.fraction());
      return Optional.of(load.kilograms());
    }

    @Override
    public Optional<Double> reserve(Level.Reserve level) {
      return heldFor(hold.seconds() + level.time().toNanos() / 1e9, level);
    }

    @Override
    public Optional<Double> effort(Level.Effort level) {
      return heldFor(hold.seconds() * 10 / level.outOfTen(), level);
    }

    /** Returns the load that can be held for a time. */
    private Optional<Double> heldFor(double seconds, Level level) {
      if (!ForceTime.inRange(seconds)) {
        violation(
            Finding.error("plan.hold-range", NOWHERE)
                .with("level", level)
                .with("hold", Numbers.plain(hold.seconds(), 1) + " s")
                .with("needed", Numbers.plain(seconds, 1) + " s"),
            0);
        return Optional.empty();
      }
      why.add(new LoadLink.WrittenByTime(level, seconds));
      return strength.map(curve -> notAboveAFailure(low(curve, seconds), seconds, why));
    }
  }

  /**
   * A load that failed sooner in a recent test is not prescribed for longer, whatever a curve
   * gives.
   */
  private double notAboveAFailure(double wanted, double seconds, List<Derivation> why) {
    OptionalDouble failed = failedWithin(seconds);
    if (failed.isEmpty() || failed.getAsDouble() >= wanted) {
      return wanted;
    }
    why.add(
        new StrengthLink.FailedBefore(
            Load.ofKilograms(failed.getAsDouble()), Load.ofKilograms(wanted), RecentFailures.DAYS));
    return failed.getAsDouble();
  }

  private double ramped(double written, Dose.Ramp ramp, double max, List<Derivation> why) {
    double first = Math.min(written, max * ramp.fromFraction());
    double now = first + (written - first) * ramp.position();
    why.add(new LoadLink.Introduced(now / max, ramp.fromFraction()));
    return now;
  }

  /**
   * A load above the maximum is an error, except for a reserve or an effort, which may exceed it.
   */
  private double capped(Scheme.Hold hold, double wanted) {
    boolean mayExceed = hold.level().byTime();
    double most = most(hold.level());
    if (mayExceed || maximum.isEmpty() || wanted <= most * (1 + TOLERANCE)) {
      return wanted;
    }
    violation(
        Finding.error("plan.level-over-max", NOWHERE)
            .with("setup", setup)
            .with("percent", Numbers.plain(wanted / maximum.get() * 100, 1) + " %")
            .with("maximum", Load.ofKilograms(maximum.get())),
        wanted / maximum.get());
    return maximum.get();
  }

  /**
   * Returns the greatest load of a level, in kg: the maximum, or the test of which it is a share.
   */
  private double most(Level level) {
    double most = maximum.orElse(Double.POSITIVE_INFINITY);
    return level instanceof Level.OfTest && tested.isPresent()
        ? Math.max(most, tested.get().result().greatest().kilograms() * believed)
        : most;
  }

  private Optional<Load> built(Scheme.Hold hold, double wanted, List<Derivation> why) {
    Optional<Load> total = equipment.greatestUpTo(Load.ofKilograms(wanted), mass);
    if (total.isEmpty()) {
      Optional<Load> least = equipment.least(mass);
      violation(
          least.isEmpty()
              ? Finding.error("plan.nothing-to-lift", NOWHERE).with("setup", setup)
              : Finding.error("plan.load-too-small", NOWHERE)
                  .with("setup", setup)
                  .with("wanted", Load.ofKilograms(wanted))
                  .with("least", least.get()),
          -wanted);
      return Optional.empty();
    }
    outOfReach(wanted, total.get());
    double added = total.get().kilograms() - mass.kilograms();
    if (!setup.lifting()) {
      why.add(new LoadLink.BodyMass(mass));
    }
    why.add(new LoadLink.Built(added));
    why.add(new LoadLink.Total(total.get()));
    hard |= isHard(hold, wanted);
    return total;
  }

  /**
   * Reports a load well below the planned one because the equipment can't add more: by more than
   * {@link PlannedExercise#WELL_BELOW} per cent of the maximum, or of the planned load if no
   * maximum is known. A load that is lower by less than a step is normal.
   */
  private void outOfReach(double wanted, Load built) {
    double of = maximum.orElse(wanted);
    double missing = (wanted - built.kilograms()) / of;
    if (missing * 100 <= PlannedExercise.WELL_BELOW + TOLERANCE
        || !equipment.endsBelow(Load.ofKilograms(wanted), mass)) {
      return;
    }
    Finding finding =
        Finding.advice("plan.load-out-of-reach", NOWHERE)
            .with("setup", setup)
            .with("wanted", rounded(wanted))
            .with("built", built);
    violation(
        maximum.isEmpty()
            ? finding
            : finding
                .with("percent", percent(wanted / of))
                .with("built-percent", percent(built.kilograms() / of)),
        missing);
  }

  private static Load rounded(double kilograms) {
    return Load.ofKilograms(Math.rint(kilograms * 10) / 10);
  }

  private static String percent(double share) {
    return Numbers.plain(share * 100, 1) + " %";
  }

  private boolean isHard(Scheme.Hold hold, double wanted) {
    if (Hardness.isWritten(hold)) {
      return true;
    }
    if (strength.isEmpty() || maximum.isEmpty()) {
      // The maximum is unknown, so the hold may be hard.
      return light.filter(most -> wanted <= most.kilograms() + TOLERANCE).isEmpty();
    }
    if (wanted / maximum.get() >= Hardness.SHARE_OF_MAX - TOLERANCE) {
      return true;
    }
    return hasLittleReserve(strength.get(), hold.seconds(), wanted);
  }

  /** Loads fall with time, so a small reserve means a load that could hardly be held longer. */
  private boolean hasLittleReserve(ForceTime curve, double held, double load) {
    double seconds = Math.max(held + Hardness.RESERVE_SECONDS, ForceTime.SHORTEST_SECONDS);
    return load >= low(curve, Math.min(seconds, ForceTime.LONGEST_SECONDS)) * (1 - TOLERANCE);
  }

  /** Returns whether consecutive holds with almost no rest leave as little reserve as one hold. */
  private boolean isHardInARow(List<LoadedStep> steps) {
    if (strength.isEmpty() || maximum.isEmpty()) {
      return false;
    }
    HoldChain held = new HoldChain();
    for (LoadedStep step : steps) {
      held.add(step);
      if (step.load().isPresent()
          && held.secondsAtLoad() > step.seconds()
          && hasLittleReserve(
              strength.get(), held.secondsAtLoad(), step.load().get().kilograms())) {
        return true;
      }
    }
    return false;
  }

  private void violation(Finding finding, double magnitude) {
    violations.add(new Violation(finding, magnitude));
  }

  private double low(ForceTime curve, double seconds) {
    return curve.load(seconds).low().kilograms() * believed;
  }

  /** Returns the least load that failed within a time, in kg. */
  private OptionalDouble failedWithin(double seconds) {
    return failures.stream()
        .filter(failure -> failure.lasting().toNanos() / 1e9 <= seconds)
        .mapToDouble(failure -> failure.load().kilograms())
        .min();
  }
}
