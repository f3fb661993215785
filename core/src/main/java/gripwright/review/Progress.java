package gripwright.review;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.strength.LoadEstimate;
import gripwright.strength.OutlierTests;
import gripwright.strength.StrengthChange;
import gripwright.strength.StrengthCourse;
import gripwright.strength.StrengthTest;
import gripwright.strength.TestReliability;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The tests of one setup, done the same way, and how strength changed from the first to the last.
 * That change is estimated from all tests of the athlete and from completed holds. Two tests alone
 * are compared only if they have grip, edge, hands and hold time in common; holds to failure are
 * not, since their reliability is unknown. Immutable.
 *
 * @param setup grip, edge and hands
 * @param how the hold time in s of single holds, or of the repeated holds of a series
 * @param series true for all-out series, of which the best mean counts
 * @param points tests, oldest first
 * @param change from the first to the last of these that fit; empty unless two days have one
 */
public record Progress(
    Setup setup, double how, boolean series, List<Point> points, Optional<StrengthChange> change) {

  /** Days that tests must span for a trend. */
  private static final int TREND_DAYS = 14;

  private static final int TREND_POINTS = 3;
  private static final double DAYS_PER_MONTH = 30.4375;

  /**
   * A test.
   *
   * @param date when
   * @param load greatest load, or the best mean of a series
   * @param odd the estimate from the athlete's other tests if this one doesn't fit them; such a
   *     test is left out of changes and trends
   * @param inForce true if a sensor showed a force in N, which is the weight of the load
   */
  public record Point(LocalDate date, Load load, Optional<LoadEstimate> odd, boolean inForce) {}

  /** The meaning of a change between two tests. */
  public enum Verdict {
    /** Higher by more than chance explains in 95 of 100 retests. */
    HIGHER,
    /** Within the range of chance. */
    WITHIN_NOISE,
    /** Lower by more than chance explains. */
    LOWER
  }

  /**
   * The change between two tests.
   *
   * @param from the earlier
   * @param to the later
   * @param change later less earlier, in kg
   * @param detectable least change that is more than noise, in kg, at the mean of the two
   * @param verdict what it means
   */
  public record Change(Point from, Point to, double change, double detectable, Verdict verdict) {

    static Change of(Point from, Point to, TestReliability reliability) {
      double change = to.load().kilograms() - from.load().kilograms();
      double mean = (to.load().kilograms() + from.load().kilograms()) / 2;
      double detectable = mean * reliability.detectableChange();
      return new Change(from, to, change, detectable, verdict(change, detectable));
    }

    private static Verdict verdict(double change, double detectable) {
      if (Math.abs(change) <= detectable) {
        return Verdict.WITHIN_NOISE;
      }
      return change > 0 ? Verdict.HIGHER : Verdict.LOWER;
    }
  }

  /** Copies the tests. */
  public Progress {
    points = List.copyOf(points);
  }

  /** Groups comparable tests, by setup. */
  static List<Progress> of(
      List<StrengthTest> tests, List<OutlierTests.Odd> odd, StrengthCourse course) {
    Map<String, List<StrengthTest>> groups = new TreeMap<>();
    for (StrengthTest test : tests) {
      if (!(test.result() instanceof StrengthTest.ToFailure) && test.effort().isPresent()) {
        boolean series = test.result() instanceof StrengthTest.Series;
        String key = test.setup() + "/" + series + "/" + test.effort().orElseThrow().seconds();
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(test);
      }
    }
    List<Progress> all = new ArrayList<>();
    groups.values().forEach(group -> all.add(of(group.get(0), group, odd, course)));
    all.sort(
        Comparator.comparing((Progress progress) -> progress.setup().hands())
            .thenComparing(progress -> progress.setup().lifting())
            .thenComparing(progress -> -progress.points().size())
            .thenComparing(progress -> progress.setup().toString())
            .thenComparing(Progress::how));
    return all;
  }

  private static Progress of(
      StrengthTest first,
      List<StrengthTest> group,
      List<OutlierTests.Odd> odd,
      StrengthCourse course) {
    List<Point> points = new ArrayList<>();
    for (StrengthTest test : group) {
      points.add(
          new Point(
              test.date(),
              test.effort().orElseThrow().load(),
              odd.stream()
                  .filter(each -> each.test().equals(test))
                  .map(OutlierTests.Odd::expected)
                  .findFirst(),
              test.inForce()));
    }
    points.sort(Comparator.comparing(Point::date).thenComparing(Point::load));
    List<LocalDate> days = fitting(points).stream().map(Point::date).distinct().toList();
    return new Progress(
        first.setup(),
        first.effort().orElseThrow().seconds(),
        first.result() instanceof StrengthTest.Series,
        points,
        days.size() < 2
            ? Optional.empty()
            : course.change(first.setup(), days.get(0), days.get(days.size() - 1)));
  }

  /** Returns how well these tests repeat. */
  public TestReliability reliability() {
    return series ? TestReliability.PEAK_FORCE : TestReliability.ofHold(how);
  }

  private List<Point> fitting() {
    return fitting(points);
  }

  private static List<Point> fitting(List<Point> points) {
    return points.stream().filter(point -> point.odd().isEmpty()).toList();
  }

  /** Returns the change from the first test to the last; empty unless two fit. */
  public Optional<Change> sinceFirst() {
    List<Point> fitting = fitting();
    return fitting.size() < 2
        ? Optional.empty()
        : Optional.of(Change.of(fitting.get(0), fitting.get(fitting.size() - 1), reliability()));
  }

  /** Returns the change between the last two tests; empty unless two fit. */
  public Optional<Change> sinceLast() {
    List<Point> fitting = fitting();
    return fitting.size() < 2
        ? Optional.empty()
        : Optional.of(
            Change.of(
                fitting.get(fitting.size() - 2), fitting.get(fitting.size() - 1), reliability()));
  }

  /**
   * Returns the slope of a straight line through the tests by least squares, in kg a month of
   * 30.4375 days; empty unless three fit that span {@value #TREND_DAYS} days. It has an error of
   * its own and must not be extrapolated.
   */
  public OptionalDouble trend() {
    List<Point> fitting = fitting();
    if (fitting.size() < TREND_POINTS) {
      return OptionalDouble.empty();
    }
    LocalDate first = fitting.get(0).date();
    if (ChronoUnit.DAYS.between(first, fitting.get(fitting.size() - 1).date()) < TREND_DAYS) {
      return OptionalDouble.empty();
    }
    double days = fitting.stream().mapToDouble(p -> days(first, p)).average().orElseThrow();
    double load = fitting.stream().mapToDouble(p -> p.load().kilograms()).average().orElseThrow();
    double across = 0;
    double squares = 0;
    for (Point point : fitting) {
      across += (days(first, point) - days) * (point.load().kilograms() - load);
      squares += (days(first, point) - days) * (days(first, point) - days);
    }
    return OptionalDouble.of(across / squares * DAYS_PER_MONTH);
  }

  private static double days(LocalDate first, Point point) {
    return ChronoUnit.DAYS.between(first, point.date());
  }
}
