package gripwright.strength;

import gripwright.grip.Setup;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Estimates how an athlete's strength changed, from all tests and from completed holds of training:
 * the model of the {@link StrengthMap}, asked for two days.
 *
 * <p>Tests count as in the map. A completed hold shows that the greatest load for its time was at
 * least the load held; how much greater is not known ({@link LowerBounds}). So a hold that is light
 * for the athlete changes almost nothing, and one that is heavy raises and narrows the estimate.
 * Only reports use this: loads are prescribed from the map, which knows tests alone. Immutable if
 * the given postures are.
 */
public final class StrengthCourse {

  /** How many completed holds count at most, the newest; the library's own choice. */
  public static final int MOST_HOLDS = 40;

  /**
   * Of the holds of one setup and time in so many days only the heaviest counts, since repeating it
   * shows nothing new; the library's own choice.
   */
  public static final int HOLD_DAYS = 28;

  private final Function<Setup, Posture> postures;
  private final LocalDate day;
  private final Map<Region, Field> fields = new HashMap<>();

  /** The strength for a hold time, a number of months before the day. */
  private record State(Place place, double months, double allowed) {

    double covariance(State other) {
      double similarity = place.similarity(other.place);
      return place.covariance(other.place, similarity)
          + drift(similarity, Math.min(months, other.months));
    }
  }

  private static double drift(double similarity, double months) {
    return StrengthMap.DRIFT_VARIANCE * StrengthMap.commonDrift(similarity) * months;
  }

  /** The tests and completed holds of a region. */
  private record Field(
      List<State> tests,
      FadeField field,
      List<State> holds,
      List<FadeField.Unknown> held,
      Optional<LowerBounds> bounds) {

    /** Returns the estimate of a number by its covariances with other states. */
    Normal at(FadeField.Unknown unknown, double variance, Function<State, Double> covariance) {
      double[] withHolds = new double[holds.size()];
      for (int i = 0; i < withHolds.length; i++) {
        withHolds[i] = field.covariance(unknown, held.get(i), covariance.apply(holds.get(i)));
      }
      Optional<LowerBounds.Effect> effect = bounds.map(known -> known.effectOn(withHolds));
      return new Normal(
          field.mean(unknown) + effect.map(LowerBounds.Effect::mean).orElse(0.0),
          Math.max(
              0,
              field.covariance(unknown, unknown, variance)
                  + effect.map(LowerBounds.Effect::variance).orElse(0.0)));
    }

    double[] withTests(Function<State, Double> covariance) {
      return tests.stream().mapToDouble(covariance::apply).toArray();
    }
  }

  private record Normal(double mean, double variance) {}

  private StrengthCourse(Function<Setup, Posture> postures, LocalDate day) {
    this.postures = postures;
    this.day = day;
  }

  /**
   * Creates the course up to a day.
   *
   * @param tests in any order; later ones, and those with times outside 2 s to 10 min, are ignored
   * @param holds completed holds, in any order; the same are ignored, and those that are more than
   *     {@value OutlierTests#MOST_DEVIATIONS} standard deviations above what tests suggest
   * @param postures the posture of the athlete's own fingers in a setup, see {@link Posture#of}
   * @param day the day
   */
  public static StrengthCourse of(
      Collection<StrengthTest> tests,
      Collection<CompletedHold> holds,
      Function<Setup, Posture> postures,
      LocalDate day) {
    Objects.requireNonNull(tests, "tests");
    Objects.requireNonNull(holds, "holds");
    Objects.requireNonNull(postures, "postures");
    Objects.requireNonNull(day, "day");
    StrengthCourse course = new StrengthCourse(postures, day);
    List<CompletedHold> known = heaviest(holds, day);
    StrengthMap.known(tests, day)
        .forEach(
            (region, ofRegion) ->
                course.fields.put(
                    region,
                    course.field(
                        ofRegion,
                        known.stream()
                            .filter(hold -> Region.of(hold.setup()).equals(region))
                            .toList())));
    return course;
  }

  private static List<CompletedHold> heaviest(Collection<CompletedHold> holds, LocalDate day) {
    Map<List<Object>, CompletedHold> heaviest = new HashMap<>();
    holds.stream()
        .filter(hold -> !hold.date().isAfter(day) && ForceTime.inRange(hold.seconds()))
        .sorted(CompletedHold.ORDER)
        .forEach(
            hold ->
                heaviest.merge(
                    List.of(
                        hold.setup().toString(),
                        hold.hold(),
                        ChronoUnit.DAYS.between(hold.date(), day) / HOLD_DAYS),
                    hold,
                    (one, other) -> other.load().compareTo(one.load()) > 0 ? other : one));
    return heaviest.values().stream().sorted(CompletedHold.ORDER).toList();
  }

  private State state(Setup setup, LocalDate on, double seconds) {
    return new State(
        Place.of(setup, postures),
        StrengthMap.months(on, day),
        FadingForce.allowed(EnduranceLaw.ROHMERT, seconds));
  }

  private Field field(List<StrengthMap.Known> known, List<CompletedHold> completed) {
    int n = known.size();
    List<State> tests = new ArrayList<>();
    for (StrengthMap.Known each : known) {
      tests.add(state(each.test().setup(), each.test().date(), each.effort().seconds()));
    }
    RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
    double[] loads = new double[n];
    for (int i = 0; i < n; i++) {
      loads[i] =
          Math.log(known.get(i).effort().load().kilograms()) - tests.get(i).place().expected();
      for (int j = 0; j <= i; j++) {
        double entry = tests.get(i).covariance(tests.get(j));
        covariance.setEntry(i, j, entry);
        covariance.setEntry(j, i, entry);
      }
      covariance.addToEntry(i, i, TestReliability.of(known.get(i).test().result()).variance());
    }
    FadeField field =
        new FadeField(covariance, loads, tests.stream().mapToDouble(State::allowed).toArray());
    return withHolds(tests, field, completed);
  }

  private Field withHolds(List<State> tests, FadeField field, List<CompletedHold> completed) {
    List<State> holds = new ArrayList<>();
    List<FadeField.Unknown> held = new ArrayList<>();
    List<Double> bounds = new ArrayList<>();
    List<Double> noise = new ArrayList<>();
    for (CompletedHold hold : completed) {
      State state = state(hold.setup(), hold.date(), hold.seconds());
      FadeField.Unknown unknown =
          field.unknown(
              tests.stream().mapToDouble(state::covariance).toArray(), 1, state.allowed());
      double bound = Math.log(hold.load().kilograms()) - state.place().expected();
      double variance = TestReliability.ofHold(hold.seconds()).variance();
      double spread =
          Math.sqrt(field.covariance(unknown, unknown, state.covariance(state)) + variance);
      boolean plausible = bound <= field.mean(unknown) + OutlierTests.MOST_DEVIATIONS * spread;
      if (plausible && holds.size() < MOST_HOLDS) {
        holds.add(state);
        held.add(unknown);
        bounds.add(bound);
        noise.add(variance);
      }
    }
    return new Field(tests, field, holds, held, bounds(field, holds, held, bounds, noise));
  }

  private static Optional<LowerBounds> bounds(
      FadeField field,
      List<State> holds,
      List<FadeField.Unknown> held,
      List<Double> bounds,
      List<Double> noise) {
    int n = holds.size();
    if (n == 0) {
      return Optional.empty();
    }
    RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double deviations = holds.get(i).covariance(holds.get(j));
        covariance.setEntry(i, j, field.covariance(held.get(i), held.get(j), deviations));
      }
    }
    double[] means = held.stream().mapToDouble(field::mean).toArray();
    return Optional.of(new LowerBounds(means, covariance, array(bounds), array(noise)));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * Returns the change in a setup between two days.
   *
   * @param from the earlier day
   * @param to the later day, not after the day of the course
   * @return empty if no test counts for this setup
   * @throws IllegalArgumentException if the days are not in this order
   */
  public Optional<StrengthChange> change(Setup setup, LocalDate from, LocalDate to) {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (!from.isBefore(to) || to.isAfter(day)) {
      throw new IllegalArgumentException(from + ", " + to + " and " + day + " are not in order");
    }
    double earlier = StrengthMap.months(from, day);
    double later = StrengthMap.months(to, day);
    Place place = Place.of(setup, postures);
    Function<State, Double> covariance =
        state ->
            drift(
                place.similarity(state.place()),
                Math.min(later, state.months()) - Math.min(earlier, state.months()));
    return Optional.ofNullable(fields.get(Region.of(setup)))
        .map(
            field ->
                field.at(
                    field.field().unknown(field.withTests(covariance), 0, 0),
                    drift(1, earlier - later),
                    covariance))
        .map(normal -> new StrengthChange(from, to, normal.mean(), Math.sqrt(normal.variance())));
  }

  /**
   * Returns the reference maximum of a setup on the day, held for 7 s, with what completed holds
   * show. Loads are never prescribed from it.
   *
   * @return empty if no test counts for this setup
   */
  public Optional<LoadEstimate> maximum(Setup setup) {
    Objects.requireNonNull(setup, "setup");
    State state = state(setup, day, ForceTime.REFERENCE_SECONDS);
    return Optional.ofNullable(fields.get(Region.of(setup)))
        .map(
            field ->
                field.at(
                    field.field().unknown(field.withTests(state::covariance), 1, 0),
                    state.covariance(state),
                    state::covariance))
        .map(
            normal ->
                LoadEstimate.ofLogarithm(
                    state.place().expected() + normal.mean(), normal.variance()));
  }

  /** Returns whether completed holds count for a setup. */
  public boolean hasHolds(Setup setup) {
    Field field = fields.get(Region.of(setup));
    return field != null && !field.holds().isEmpty();
  }
}
