package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.plan.Exercise;
import gripwright.plan.PlannedExercise;
import gripwright.plan.PlannedExercise.Derivation;
import gripwright.plan.PlannedExercise.LoadedStep;
import gripwright.plan.PlannedExercise.Maximum;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.strength.ForceTime;
import gripwright.strength.OutlierTests;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Turns an exercise as it stands in a week into loads that this athlete can build on a day. */
final class Prescription {

  /** The share of the maximum from which a hold is hard; common practice. */
  static final double HARD_SHARE = 0.8;

  /** The predicted reserve, in seconds, up to which a hold is hard; common practice. */
  static final double HARD_RESERVE_SECONDS = 3;

  /** The effort from which a hold is hard, of 10; common practice. */
  static final double HARD_EFFORT = 8;

  /** How many tests a load's derivation names at most, and the share from which it does. */
  private static final int TESTS_TOLD = 4;

  private static final double LEAST_TOLD = 0.01;

  /** For how many days a failure in a test stands against a load; the library's own choice. */
  private static final int RECENT_DAYS = 90;

  private static final double TOLERANCE = 1e-9;

  private final Athlete athlete;
  private final Log log;
  private final LocalDate planFrom;
  private final Map<LocalDate, StrengthMap> maps = new HashMap<>();
  private final Map<Setup, Posture> postures = new HashMap<>();
  private final HandFits fits;

  Prescription(Athlete athlete, Log log, LocalDate planFrom, HandFits fits) {
    this.athlete = athlete;
    this.log = log;
    this.planFrom = planFrom;
    this.fits = fits;
  }

  /** Returns the body mass that loads on a day are reckoned with. */
  Load bodyMassOn(LocalDate day) {
    return log.bodyMassOn(day).orElse(athlete.bodyMass());
  }

  /**
   * Returns what is known of the athlete's strength on a day. Between tests the knowledge stays as
   * it was on the later of the plan's first day and the last test, so that a plan's loads do not
   * sink while its weeks pass.
   */
  StrengthMap strengthOn(LocalDate day) {
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
   * Prescribes an exercise.
   *
   * @param exercise the line of the plan
   * @param grip the grip, chosen where the line leaves a choice
   * @param dose what progression made of it
   * @param day the day
   * @param order position among the session's exercises, from 1
   * @param path where it stands
   * @param findings what can't be met is added here
   * @return empty if no load can be given
   */
  Optional<PlannedExercise> prescribe(
      Exercise exercise,
      Grip grip,
      Dose dose,
      LocalDate day,
      int order,
      ModelPath path,
      FindingList findings) {
    Setup setup = exercise.setup(grip).withEdge(dose.edge());
    if (!athlete.equipment().has(setup.edge())) {
      findings.add(
          Finding.error("plan.edge-missing", path)
              .with("edge", setup.edge())
              .with("owned", owned()));
      return Optional.empty();
    }
    Optional<Finding> outOfReach = fits.outOfReach(setup, path);
    if (outOfReach.isPresent()) {
      findings.add(outOfReach.get());
      return Optional.empty();
    }
    StrengthMap strength = strengthOn(day);
    Optional<StrengthMap.Estimate> estimate = strength.maximum(setup);
    List<Derivation> why = new ArrayList<>();
    estimate.ifPresent(e -> explain(e, why));
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
    Loading loading = new Loading(setup, dose, mass, strength.curve(setup), path, day);
    Optional<PlannedExercise> loaded = loading.load(exercise, order, estimate, why, findings);
    loaded
        .filter(PlannedExercise::hard)
        .flatMap(hard -> fits.notForced(setup, path))
        .ifPresent(findings::add);
    return loaded;
  }

  private Posture postureOf(Setup setup) {
    return postures.computeIfAbsent(setup, s -> Posture.of(fits.of(s).values()));
  }

  private String owned() {
    Set<String> edges = new LinkedHashSet<>();
    athlete.equipment().edges().forEach(e -> edges.add(e.toString()));
    return String.join(", ", edges);
  }

  private static boolean needsMaximum(Exercise exercise, Dose dose) {
    return dose.ramp().isPresent()
        || exercise.scheme().holds().stream()
            .map(Scheme.Hold::level)
            .anyMatch(l -> !(l instanceof Level.Total) && !(l instanceof Level.BodyMass));
  }

  private static void explain(StrengthMap.Estimate estimate, List<Derivation> why) {
    int told = 0;
    for (StrengthMap.Weight weight : estimate.basis()) {
      if (told == TESTS_TOLD || Math.abs(weight.share()) < LEAST_TOLD) {
        break;
      }
      why.add(
          new Derivation(
              "weight of test", Math.rint(weight.share() * 100), "%", words(weight.test())));
      told++;
    }
    int more = estimate.basis().size() - told;
    why.add(
        new Derivation(
            "maximum, best estimate",
            estimate.load().best().kilograms(),
            "kg",
            (estimate.tested() ? "held for 7 s, from " : "held for 7 s, modelled from ")
                + (told == 1 ? "this test" : "these tests")
                + (more == 0 ? "" : " and " + more + " of less weight")));
    why.add(
        new Derivation(
            "maximum, upper bound",
            estimate.load().high().kilograms(),
            "kg",
            "80th percentile of the estimate"));
    why.add(
        new Derivation(
            "maximum, lower bound",
            estimate.load().low().kilograms(),
            "kg",
            "20th percentile of the estimate"));
  }

  private static String words(StrengthTest test) {
    String effort =
        test.effort()
            .map(e -> e.load() + " for " + Numbers.plain(e.seconds(), 1) + " s, ")
            .orElse("");
    return effort + test.setup() + " on " + test.date();
  }

  /** Returns the least load that failed within a time in recent tests of this very setup, in kg. */
  private OptionalDouble failedWithin(Setup setup, double seconds, LocalDate day) {
    return log.tests().stream()
        .filter(test -> !test.date().isAfter(day))
        .filter(test -> test.date().isAfter(day.minusDays(RECENT_DAYS)))
        .filter(test -> test.setup().equals(setup))
        .map(StrengthTest::result)
        .filter(StrengthTest.ToFailure.class::isInstance)
        .map(StrengthTest.ToFailure.class::cast)
        .filter(failure -> failure.lasting().toNanos() / 1e9 <= seconds)
        .mapToDouble(failure -> failure.load().kilograms())
        .min();
  }

  /** One exercise on one day: the loads of its holds. */
  private final class Loading {

    private final Setup setup;
    private final Dose dose;
    private final Load mass;
    private final Optional<ForceTime> strength;
    private final Optional<Double> maximum;
    private final ModelPath path;
    private final LocalDate day;
    private final Set<Double> percents = new LinkedHashSet<>();
    private boolean hard;

    Loading(
        Setup setup,
        Dose dose,
        Load mass,
        Optional<ForceTime> strength,
        ModelPath path,
        LocalDate day) {
      this.setup = setup;
      this.dose = dose;
      this.mass = mass;
      this.strength = strength;
      this.maximum = strength.map(curve -> low(curve, ForceTime.REFERENCE_SECONDS));
      this.path = path;
      this.day = day;
    }

    Optional<PlannedExercise> load(
        Exercise exercise,
        int order,
        Optional<StrengthMap.Estimate> estimate,
        List<Derivation> why,
        FindingList findings) {
      List<LoadedStep> steps = new ArrayList<>();
      List<Scheme.Step> flat = dose.scheme().flat();
      Iterator<Scheme.Hold> whole = dose.whole().orElse(dose.scheme()).holds().iterator();
      boolean explained = false;
      for (Scheme.Step step : flat) {
        if (step instanceof Scheme.Rest rest) {
          steps.add(new LoadedStep(rest.time().toNanos() / 1e9, Optional.empty()));
        } else if (step instanceof Scheme.Hold hold) {
          List<Derivation> chain = explained ? new ArrayList<>() : why;
          Optional<Load> load = loadOf(hold, whole.next(), chain, findings);
          if (load.isEmpty()) {
            return Optional.empty();
          }
          explained = true;
          steps.add(new LoadedStep(hold.seconds(), load));
        }
      }
      return Optional.of(
          new PlannedExercise(
              order,
              exercise.protocol().name(),
              setup,
              fits.of(setup),
              dose.scheme(),
              steps,
              percents.size() == 1
                  ? OptionalDouble.of(percents.iterator().next())
                  : OptionalDouble.empty(),
              estimate.map(e -> new Maximum(e.load().low(), e.load().best(), e.load().high())),
              mass,
              hard,
              Optional.empty(),
              exercise.rehabilitation(),
              Optional.empty(),
              why,
              path));
    }

    /** Loads a hold as if it lasted as long as the whole one. */
    private Optional<Load> loadOf(
        Scheme.Hold hold, Scheme.Hold whole, List<Derivation> why, FindingList findings) {
      Optional<Double> written = written(whole, why, findings);
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
      wanted = Math.min(allowed, capped(hold, wanted, findings));
      ceiling.ifPresent(
          c -> why.add(new Derivation(Progression.HELD_BACK, c.most().kilograms(), "kg", c.why())));
      why.add(new Derivation("load wanted", wanted, "kg", "the level, after progression"));
      return built(hold, wanted, why, findings);
    }

    /** Returns what the log allows at most, where the load that would be built is above it. */
    private Optional<Dose.Ceiling> ceiling(double wanted) {
      return dose.ceiling()
          .filter(
              c ->
                  athlete
                      .equipment()
                      .greatestUpTo(Load.ofKilograms(wanted), mass)
                      .filter(built -> built.kilograms() > c.most().kilograms() + TOLERANCE)
                      .isPresent());
    }

    /**
     * Returns the load of the written level, in kg; no load if the force-time curve ends before.
     */
    private Optional<Double> written(Scheme.Hold hold, List<Derivation> why, FindingList findings) {
      Level level = hold.level();
      if (level instanceof Level.Total total) {
        why.add(new Derivation("level", total.load().kilograms(), "kg", "written as a total load"));
        return Optional.of(total.load().kilograms());
      }
      if (level instanceof Level.BodyMass body) {
        why.add(
            new Derivation("level", body.added().kilograms(), "kg", "written against body mass"));
        return Optional.of(mass.kilograms() + body.added().kilograms());
      }
      if (level instanceof Level.OfMax share) {
        why.add(new Derivation("level", share.fraction() * 100, "% max", "written in the plan"));
        return Optional.of(maximum.orElseThrow() * share.fraction());
      }
      double seconds =
          level instanceof Level.Reserve reserve
              ? hold.seconds() + reserve.time().toNanos() / 1e9
              : hold.seconds() * 10 / ((Level.Effort) level).outOfTen();
      if (!ForceTime.inRange(seconds)) {
        findings.add(
            Finding.error("plan.hold-range", path)
                .with("level", level)
                .with("hold", Numbers.plain(hold.seconds(), 1) + " s")
                .with("needed", Numbers.plain(seconds, 1) + " s"));
        return Optional.empty();
      }
      why.add(
          new Derivation(
              "level",
              seconds,
              "s",
              level + ": the load that could be held this long, by the lower bound"));
      return strength.map(curve -> notAboveAFailure(low(curve, seconds), seconds, why));
    }

    /**
     * A load that failed sooner in a recent test is not prescribed for longer, whatever a curve
     * says.
     */
    private double notAboveAFailure(double wanted, double seconds, List<Derivation> why) {
      OptionalDouble failed = failedWithin(setup, seconds, day);
      if (failed.isEmpty() || failed.getAsDouble() >= wanted) {
        return wanted;
      }
      why.add(
          new Derivation(
              "failed before",
              failed.getAsDouble(),
              "kg",
              "could not be held as long in a test of the last "
                  + RECENT_DAYS
                  + " days; without it "
                  + Load.ofKilograms(wanted)));
      return failed.getAsDouble();
    }

    private double ramped(double written, Dose.Ramp ramp, double max, List<Derivation> why) {
      double first = Math.min(written, max * ramp.fromFraction());
      double now = first + (written - first) * ramp.position();
      why.add(
          new Derivation(
              "introduce",
              now / max * 100,
              "% max",
              "from "
                  + Numbers.plain(ramp.fromFraction() * 100, 1)
                  + " % max towards the written level"));
      return now;
    }

    /**
     * A load above the maximum is an error, but for a reserve or an effort, which may ask for it.
     */
    private double capped(Scheme.Hold hold, double wanted, FindingList findings) {
      boolean mayExceed =
          hold.level() instanceof Level.Reserve || hold.level() instanceof Level.Effort;
      if (mayExceed || maximum.isEmpty() || wanted <= maximum.get() * (1 + TOLERANCE)) {
        return wanted;
      }
      findings.add(
          Finding.error("plan.level-over-max", path)
              .with("setup", setup)
              .with("percent", Numbers.plain(wanted / maximum.get() * 100, 1) + " %")
              .with("maximum", Load.ofKilograms(maximum.get())),
          wanted / maximum.get());
      return maximum.get();
    }

    private Optional<Load> built(
        Scheme.Hold hold, double wanted, List<Derivation> why, FindingList findings) {
      Optional<Load> total = athlete.equipment().greatestUpTo(Load.ofKilograms(wanted), mass);
      if (total.isEmpty() || total.get().kilograms() <= 0) {
        findings.add(
            Finding.error("plan.load-too-small", path)
                .with("setup", setup)
                .with("wanted", Load.ofKilograms(wanted))
                .with("least", least()),
            -wanted);
        return Optional.empty();
      }
      double added = total.get().kilograms() - mass.kilograms();
      if (!setup.lifting()) {
        why.add(new Derivation("body mass", mass.kilograms(), "kg", "as last weighed"));
      }
      why.add(
          new Derivation(
              added < 0 ? "taken off" : "added",
              Math.abs(added),
              "kg",
              "what the equipment can build without going over"));
      why.add(new Derivation("total load", total.get().kilograms(), "kg", "on the edge"));
      hard |= isHard(hold, wanted);
      return total;
    }

    private Load least() {
      return athlete
          .equipment()
          .assist()
          .filter(a -> !setup.lifting())
          .map(a -> mass.minus(a.limit()))
          .orElse(mass);
    }

    private boolean isHard(Scheme.Hold hold, double wanted) {
      if (hold.level() instanceof Level.Effort effort && effort.outOfTen() >= HARD_EFFORT) {
        return true;
      }
      if (hold.level() instanceof Level.Reserve reserve
          && reserve.time().toNanos() / 1e9 <= HARD_RESERVE_SECONDS) {
        return true;
      }
      if (strength.isEmpty() || maximum.isEmpty()) {
        return true; // nothing is known of the maximum, so the hold may well be hard
      }
      if (wanted / maximum.get() >= HARD_SHARE - TOLERANCE) {
        return true;
      }
      // Loads fall with time, so that a small reserve is a load that could hardly be held longer.
      double seconds = Math.max(hold.seconds() + HARD_RESERVE_SECONDS, ForceTime.SHORTEST_SECONDS);
      return wanted
          >= low(strength.get(), Math.min(seconds, ForceTime.LONGEST_SECONDS)) * (1 - TOLERANCE);
    }

    private static double low(ForceTime curve, double seconds) {
      return curve.load(seconds).low().kilograms();
    }
  }
}
