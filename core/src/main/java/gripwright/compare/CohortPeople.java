package gripwright.compare;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.compare.Cohort.Trait;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Sex;
import gripwright.hand.StandardNormal;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.statics.MomentArms;
import gripwright.strength.ForceTime;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The persons of a cohort. Their maxima in other setups than the cohort's follow from a strength
 * map with the cohort's maximum as its only test; loads are not rounded. Thread-safe once prepared.
 */
final class CohortPeople implements People {

  private static final LocalDate DAY = LocalDate.of(2000, 1, 3);
  private static final double MEDIAN = 50;
  private static final double EVEN = 0.5;

  private final Cohort cohort;
  private final Philox random;
  private final MomentArms arms;
  private final HandShape median;
  private final HandFits fits;
  private final StrengthMap strength;
  private final double maximum;

  CohortPeople(Cohort cohort, Philox random, Models models) {
    this.cohort = cohort;
    this.random = random;
    this.arms = models.arms();
    double female = femaleShare();
    this.median =
        HandShape.of(
            Hand.ofLength(mixed(HandMeasure.LENGTH, female))
                .withBreadth(mixed(HandMeasure.BREADTH, female)));
    this.fits = new HandFits(median, median);
    this.maximum = cohort.maximum().load().median();
    StrengthTest test =
        StrengthTest.held(
            DAY,
            cohort.maximum().setup(),
            Duration.ofSeconds((long) ForceTime.REFERENCE_SECONDS),
            Load.ofKilograms(maximum));
    this.strength =
        StrengthMap.of(
            List.of(test), setup -> Posture.of(fits.of(setup).values()), DAY, models.loss());
  }

  private double femaleShare() {
    return cohort.sexes().map(Cohort.Sexes::female).orElse(EVEN);
  }

  private static Length mixed(HandMeasure measure, double female) {
    return Length.ofMillimetres(
        female * measure.percentile(Sex.FEMALE, MEDIAN).millimetres()
            + (1 - female) * measure.percentile(Sex.MALE, MEDIAN).millimetres());
  }

  @Override
  public String name() {
    return cohort.name();
  }

  @Override
  public int size() {
    return cohort.size();
  }

  @Override
  public Optional<Amount> load(Setup setup, Level level, double seconds) {
    return ratio(setup).isEmpty()
        ? Optional.empty()
        : level.accept(
            new Level.Visitor<>() {
              @Override
              public Optional<Amount> ofMax(Level.OfMax share) {
                return Optional.of(new Amount(Program.Kind.SHARE, share.fraction()));
              }

              @Override
              public Optional<Amount> ofTest(Level.OfTest share) {
                return Optional.of(new Amount(Program.Kind.SHARE, share.fraction()));
              }

              @Override
              public Optional<Amount> total(Level.Total total) {
                return Optional.of(new Amount(Program.Kind.KILOGRAMS, total.load().kilograms()));
              }

              @Override
              public Optional<Amount> bodyMass(Level.BodyMass body) {
                return Optional.of(new Amount(Program.Kind.BODY_MASS, body.added().kilograms()));
              }

              @Override
              public Optional<Amount> reserve(Level.Reserve reserve) {
                return held(setup, seconds + reserve.time().toNanos() / 1e9);
              }

              @Override
              public Optional<Amount> effort(Level.Effort effort) {
                return held(setup, seconds * 10 / effort.outOfTen());
              }
            });
  }

  /** Returns the share of the maximum that can be held for a time. */
  private Optional<Amount> held(Setup setup, double seconds) {
    return strength
        .curve(setup)
        .filter(curve -> curve.isValidFor(seconds))
        .map(
            curve ->
                new Amount(
                    Program.Kind.SHARE,
                    curve.load(seconds).best().kilograms()
                        / curve.load(ForceTime.REFERENCE_SECONDS).best().kilograms()));
  }

  @Override
  public Optional<Finding> refusal(Setup setup, Level level, double seconds) {
    if (!fits.takes(setup)) {
      return Optional.of(
          Finding.error("compare.grip-out-of-reach", ModelPath.ROOT).with("setup", setup));
    }
    if (ratio(setup).isEmpty()) {
      return Optional.of(
          Finding.error("compare.no-maximum", ModelPath.ROOT)
              .with("setup", setup)
              .with("cohort", cohort.maximum().setup()));
    }
    if (level instanceof Level.OfTest && !setup.equals(cohort.maximum().setup())) {
      return Optional.of(
          Finding.error("compare.no-maximum", ModelPath.ROOT)
              .with("setup", setup)
              .with("test", cohort.maximum().setup()));
    }
    boolean massless = level instanceof Level.BodyMass && cohort.bodyMass().isEmpty();
    return !massless && load(setup, level, seconds).isPresent()
        ? Optional.empty()
        : Optional.of(Finding.error("compare.level-range", ModelPath.ROOT).with("level", level));
  }

  @Override
  public OptionalDouble shareOfTest(Setup setup, double kilograms) {
    OptionalDouble ratio = ratio(setup);
    return ratio.isPresent()
        ? OptionalDouble.of(kilograms / (maximum * ratio.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** Returns the maximum of a setup by that of the cohort's; empty if nothing is known of it. */
  private OptionalDouble ratio(Setup setup) {
    if (setup.equals(cohort.maximum().setup())) {
      return OptionalDouble.of(1);
    }
    Optional<StrengthMap.Estimate> here = strength.maximum(setup);
    return here.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            here.get().load().best().kilograms()
                / strength
                    .maximum(cohort.maximum().setup())
                    .orElseThrow()
                    .load()
                    .best()
                    .kilograms());
  }

  private double spread(Setup setup) {
    return setup.equals(cohort.maximum().setup())
        ? 0
        : strength.maximum(setup).map(known -> known.load().spread()).orElse(0.0);
  }

  /**
   * Returns the median person, with a history that opens every grip: the prerequisites by training
   * history don't apply to a cohort.
   */
  @Override
  public Athlete planned(String as) {
    Athlete.Builder builder =
        Athlete.named(as)
            .born(LocalDate.of(1970, 1, 1))
            .bodyMass(Load.ofKilograms(cohort.bodyMass().map(Spread::median).orElse(70.0)))
            .trained(240)
            .ability(Ability.of(GradeScale.FRENCH, "8c"))
            .hand(Hand.ofLength(median.length()).withBreadth(median.breadth()))
            .added(Load.ofKilograms(0.01), Load.ofKilograms(900))
            .assist(Load.ofKilograms(0.01), Load.ofKilograms(900));
    StandardGrips.all().forEach(grip -> builder.familiar(grip.name(), 240));
    for (DayOfWeek day : DayOfWeek.values()) {
      builder.available(day, Duration.ofHours(4));
    }
    return builder.edges(List.of()).build();
  }

  /** Returns the tests of the median person. */
  List<StrengthTest> tests(LocalDate day) {
    return List.of(
        StrengthTest.held(
            day,
            cohort.maximum().setup(),
            Duration.ofSeconds((long) ForceTime.REFERENCE_SECONDS),
            Load.ofKilograms(maximum)));
  }

  @Override
  public Prepared prepare(List<Setup> setups, boolean pulleys) {
    return new Members(setups, pulleys && cohort.bodyMass().isPresent());
  }

  /** The persons with numbers for the setups of the arms. */
  private final class Members implements Prepared {

    private final List<Setup> setups;
    private final Parameters parameters;
    private final double[] ratios;
    private final double[][] correlations;
    private final @Nullable HandTable hands;

    Members(List<Setup> setups, boolean pulleys) {
      this.setups = setups;
      this.ratios = setups.stream().mapToDouble(setup -> ratio(setup).orElse(Double.NaN)).toArray();
      this.correlations = CorrelatedDeviates.factor(cohort.correlations()).orElseThrow();
      Hangs hangs = pulleys ? new Hangs(setups, side -> median, arms) : null;
      double[] none = new double[gripwright.tissue.PulleyDraws.parameters()];
      Person reference =
          person(
              new double[Trait.values().length],
              hangs == null ? null : hangs.forces(none),
              hangs == null ? null : hangs.own(none));
      this.parameters =
          new Parameters(
              reference,
              setups,
              setups.stream().mapToDouble(CohortPeople.this::spread).toArray(),
              hangs);
      this.hands = pulleys && cohort.handBySex().isPresent() ? new HandTable(setups, arms) : null;
    }

    private Person person(
        double[] deviates, double @Nullable [] @Nullable [] forces, double @Nullable [] own) {
      double[] maxima = new double[setups.size()];
      double load = cohort.maximum().load().at(deviates[Trait.MAXIMUM.ordinal()]);
      for (int i = 0; i < maxima.length; i++) {
        maxima[i] = load * ratios[i];
      }
      double[] critical = new double[setups.size()];
      Arrays.fill(
          critical,
          cohort
              .criticalForce()
              .map(force -> Math.min(1, force.at(deviates[Trait.CRITICAL_FORCE.ordinal()])))
              .orElse(Double.NaN));
      return new Person(
          cohort
              .bodyMass()
              .map(mass -> mass.at(deviates[Trait.BODY_MASS.ordinal()]))
              .orElse(Double.NaN),
          maxima,
          critical,
          1,
          forces,
          own);
    }

    @Override
    public Person reference() {
      return parameters.reference();
    }

    @Override
    public Person drawn(double[] deviates) {
      return parameters.drawn(deviates);
    }

    @Override
    public List<String> inputs() {
      return parameters.names();
    }

    @Override
    public Person member(int number) {
      int traits = correlations.length;
      double[] own = new double[traits];
      for (int i = 0; i < traits; i++) {
        own[i] = random.normal(number + 1, 0, i, 1);
      }
      double[] together = new double[traits];
      for (int i = 0; i < traits; i++) {
        for (int j = 0; j <= i; j++) {
          together[i] += correlations[i][j] * own[j];
        }
      }
      HandTable table = hands;
      if (table == null) {
        return person(together, reference().pulleys(), reference().ownHang());
      }
      Sex sex = random.uniform(number + 1, 0, traits, 1) < femaleShare() ? Sex.FEMALE : Sex.MALE;
      HandTable.Forces forces = table.at(sex, together[Trait.HAND.ordinal()]);
      return person(together, forces.setups(), forces.own());
    }
  }

  /** Returns the percentile of a deviate, within those that are published. */
  static double percentile(double deviate) {
    return Math.max(
        HandMeasure.LOWEST,
        Math.min(HandMeasure.HIGHEST, 100 * StandardNormal.probability(deviate)));
  }
}
