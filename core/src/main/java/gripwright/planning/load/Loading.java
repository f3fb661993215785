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
import gripwright.schedule.LoadLink;
import gripwright.schedule.LoadedSteps;
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

/** The loads of an exercise's holds, whatever the day and place: what it rests on is given. */
final class Loading {

  /** Stands for the place of the exercise, which whoever asks for loads knows. */
  private static final ModelPath NOWHERE = ModelPath.of("exercise", "");

  private static final double TOLERANCE = 1e-9;

  private final Equipment equipment;
  private final Setup setup;
  private final Dose dose;
  private final Load mass;
  private final Optional<ForceTime> strength;
  private final Optional<Double> maximum;
  private final List<StrengthTest.ToFailure> failures;
  private final List<Miss> misses = new ArrayList<>();
  private final Set<Double> percents = new LinkedHashSet<>();
  private boolean hard;

  /**
   * Prepares loads.
   *
   * @param mass what hangs on the edge without a load; none where a weight is lifted
   * @param strength the force-time curve, if anything is known of the setup
   * @param failures recent tests of the setup up to failure
   */
  Loading(
      Equipment equipment,
      Setup setup,
      Dose dose,
      Load mass,
      Optional<ForceTime> strength,
      List<StrengthTest.ToFailure> failures) {
    this.equipment = equipment;
    this.setup = setup;
    this.dose = dose;
    this.mass = mass;
    this.strength = strength;
    this.maximum = strength.map(curve -> low(curve, ForceTime.REFERENCE_SECONDS));
    this.failures = failures;
  }

  /**
   * Something that can't be met.
   *
   * @param finding at no place yet
   * @param by how far it is off: of a line's several the farthest is told
   */
  record Miss(Finding finding, double by) {}

  /**
   * Loads.
   *
   * @param steps holds with their loads, and rests; empty if no load can be given
   * @param percentOfMax the level of all holds, if it is the same
   * @param hard true if a hold is hard
   * @param why how the load of the first hold came about
   * @param misses what can't be met
   */
  record Loaded(
      List<LoadedStep> steps,
      OptionalDouble percentOfMax,
      boolean hard,
      List<Derivation> why,
      List<Miss> misses) {

    Loaded {
      steps = List.copyOf(steps);
      why = List.copyOf(why);
      misses = List.copyOf(misses);
    }
  }

  /**
   * Returns the loads.
   *
   * @param known how what is known of the maximum came about
   */
  Loaded load(List<Derivation> known) {
    Steps steps = new Steps(known);
    for (Scheme.Bout bout : dose.scheme().flat()) {
      if (!bout.accept(steps)) {
        return new Loaded(List.of(), OptionalDouble.empty(), hard, steps.why, misses);
      }
    }
    OptionalDouble percent =
        percents.size() == 1
            ? OptionalDouble.of(percents.iterator().next())
            : OptionalDouble.empty();
    return new Loaded(steps.loaded.all(), percent, hard, steps.why, misses);
  }

  /** Loads holds and rests as they come; tells whether there was a load. */
  private final class Steps implements Scheme.Bout.Visitor<Boolean> {
    private final LoadedSteps loaded = new LoadedSteps();
    private final List<Derivation> why;
    private final Iterator<Scheme.Hold> whole =
        dose.whole().orElse(dose.scheme()).holds().iterator();
    private boolean explained;

    Steps(List<Derivation> known) {
      why = new ArrayList<>(known);
    }

    @Override
    public Boolean hold(Scheme.Hold hold) {
      Optional<Load> load = loadOf(hold, whole.next(), explained ? new ArrayList<>() : why);
      explained |= load.isPresent();
      load.ifPresent(l -> loaded.hold(hold.seconds(), l));
      return load.isPresent();
    }

    @Override
    public Boolean rest(Scheme.Rest rest) {
      loaded.rest(rest.seconds());
      return true;
    }
  }

  /** Loads a hold as if it lasted as long as the whole one. */
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
    Optional<Dose.Ceiling> ceiling = ceiling(wanted);
    double allowed = ceiling.map(c -> c.most().kilograms()).orElse(wanted);
    if (hold.level() instanceof Level.OfMax && maximum.isPresent()) {
      percents.add(allowed / maximum.get() * 100);
    }
    wanted = Math.min(allowed, capped(hold, wanted));
    ceiling.ifPresent(c -> why.add(new LoadLink.Limited(c.most(), c.why())));
    why.add(new LoadLink.Wanted(wanted));
    return built(hold, wanted, why);
  }

  /** Returns what the log allows at most, where the load that would be built is above it. */
  private Optional<Dose.Ceiling> ceiling(double wanted) {
    return dose.ceiling()
        .filter(
            c ->
                equipment
                    .greatestUpTo(Load.ofKilograms(wanted), mass)
                    .filter(built -> built.kilograms() > c.most().kilograms() + TOLERANCE)
                    .isPresent());
  }

  /** Returns the load of the written level, in kg; no load if the force-time curve ends before. */
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
    public Optional<Double> ofMax(Level.OfMax level) {
      why.add(new LoadLink.WrittenShare(level.fraction()));
      return Optional.of(maximum.orElseThrow() * level.fraction());
    }

    @Override
    public Optional<Double> reserve(Level.Reserve level) {
      return heldFor(hold.seconds() + level.time().toNanos() / 1e9, level);
    }

    @Override
    public Optional<Double> effort(Level.Effort level) {
      return heldFor(hold.seconds() * 10 / level.outOfTen(), level);
    }

    /** Returns the load that could be held for so long. */
    private Optional<Double> heldFor(double seconds, Level level) {
      if (!ForceTime.inRange(seconds)) {
        miss(
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
   * A load that failed sooner in a recent test is not prescribed for longer, whatever a curve says.
   */
  private double notAboveAFailure(double wanted, double seconds, List<Derivation> why) {
    OptionalDouble failed = failedWithin(seconds);
    if (failed.isEmpty() || failed.getAsDouble() >= wanted) {
      return wanted;
    }
    why.add(
        new StrengthLink.FailedBefore(
            Load.ofKilograms(failed.getAsDouble()),
            Load.ofKilograms(wanted),
            Prescription.RECENT_DAYS));
    return failed.getAsDouble();
  }

  private double ramped(double written, Dose.Ramp ramp, double max, List<Derivation> why) {
    double first = Math.min(written, max * ramp.fromFraction());
    double now = first + (written - first) * ramp.position();
    why.add(new LoadLink.Introduced(now / max, ramp.fromFraction()));
    return now;
  }

  /** A load above the maximum is an error, but for a reserve or an effort, which may ask for it. */
  private double capped(Scheme.Hold hold, double wanted) {
    boolean mayExceed = hold.level().byTime();
    if (mayExceed || maximum.isEmpty() || wanted <= maximum.get() * (1 + TOLERANCE)) {
      return wanted;
    }
    miss(
        Finding.error("plan.level-over-max", NOWHERE)
            .with("setup", setup)
            .with("percent", Numbers.plain(wanted / maximum.get() * 100, 1) + " %")
            .with("maximum", Load.ofKilograms(maximum.get())),
        wanted / maximum.get());
    return maximum.get();
  }

  private Optional<Load> built(Scheme.Hold hold, double wanted, List<Derivation> why) {
    Optional<Load> total = equipment.greatestUpTo(Load.ofKilograms(wanted), mass);
    if (total.isEmpty()) {
      Optional<Load> least = equipment.least(mass);
      miss(
          least.isEmpty()
              ? Finding.error("plan.nothing-to-lift", NOWHERE).with("setup", setup)
              : Finding.error("plan.load-too-small", NOWHERE)
                  .with("setup", setup)
                  .with("wanted", Load.ofKilograms(wanted))
                  .with("least", least.get()),
          -wanted);
      return Optional.empty();
    }
    double added = total.get().kilograms() - mass.kilograms();
    if (!setup.lifting()) {
      why.add(new LoadLink.BodyMass(mass));
    }
    why.add(new LoadLink.Built(added));
    why.add(new LoadLink.Total(total.get()));
    hard |= isHard(hold, wanted);
    return total;
  }

  private boolean isHard(Scheme.Hold hold, double wanted) {
    if (Hardness.isWritten(hold.level())) {
      return true;
    }
    if (strength.isEmpty() || maximum.isEmpty()) {
      return true; // nothing is known of the maximum, so the hold may well be hard
    }
    if (wanted / maximum.get() >= Hardness.SHARE_OF_MAX - TOLERANCE) {
      return true;
    }
    // Loads fall with time, so that a small reserve is a load that could hardly be held longer.
    double seconds =
        Math.max(hold.seconds() + Hardness.RESERVE_SECONDS, ForceTime.SHORTEST_SECONDS);
    return wanted
        >= low(strength.get(), Math.min(seconds, ForceTime.LONGEST_SECONDS)) * (1 - TOLERANCE);
  }

  private void miss(Finding finding, double by) {
    misses.add(new Miss(finding, by));
  }

  private static double low(ForceTime curve, double seconds) {
    return curve.load(seconds).low().kilograms();
  }

  /** Returns the least load that failed within a time, in kg. */
  private OptionalDouble failedWithin(double seconds) {
    return failures.stream()
        .filter(failure -> failure.lasting().toNanos() / 1e9 <= seconds)
        .mapToDouble(failure -> failure.load().kilograms())
        .min();
  }
}
