package gripwright.compare;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.KnownLight;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import gripwright.tissue.PulleyDraws;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One athlete, with the strength that the log shows at its end. Loads are rounded down to what the
 * equipment can build, as in a plan: shares of the maximum are of its lower bound.
 */
final class AthletePeople implements People {

  private final Athlete athlete;
  private final Log log;
  private final Models models;
  private final HandFits fits;
  private final List<StrengthTest> tests;
  private final StrengthMap strength;
  private final Load bodyMass;

  AthletePeople(Athlete athlete, Log log, Models models) {
    this.athlete = athlete;
    this.log = log;
    this.models = models;
    this.fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
    LocalDate day =
        log.entries().stream()
            .map(entry -> entry.date())
            .max(Comparator.naturalOrder())
            .orElse(LocalDate.of(2000, 1, 3));
    this.bodyMass = log.bodyMassOn(day).orElse(athlete.bodyMass());
    this.tests =
        new UsableTests(
                log.tests(),
                this::posture,
                on -> log.bodyMassOn(on).orElse(athlete.bodyMass()),
                on -> KnownLight.isUnder16(athlete, on))
            .on(day);
    this.strength = StrengthMap.of(tests, this::posture, day, models.loss());
  }

  private Posture posture(Setup setup) {
    return Posture.of(fits.of(setup).values());
  }

  Log log() {
    return log;
  }

  @Override
  public String name() {
    return athlete.name();
  }

  @Override
  public int size() {
    return 0;
  }

  @Override
  public Athlete planned(String name) {
    return athlete;
  }

  @Override
  public Optional<Amount> load(Setup setup, Level level, double seconds) {
    Load mass = setup.lifting() ? Load.ZERO : bodyMass;
    return wanted(setup, level, seconds)
        .flatMap(load -> athlete.equipmentWith(setup.edge()).greatestUpTo(load, mass))
        .map(load -> new Amount(Program.Kind.KILOGRAMS, load.kilograms()));
  }

  private Optional<Load> wanted(Setup setup, Level level, double seconds) {
    return level.accept(
        new Level.Visitor<>() {
          @Override
          public Optional<Load> ofMax(Level.OfMax share) {
            return strength.maximum(setup).map(known -> known.load().low().times(share.fraction()));
          }

          @Override
          public Optional<Load> ofTest(Level.OfTest share) {
            return test(setup).map(test -> test.result().greatest().times(share.fraction()));
          }

          @Override
          public Optional<Load> total(Level.Total total) {
            return Optional.of(total.load());
          }

          @Override
          public Optional<Load> bodyMass(Level.BodyMass body) {
            return Optional.of(bodyMass.plus(body.added()));
          }

          @Override
          public Optional<Load> reserve(Level.Reserve reserve) {
            return held(setup, seconds + reserve.time().toNanos() / 1e9);
          }

          @Override
          public Optional<Load> effort(Level.Effort effort) {
            return held(setup, seconds * 10 / effort.outOfTen());
          }
        });
  }

  private Optional<Load> held(Setup setup, double seconds) {
    return strength
        .curve(setup)
        .filter(curve -> curve.isValidFor(seconds))
        .map(curve -> curve.load(seconds).low());
  }

  private Optional<StrengthTest> test(Setup setup) {
    return tests.stream()
        .filter(test -> test.setup().equals(setup) && test.heldForReference())
        .max(Comparator.comparing(StrengthTest::date));
  }

  @Override
  public Optional<Finding> refusal(Setup setup, Level level, double seconds) {
    if (!athlete.equipmentWith(setup.edge()).has(setup.edge())) {
      return Optional.of(
          of("compare.edge-missing").with("edge", setup.edge()).with("athlete", name()));
    }
    if (!fits.takes(setup)) {
      return Optional.of(
          of("compare.grip-out-of-reach").with("setup", setup).with("athlete", name()));
    }
    boolean share = level instanceof Level.OfMax || level.byTime();
    if ((share && strength.maximum(setup).isEmpty())
        || (level instanceof Level.OfTest && test(setup).isEmpty())) {
      return Optional.of(of("compare.no-maximum").with("setup", setup).with("athlete", name()));
    }
    return load(setup, level, seconds).isPresent()
        ? Optional.empty()
        : Optional.of(of("compare.level-range").with("level", level));
  }

  private static Finding of(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  @Override
  public OptionalDouble shareOfTest(Setup setup, double kilograms) {
    return test(setup)
        .map(test -> OptionalDouble.of(kilograms / test.result().greatest().kilograms()))
        .orElse(OptionalDouble.empty());
  }

  private OptionalDouble criticalForce(Setup setup) {
    return strength
        .allOut(setup)
        .flatMap(test -> CriticalForce.ofSeries(test.series(), models.critical()))
        .map(
            critical ->
                OptionalDouble.of(
                    critical.force().best().kilograms()
                        / strength.maximum(setup).orElseThrow().load().best().kilograms()))
        .orElse(OptionalDouble.empty());
  }

  @Override
  public Prepared prepare(List<Setup> setups, boolean pulleys) {
    @Nullable Hangs hangs = pulleys ? new Hangs(setups, athlete::shape, models.arms()) : null;
    double[] none = new double[PulleyDraws.parameters()];
    double[] maxima = new double[setups.size()];
    double[] spreads = new double[setups.size()];
    double[] critical = new double[setups.size()];
    for (int i = 0; i < maxima.length; i++) {
      Optional<StrengthMap.Estimate> known = strength.maximum(setups.get(i));
      maxima[i] = known.map(k -> k.load().best().kilograms()).orElse(Double.NaN);
      spreads[i] = known.map(k -> k.load().spread()).orElse(0.0);
      critical[i] = known.isEmpty() ? Double.NaN : criticalForce(setups.get(i)).orElse(Double.NaN);
    }
    Person reference =
        new Person(
            bodyMass.kilograms(),
            maxima,
            critical,
            1,
            hangs == null ? null : hangs.forces(none),
            hangs == null ? null : hangs.own(none));
    Parameters parameters = new Parameters(reference, setups, spreads, hangs);
    return new Prepared() {
      @Override
      public Person reference() {
        return reference;
      }

      @Override
      public Person member(int number) {
        throw new IllegalStateException("an athlete is not drawn");
      }

      @Override
      public List<String> inputs() {
        return parameters.names();
      }

      @Override
      public Person drawn(double[] deviates) {
        return parameters.drawn(deviates);
      }
    };
  }
}
