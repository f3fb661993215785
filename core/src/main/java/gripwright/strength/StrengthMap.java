package gripwright.strength;

import gripwright.grip.FingerLoss;
import gripwright.grip.Setup;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Estimates the greatest load in every setup on one day from an athlete's tests, with intervals: a
 * Gaussian process over fingers, posture, edge and hold time, in logarithms of load.
 *
 * <p>Nothing is assumed about the athlete's level. All tests together determine the level, how
 * steeply load falls with time relative to Rohmert's law, and how grips differ from expectation; a
 * test counts most for its own setup and less for less similar ones. Old tests count less: the
 * change in strength since is unknown; half of it is common to all tests of one age, the rest to
 * similar setups. The interval of a setup without a test is wider, so that loads prescribed from
 * its low end start light.
 *
 * <p>One hand is never estimated from two, the left never from the right, nor a lift from a hang:
 * each has a map of its own, and so has each edge at or below 4.3 mm. A further test never widens
 * an interval; scaling all tests scales all estimates; the order of tests does not matter. The
 * spreads are fixed, so that only the loads are fitted. Immutable if the given postures are.
 */
public final class StrengthMap {

  /**
   * Spread of fade, the power of the law's share, between athletes. The library's own choice: the
   * hand and grip law of Frey Law and Avin differs from Rohmert's by less than one and a half of
   * this spread.
   */
  public static final double FADE_SPREAD = 0.3;

  /**
   * Spread of a setup around its expected load, shared by similar setups; the library's own choice,
   * wide on purpose.
   */
  public static final double SETUP_SPREAD = 0.15;

  /**
   * Spread of a grip that other grips can't explain, however similar their fingers and middle-joint
   * angles: end joints, thumb, skin, practice. The library's own choice. It keeps the first load of
   * an untested grip below that of a tested one in the same posture.
   */
  public static final double GRIP_SPREAD = 0.08;

  /**
   * Difference of angles, in degrees, beyond which tests count little for each other: the spread of
   * a normal curve; the library's own choice.
   */
  public static final double ANGLE_REACH = 30;

  /**
   * Spread of the power of depth; the library's own choice: no rise and the steepest rise that the
   * published envelope allows both lie within three and a half spreads.
   */
  public static final double DEPTH_POWER_SPREAD = 0.08;

  /** The same as {@link #ANGLE_REACH} for the logarithm of depth; the library's own choice. */
  public static final double DEPTH_REACH = 1;

  /**
   * Spread that a month adds, which grows with the root of time: 14 % in a year. The library's own
   * choice.
   */
  public static final double DRIFT_PER_ROOT_MONTH = 0.04;

  /**
   * The part of that change which all setups have in common; the rest is common to similar ones
   * only. The library's own choice.
   */
  public static final double COMMON_DRIFT = 0.5;

  /** How many tests a map is based on at most, the newest; the library's own choice. */
  public static final int MOST_TESTS = 200;

  static final double DRIFT_VARIANCE = DRIFT_PER_ROOT_MONTH * DRIFT_PER_ROOT_MONTH;

  private static final double DAYS_PER_MONTH = 30.4375;

  static final Comparator<Known> ORDER =
      Comparator.comparing((Known known) -> known.test().date(), Comparator.reverseOrder())
          .thenComparing(known -> known.test().setup().grip().name())
          .thenComparing(known -> known.test().setup().edge())
          .thenComparing(Known::effort, Effort.ORDER);

  private final Function<Setup, Posture> postures;
  private final Optional<FingerLoss> law;
  private final Map<Region, Field> fields;
  private final LocalDate day;
  private final Map<Setup, Answer> answers = new ConcurrentHashMap<>();
  private final Map<Setup, Optional<AllOutTest>> allOut = new ConcurrentHashMap<>();

  private StrengthMap(
      Function<Setup, Posture> postures,
      Optional<FingerLoss> law,
      Map<Region, Field> fields,
      LocalDate day) {
    this.postures = postures;
    this.law = law;
    this.fields = fields;
    this.day = day;
  }

  /** The estimates of one setup. */
  private record Answer(Estimate maximum, ForceTime curve) {}

  /** A test that counts. */
  record Known(StrengthTest test, Effort effort) {}

  private record Field(List<Known> tests, List<Place> places, FadeField field) {}

  /**
   * The estimate of one setup.
   *
   * @param load the reference maximum, held for 7 s; loads are prescribed from its low end
   * @param tested true if this very setup was tested
   * @param basis the tests behind it, the one with the largest share first
   */
  public record Estimate(LoadEstimate load, boolean tested, List<Weight> basis) {
    /** Copies the tests. */
    public Estimate {
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(basis, "basis");
      basis = List.copyOf(basis);
    }

    /** Returns the test with the largest share of the estimate. */
    public StrengthTest weightiest() {
      return basis.stream().max(Comparator.comparingDouble(Weight::share)).orElseThrow().test();
    }
  }

  /**
   * A test's share of an estimate: a change of the test by 1 % changes the estimate by this share
   * of 1 %.
   *
   * @param test the test
   * @param share all shares sum to 1; below 0 if a higher test lowers this estimate
   */
  public record Weight(StrengthTest test, double share) {
    /** Refuses null. */
    public Weight {
      Objects.requireNonNull(test, "test");
    }
  }

  /**
   * Creates the map of a day.
   *
   * @param tests in any order; those after the day, and those with times outside 2 s to 10 min, are
   *     ignored
   * @param postures the posture of the athlete's own fingers in a setup, see {@link Posture#of}
   * @param day the day
   */
  public static StrengthMap of(
      Collection<StrengthTest> tests, Function<Setup, Posture> postures, LocalDate day) {
    return of(tests, postures, day, Optional.empty());
  }

  /**
   * Creates the map of a day by one published view of what fewer fingers hold, to show how much
   * depends on it. Loads are prescribed from the mean of the views.
   *
   * @param tests as in {@link #of(Collection, Function, LocalDate)}
   * @param postures the posture of the athlete's own fingers in a setup
   * @param day the day
   * @param law the view; empty for the mean of {@link FingerLoss#EXCLUSION} and {@link
   *     FingerLoss#FORCE_DEFICIT}
   */
  public static StrengthMap of(
      Collection<StrengthTest> tests,
      Function<Setup, Posture> postures,
      LocalDate day,
      Optional<FingerLoss> law) {
    Objects.requireNonNull(tests, "tests");
    Objects.requireNonNull(postures, "postures");
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(law, "law");
    Map<Region, Field> fields = new HashMap<>();
    Function<Setup, Place> places = setup -> Place.of(setup, postures, law);
    known(tests, day).forEach((region, known) -> fields.put(region, field(known, places, day)));
    return new StrengthMap(postures, law, fields, day);
  }

  /** Returns the tests that count on a day, those of each region newest first. */
  static Map<Region, List<Known>> known(Collection<StrengthTest> tests, LocalDate day) {
    Map<Region, List<Known>> regions = new HashMap<>();
    for (StrengthTest test : tests) {
      if (!test.date().isAfter(day)) {
        test.effort()
            .filter(effort -> ForceTime.inRange(effort.seconds()))
            .ifPresent(
                effort ->
                    regions
                        .computeIfAbsent(Region.of(test.setup()), region -> new ArrayList<>())
                        .add(new Known(test, effort)));
      }
    }
    regions.replaceAll((region, known) -> known.stream().sorted(ORDER).limit(MOST_TESTS).toList());
    return regions;
  }

  private static Field field(List<Known> tests, Function<Setup, Place> placeOf, LocalDate day) {
    List<Place> places = tests.stream().map(t -> placeOf.apply(t.test().setup())).toList();
    int n = tests.size();
    RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
    double[] loads = new double[n];
    double[] allowed = new double[n];
    for (int i = 0; i < n; i++) {
      Effort effort = tests.get(i).effort();
      loads[i] = Math.log(effort.load().kilograms()) - places.get(i).expected();
      allowed[i] = FadingForce.allowed(EnduranceLaw.ROHMERT, effort.seconds());
      for (int j = 0; j <= i; j++) {
        double similarity = places.get(i).similarity(places.get(j));
        // Newest first, so that of two tests the first has less unknown change since.
        double entry =
            places.get(i).covariance(places.get(j), similarity)
                + DRIFT_VARIANCE * commonDrift(similarity) * months(tests.get(j).test().date(), day)
                + (i == j ? TestReliability.of(tests.get(i).test().result()).variance() : 0);
        covariance.setEntry(i, j, entry);
        covariance.setEntry(j, i, entry);
      }
    }
    return new Field(tests, places, new FadeField(covariance, loads, allowed));
  }

  static double months(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to) / DAYS_PER_MONTH;
  }

  /** Returns the part of the change since that two setups have in common; 1 for equal ones. */
  static double commonDrift(double similarity) {
    return COMMON_DRIFT + (1 - COMMON_DRIFT) * similarity;
  }

  /**
   * Returns how far an athlete's strength may have drifted between two days.
   *
   * @param from day of a test
   * @param to a later day, or the same
   * @return standard deviation of the logarithm of load, 0 on the same day
   * @throws IllegalArgumentException if the days are in the wrong order
   */
  public static double drift(LocalDate from, LocalDate to) {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (to.isBefore(from)) {
      throw new IllegalArgumentException(to + " is before " + from);
    }
    return DRIFT_PER_ROOT_MONTH * Math.sqrt(months(from, to));
  }

  /**
   * Returns the reference maximum of a setup.
   *
   * @return empty if no test counts for this setup
   */
  public Optional<Estimate> maximum(Setup setup) {
    return answer(setup).map(Answer::maximum);
  }

  /**
   * Returns the greatest load of a setup by hold time, from 2 s to 10 min, by Rohmert's law and
   * this athlete's fade from the tests. At 7 s it is the reference maximum.
   *
   * @return empty if no test counts for this setup
   */
  public Optional<ForceTime> curve(Setup setup) {
    return answer(setup).map(Answer::curve);
  }

  /**
   * Returns the newest all-out series of this very setup that still serves for how often a load can
   * be held.
   *
   * @return empty if there is none; see {@link AllOutTest#OLDEST_DAYS}
   */
  public Optional<AllOutTest> allOut(Setup setup) {
    return allOut.computeIfAbsent(setup, this::newestAllOut);
  }

  private Optional<AllOutTest> newestAllOut(Setup setup) {
    Field field = fields.get(Region.of(setup));
    return field == null
        ? Optional.empty()
        : AllOutTest.newest(
            field.tests().stream()
                .map(Known::test)
                .filter(test -> same(test.setup(), setup))
                .toList(),
            day);
  }

  private Optional<Answer> answer(Setup setup) {
    Answer answer = answers.get(setup);
    Field field = answer == null ? fields.get(Region.of(setup)) : null;
    if (field != null) {
      answer = answer(field, setup);
      answers.put(setup, answer);
    }
    return Optional.ofNullable(answer);
  }

  private Answer answer(Field field, Setup setup) {
    FadeField.Point point = point(field, setup);
    List<Weight> basis = new ArrayList<>();
    for (int i = 0; i < field.tests().size(); i++) {
      basis.add(new Weight(field.tests().get(i).test(), point.weights().get(i)));
    }
    basis.sort(Comparator.comparingDouble((Weight weight) -> -Math.abs(weight.share())));
    return new Answer(
        new Estimate(
            LoadEstimate.ofLogarithm(point.level(), point.levelVariance()),
            basis.stream().anyMatch(weight -> same(weight.test().setup(), setup)),
            basis),
        new FadingForce(EnduranceLaw.ROHMERT, point));
  }

  private FadeField.Point point(Field field, Setup setup) {
    Place place = Place.of(setup, postures, law);
    return field
        .field()
        .at(
            field.places().stream().mapToDouble(place::covariance).toArray(),
            place.covariance(place),
            place.expected());
  }

  private static boolean same(Setup tested, Setup setup) {
    return tested.grip().name().equals(setup.grip().name())
        && EdgeDepth.same(tested.edge(), setup.edge());
  }
}
