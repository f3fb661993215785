package gripwright.planning.load;

import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.strength.Effort;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Decides how much of an estimated maximum counts for loads. It is never more than the last test of
 * the setup showed, so a fall counts at once. Within a plan that already trains the grip, loads
 * follow a rise week by week ({@link Rise}). The first test of a setup counts at once.
 */
final class BelievedMaximum {

  private static final double TOLERANCE = 1e-9;

  private final Log log;
  private final LocalDate planFrom;
  private final double step;
  private final Knowledge knowledge;
  private final Map<List<Object>, OptionalDouble> shown = new HashMap<>();
  private final Map<Setup, LocalDate> firstTests = new HashMap<>();
  private final IdentityHashMap<Rise, Map<List<Object>, Double>> known = new IdentityHashMap<>();

  /** What is known of the athlete's strength. */
  interface Knowledge {

    /** Returns the tests that count on a day, by date. */
    List<StrengthTest> tests(LocalDate day);

    /**
     * Returns the estimate of a setup's maximum.
     *
     * @param rehabilitation true if tests from before an injury count in full
     */
    StrengthMap strength(Setup setup, LocalDate day, boolean rehabilitation);

    /** Returns the greatest weekly rise of a setup's loads, as a share. */
    double rise(Setup setup, LocalDate day, boolean rehabilitation, double ofPlan);

    /** Returns the last day up to a day on which new tests or body masses were known. */
    LocalDate since(LocalDate day);
  }

  /**
   * The part of an estimated maximum that counts.
   *
   * @param share of its lower bound, above 0 and at most 1
   * @param follows the resulting maximum, while loads still follow a higher test
   */
  record Believed(double share, Optional<Follows> follows) {}

  /**
   * A higher test that loads follow.
   *
   * @param allowed the maximum that tests allow
   * @param rise greatest rise in a week, as a share
   */
  record Follows(Load allowed, double rise) {}

  /**
   * Creates the decision.
   *
   * @param step the smallest step of the equipment, by which a load may rise in any week
   */
  BelievedMaximum(Log log, LocalDate planFrom, Load step, Knowledge knowledge) {
    this.log = log;
    this.planFrom = planFrom;
    this.step = step.kilograms();
    this.knowledge = knowledge;
  }

  /**
   * Returns the part of a setup's maximum that counts on a day.
   *
   * @param rise the weeks in which loads may follow a higher test
   */
  Believed on(Setup setup, LocalDate day, boolean rehabilitation, Rise rise) {
    OptionalDouble low = low(setup, day, rehabilitation);
    if (low.isEmpty()) {
      return new Believed(1, Optional.empty());
    }
    double most = shown(setup, day, rehabilitation);
    double followed =
        rise.weeks().isEmpty() || !knowledge.since(day).isAfter(planFrom)
            ? most
            : known
                .computeIfAbsent(rise, r -> new HashMap<>())
                .computeIfAbsent(
                    List.of(setup, day, rehabilitation),
                    key -> followed(setup, day, rehabilitation, rise));
    return followed < most - TOLERANCE
        ? new Believed(
            followed / low.getAsDouble(),
            Optional.of(
                new Follows(
                    Load.ofKilograms(most),
                    knowledge.rise(setup, day, rehabilitation, rise.share()))))
        : new Believed(most / low.getAsDouble(), Optional.empty());
  }

  /** Returns how far loads have followed higher tests by a day, in kg; at most the share. */
  private double followed(Setup setup, LocalDate day, boolean rehabilitation, Rise rise) {
    String grip = setup.grip().name();
    List<Rise.Week> weeks =
        rise.weeks().stream()
            .filter(week -> !week.first().isAfter(day))
            .dropWhile(week -> !week.grips().contains(grip))
            .toList();
    if (weeks.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    LocalDate last =
        earlier(firstDone(grip, weeks.get(0).first()), earlier(end(weeks.get(0)), day));
    double start = shown(setup, last, rehabilitation);
    double now = start;
    for (int i = 0; i < weeks.size(); i++) {
      Rise.Week week = weeks.get(i);
      LocalDate end = earlier(end(week), day);
      boolean rises = i == 0 || week.open();
      double share = rises ? knowledge.rise(setup, week.first(), rehabilitation, rise.share()) : 0;
      double least = rises ? step : 0;
      double most = Math.max(now, Math.max(start * (1 + share), start + least));
      if (firstTested(setup, last, end)) {
        most = Double.POSITIVE_INFINITY;
        start = shown(setup, end, rehabilitation);
      } else if (i > 0) {
        most = rises ? most : now;
        start = Math.min(most, shown(setup, week.first(), rehabilitation));
      }
      for (StrengthTest test : log.tests()) {
        if (test.date().isAfter(last) && !test.date().isAfter(end)) {
          start = Math.min(start, shown(setup, test.date(), rehabilitation));
        }
      }
      // A maximum that falls during the week returns no faster.
      now = Math.min(most, Math.max(start * (1 + share), start + least));
      now = Math.min(now, shown(setup, end, rehabilitation));
      last = end;
    }
    return now;
  }

  private static LocalDate end(Rise.Week week) {
    return week.first().plusDays(6);
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  /** Returns the first later day with a logged exercise on a grip. */
  private LocalDate firstDone(String grip, LocalDate from) {
    return log.of(LogEntry.Trained.class).stream()
        .filter(trained -> !trained.date().isBefore(from))
        .filter(
            trained -> trained.done().stream().anyMatch(d -> d.setup().grip().name().equals(grip)))
        .map(LogEntry.Trained::date)
        .min(LocalDate::compareTo)
        .orElse(LocalDate.MAX);
  }

  /** Returns whether a setup was tested for the first time between two days, the later included. */
  private boolean firstTested(Setup setup, LocalDate after, LocalDate upTo) {
    return firstTests.computeIfAbsent(setup, this::firstTest).isAfter(after)
        && !firstTests.get(setup).isAfter(upTo);
  }

  private LocalDate firstTest(Setup setup) {
    return log.tests().stream()
        .filter(test -> test.setup().equals(setup))
        .map(StrengthTest::date)
        .min(LocalDate::compareTo)
        .orElse(LocalDate.MAX);
  }

  /**
   * Returns the lower bound in kg, limited to the last test of this setup and of each deeper edge.
   */
  private double shown(Setup setup, LocalDate day, boolean rehabilitation) {
    StrengthMap strength = knowledge.strength(setup, day, rehabilitation);
    OptionalDouble known =
        shown.computeIfAbsent(
            List.of(setup, knowledge.since(day), strength),
            key -> newlyShown(setup, day, strength));
    return known.orElse(Double.POSITIVE_INFINITY);
  }

  private OptionalDouble newlyShown(Setup setup, LocalDate day, StrengthMap strength) {
    OptionalDouble low = low(setup, strength);
    Optional<ForceTime> curve = strength.curve(setup);
    if (low.isEmpty() || curve.isEmpty()) {
      return low;
    }
    // A deeper edge is easier: what was not held there is not held here either.
    Map<Setup, NavigableMap<LocalDate, Double>> tested = new HashMap<>();
    for (StrengthTest test : knowledge.tests(knowledge.since(day))) {
      Optional<Effort> effort = test.effort().filter(e -> curve.get().isValidFor(e.seconds()));
      if (effort.isPresent() && !test.date().isAfter(day) && isNoHarder(test.setup(), setup)) {
        tested
            .computeIfAbsent(test.setup(), s -> new TreeMap<>())
            .merge(test.date(), atReference(effort.get(), curve.get()), Math::max);
      }
    }
    double most =
        tested.values().stream()
            .mapToDouble(byDay -> byDay.lastEntry().getValue())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return OptionalDouble.of(Math.min(low.getAsDouble(), most));
  }

  /** Returns whether a setup is another but for its edge, which is at least as deep. */
  private static boolean isNoHarder(Setup one, Setup other) {
    return one.edge().compareTo(other.edge()) >= 0
        && new Setup(one.grip(), other.edge(), one.hands(), one.lifting()).equals(other);
  }

  /** Returns the load equivalent to an effort for 7 s, by the athlete's own curve, in kg. */
  private static double atReference(Effort effort, ForceTime curve) {
    Load reference = curve.load(ForceTime.REFERENCE_SECONDS).best();
    Load then = curve.load(effort.seconds()).best();
    return effort.load().kilograms() * reference.kilograms() / then.kilograms();
  }

  private OptionalDouble low(Setup setup, LocalDate day, boolean rehabilitation) {
    return low(setup, knowledge.strength(setup, day, rehabilitation));
  }

  private static OptionalDouble low(Setup setup, StrengthMap strength) {
    return strength
        .maximum(setup)
        .map(estimate -> OptionalDouble.of(estimate.load().low().kilograms()))
        .orElse(OptionalDouble.empty());
  }
}
