package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.hand.Hands;
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
 * What an athlete's tests say on one day of the greatest load in every setup, with intervals: a
 * Gaussian process over fingers, posture, edge and hold time, in logarithms of load.
 *
 * <p>Nothing is assumed of how strong the athlete is. All tests together tell the level, how
 * steeply load falls with time beside Rohmert's law, and how grips differ from what is expected of
 * them; a test tells most of its own setup and less of others the less they are like it. Old tests
 * count less: what the athlete gained or lost since is unknown and the same for all tests of one
 * age. The interval of a setup without a test is wider, so that what is prescribed of its low end
 * starts light.
 *
 * <p>One hand is never reckoned from two, the left never from the right, nor a lift from a hang:
 * each has a map of its own, and so has each edge at or below 4.3 mm. With one test more no
 * interval gets wider; scaling all tests scales all estimates; the order of tests does not matter.
 * The spreads are fixed, so that nothing is fitted but the loads. Immutable if the postures it was
 * given are.
 */
public final class StrengthMap {

  /**
   * Spread of fade, the power of the law's share, between athletes. The library's own choice: the
   * hand and grip law of Frey Law and Avin lies within one and a half of it from Rohmert's.
   */
  public static final double FADE_SPREAD = 0.3;

  /**
   * Spread of a setup about what is expected of it, shared by setups that are like it; the
   * library's own choice, wide on purpose.
   */
  public static final double SETUP_SPREAD = 0.15;

  /**
   * Spread of a grip that no other grip tells of, however like it is in fingers and angles of the
   * middle joints: end joints, thumb, skin, practice. The library's own choice. It keeps the first
   * load of an untested grip below that of a tested one in the same posture.
   */
  public static final double GRIP_SPREAD = 0.08;

  /**
   * How far apart, in degrees, angles are of little use for each other: the spread of a normal
   * curve; the library's own choice.
   */
  public static final double ANGLE_REACH = 30;

  /**
   * Spread of the power of depth; the library's own choice: no rise and the steepest rise that the
   * published envelope allows both lie within three and a half of it.
   */
  public static final double DEPTH_POWER_SPREAD = 0.08;

  /** The same as {@link #ANGLE_REACH} for the logarithm of depth; the library's own choice. */
  public static final double DEPTH_REACH = 1;

  /**
   * Spread that a month adds, which grows with the root of time: 14 % in a year. The library's own
   * choice.
   */
  public static final double DRIFT_PER_ROOT_MONTH = 0.04;

  /** How many tests a map rests on at most, the newest; the library's own choice. */
  public static final int MOST_TESTS = 200;

  private static final double TEST_VARIANCE =
      TestReliability.PEAK_FORCE.variation() * TestReliability.PEAK_FORCE.variation();
  private static final double DRIFT_VARIANCE = DRIFT_PER_ROOT_MONTH * DRIFT_PER_ROOT_MONTH;
  private static final double DAYS_PER_MONTH = 30.4375;

  private static final Comparator<Known> ORDER =
      Comparator.comparing((Known known) -> known.test().date(), Comparator.reverseOrder())
          .thenComparing(known -> known.test().setup().grip().name())
          .thenComparing(known -> known.test().setup().edge())
          .thenComparing(Known::effort, Effort.ORDER);

  private final Function<Setup, Posture> postures;
  private final Map<Region, Field> fields;
  private final Map<Setup, Answer> answers = new ConcurrentHashMap<>();

  private StrengthMap(Function<Setup, Posture> postures, Map<Region, Field> fields) {
    this.postures = postures;
    this.fields = fields;
  }

  /** Setups that may tell of each other. */
  private record Region(Hands hands, boolean lifting, long shallow) {

    private static final double HUNDREDTHS = 100;

    static Region of(Setup setup) {
      double depth = setup.edge().millimetres();
      return new Region(
          setup.hands(),
          setup.lifting(),
          depth > EdgeDepth.SHALLOWEST_RECKONED ? 0 : Math.round(depth * HUNDREDTHS));
    }
  }

  /** What is known of a setup that was asked for. */
  private record Answer(Estimate maximum, ForceTime curve) {}

  /** A test that tells something. */
  private record Known(StrengthTest test, Effort effort) {}

  private record Field(List<Known> tests, List<Place> places, FadeField field) {}

  /**
   * What is known of one setup.
   *
   * @param load the reference maximum, held for 7 s; loads are prescribed from its low end
   * @param tested true if this very setup was tested
   * @param basis the tests it rests on, the weightiest first
   */
  public record Estimate(LoadEstimate load, boolean tested, List<Weight> basis) {
    /** Copies the tests. */
    public Estimate {
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(basis, "basis");
      basis = List.copyOf(basis);
    }

    /** Returns the test that speaks most for the estimate. */
    public StrengthTest weightiest() {
      return basis.stream().max(Comparator.comparingDouble(Weight::share)).orElseThrow().test();
    }
  }

  /**
   * What a test counts for in an estimate: by so much of its own change in per cent the estimate
   * changes.
   *
   * @param test the test
   * @param share all shares sum to 1; below 0 where a test speaks for less elsewhere
   */
  public record Weight(StrengthTest test, double share) {
    /** Refuses null. */
    public Weight {
      Objects.requireNonNull(test, "test");
    }
  }

  /**
   * Draws the map as it is known on a day.
   *
   * @param tests in any order; those after the day are not known yet, and those at times outside 2
   *     s to 10 min tell nothing
   * @param postures how the athlete's own fingers lie in a setup, see {@link Posture#of}
   * @param day the day
   */
  public static StrengthMap of(
      Collection<StrengthTest> tests, Function<Setup, Posture> postures, LocalDate day) {
    Objects.requireNonNull(tests, "tests");
    Objects.requireNonNull(postures, "postures");
    Objects.requireNonNull(day, "day");
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
    Map<Region, Field> fields = new HashMap<>();
    regions.forEach((region, known) -> fields.put(region, field(known, postures, day)));
    return new StrengthMap(postures, fields);
  }

  private static Field field(List<Known> known, Function<Setup, Posture> postures, LocalDate day) {
    List<Known> tests = known.stream().sorted(ORDER).limit(MOST_TESTS).toList();
    List<Place> places = tests.stream().map(t -> Place.of(t.test().setup(), postures)).toList();
    int n = tests.size();
    RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
    double[] loads = new double[n];
    double[] allowed = new double[n];
    for (int i = 0; i < n; i++) {
      Effort effort = tests.get(i).effort();
      loads[i] = Math.log(effort.load().kilograms()) - places.get(i).expected();
      allowed[i] = FadingForce.allowed(EnduranceLaw.ROHMERT, effort.seconds());
      for (int j = 0; j <= i; j++) {
        // Newest first, so that of two tests the former saw less of what is unknown since.
        double entry =
            places.get(i).covariance(places.get(j))
                + DRIFT_VARIANCE * months(tests.get(j), day)
                + (i == j ? TEST_VARIANCE : 0);
        covariance.setEntry(i, j, entry);
        covariance.setEntry(j, i, entry);
      }
    }
    return new Field(tests, places, new FadeField(covariance, loads, allowed));
  }

  private static double months(Known known, LocalDate day) {
    return ChronoUnit.DAYS.between(known.test().date(), day) / DAYS_PER_MONTH;
  }

  /**
   * Returns how far an athlete's strength may have drifted between two days.
   *
   * @param from day of a test
   * @param to a later day, or the same
   * @return standard deviation of the logarithm of load, 0 on the same day
   * @throws IllegalArgumentException if the days are the wrong way round
   */
  public static double drift(LocalDate from, LocalDate to) {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (to.isBefore(from)) {
      throw new IllegalArgumentException(to + " is before " + from);
    }
    return DRIFT_PER_ROOT_MONTH * Math.sqrt(ChronoUnit.DAYS.between(from, to) / DAYS_PER_MONTH);
  }

  /**
   * Returns the reference maximum of a setup.
   *
   * @return empty if no test tells anything about this setup
   */
  public Optional<Estimate> maximum(Setup setup) {
    return answer(setup).map(Answer::maximum);
  }

  /**
   * Returns the greatest load of a setup by hold time, from 2 s to 10 min, by Rohmert's law and
   * what the tests tell of this athlete's fade. At 7 s it is the reference maximum.
   *
   * @return empty if no test tells anything about this setup
   */
  public Optional<ForceTime> curve(Setup setup) {
    return answer(setup).map(Answer::curve);
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
    Place place = Place.of(setup, postures);
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
