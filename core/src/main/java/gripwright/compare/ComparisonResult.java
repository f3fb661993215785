package gripwright.compare;

import gripwright.finding.Finding;
import gripwright.grip.Setup;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a comparison gives: for each athlete, or for the cohort, the arms with their measures, the
 * differences of each pair of arms, and which arms no other one beats. No gain in strength and no
 * risk of injury is predicted, and there is no overall score. Immutable.
 *
 * @param comparison what was compared
 * @param subjects the result of each athlete, or of the cohort; empty if there are errors
 * @param findings what was found about arms and matches
 */
public record ComparisonResult(
    Comparison comparison, List<Subject> subjects, List<Finding> findings) {

  /** Copies the lists. */
  public ComparisonResult {
    Objects.requireNonNull(comparison, "comparison");
    subjects = List.copyOf(subjects);
    findings = List.copyOf(findings);
  }

  /** Returns whether there is a result: no error was found. */
  public boolean usable() {
    return findings.stream().noneMatch(Finding::blocks);
  }

  /**
   * The result of an athlete or of a cohort.
   *
   * @param name of the athlete or the cohort
   * @param athletes how many persons were drawn; 0 for an athlete
   * @param draws how many times the parameters of the models were drawn
   * @param inputs names of the parameters that were drawn
   * @param matches how arms were made equal
   * @param arms the arms, in the order written
   * @param differences of each pair of arms, by measure in the order written
   * @param pareto for each arm the probability that no other arm is better in all objectives; empty
   *     without objectives
   */
  public record Subject(
      String name,
      int athletes,
      int draws,
      List<String> inputs,
      List<Matched> matches,
      List<ArmResult> arms,
      List<Difference> differences,
      Map<String, Double> pareto) {
    /** Copies the lists. */
    public Subject {
      Objects.requireNonNull(name, "name");
      inputs = List.copyOf(inputs);
      matches = List.copyOf(matches);
      arms = List.copyOf(arms);
      differences = List.copyOf(differences);
      pareto = Collections.unmodifiableMap(new java.util.LinkedHashMap<>(pareto));
    }
  }

  /**
   * How an arm was made equal to another one.
   *
   * @param match as written
   * @param value of the parameter that was found, in its unit; a share in per cent
   * @param unit of the value; empty for a number of repeats
   * @param target the quantity to be reached, in the unit of its measure
   * @param residual what is left, as a share of the target
   */
  public record Matched(
      Comparison.Match match, double value, String unit, double target, double residual) {
    /** Refuses null. */
    public Matched {
      Objects.requireNonNull(match, "match");
      Objects.requireNonNull(unit, "unit");
    }
  }

  /**
   * An arm with its measures for the typical athlete.
   *
   * @param arm after matching
   * @param sessions in all
   * @param holds in all
   * @param heaviest greatest load of a hold, in kg; empty without a hold
   * @param heaviestOfTest that load as a share of the test of its grip, edge and hands, as it is
   *     built; empty without a test
   * @param values by measure
   * @param schedule the holds of each different session, in order
   * @param weeks the weeks
   */
  public record ArmResult(
      Arm arm,
      int sessions,
      int holds,
      OptionalDouble heaviest,
      OptionalDouble heaviestOfTest,
      Map<Measure, Value> values,
      List<PlannedHold> schedule,
      List<PlannedWeek> weeks) {
    /** Copies the map and the lists. */
    public ArmResult {
      Objects.requireNonNull(arm, "arm");
      values = Collections.unmodifiableMap(new EnumMap<>(values));
      schedule = List.copyOf(schedule);
      weeks = List.copyOf(weeks);
    }
  }

  /**
   * A hold of a session for the typical athlete.
   *
   * @param session number of the session among the different ones, from 1
   * @param times how often this session is done
   * @param number of the hold in the session, from 1
   * @param setup grip, edge and hands
   * @param seconds time of the hold; of a bound the time for which it is predicted to be held
   * @param restSeconds the rest after it; 0 after the last
   * @param load total load in kg
   * @param share the load as a share of the maximum of the setup
   */
  public record PlannedHold(
      int session,
      int times,
      int number,
      Setup setup,
      double seconds,
      double restSeconds,
      double load,
      double share) {
    /** Refuses null. */
    public PlannedHold {
      Objects.requireNonNull(setup, "setup");
    }
  }

  /**
   * A week for the typical athlete.
   *
   * @param number from 1
   * @param eased whether it is eased (deload)
   * @param sessions how many
   * @param timeUnderLoadSeconds time under tension, in s
   * @param loadTimeKgS load-time, in kg s
   */
  public record PlannedWeek(
      int number, boolean eased, int sessions, double timeUnderLoadSeconds, double loadTimeKgS) {}

  /**
   * A value with its interval over the parameters of the models.
   *
   * @param best at the published parameters; infinite for a first failure that doesn't come
   * @param low 5th percentile of the draws
   * @param high 95th percentile of the draws
   * @param missing why it can't be given; empty if it can
   */
  public record Value(double best, double low, double high, Optional<Missing> missing) {
    /** Refuses null. */
    public Value {
      Objects.requireNonNull(missing, "missing");
    }

    static Value without(Missing why) {
      return new Value(Double.NaN, Double.NaN, Double.NaN, Optional.of(why));
    }
  }

  /** What can be said of a difference. */
  public enum Verdict {
    /** The 90 % interval lies above 0: the first arm has more. */
    MORE,
    /** The 90 % interval lies below 0: the first arm has less. */
    LESS,
    /** Both arms are equal in every draw. */
    EQUAL,
    /** The 90 % interval contains 0. */
    UNDECIDED,
    /** The sign differs between models. */
    DEPENDS_ON_THE_MODEL,
    /** One of the arms has no training. */
    NOTHING_DONE,
    /** It can't be given. */
    NOT_AVAILABLE
  }

  /**
   * The difference of two arms in a measure: the logarithm of the ratio of the first to the second,
   * or the plain difference, as the measure says.
   *
   * @param a name of the first arm
   * @param b name of the second arm
   * @param measure the measure
   * @param missing why it has no size; empty if it has
   * @param best at the published parameters
   * @param median over the draws
   * @param low50 lower end of the middle half of the draws
   * @param high50 its upper end
   * @param low90 5th percentile
   * @param high90 95th percentile
   * @param greater probability over the draws that the first arm has more, ties counted half; for a
   *     first failure that it comes later
   * @param standardError Monte Carlo standard error of the mean difference
   * @param ofAthletes share of the persons of the cohort for whom the first arm has more, ties
   *     counted half; empty for an athlete
   * @param drivers the parameters that move the difference most, at most three
   * @param scenarios the difference by other models
   * @param verdict what can be said
   * @param percentiles the 0th to the 100th percentile over the draws; empty without a size
   */
  public record Difference(
      String a,
      String b,
      Measure measure,
      Optional<Missing> missing,
      double best,
      double median,
      double low50,
      double high50,
      double low90,
      double high90,
      double greater,
      double standardError,
      OptionalDouble ofAthletes,
      List<Driver> drivers,
      List<Scenario> scenarios,
      Verdict verdict,
      List<Double> percentiles) {
    /** Copies the lists. */
    public Difference {
      drivers = List.copyOf(drivers);
      scenarios = List.copyOf(scenarios);
      percentiles = List.copyOf(percentiles);
    }

    /** Returns the ratio of the first to the second arm for a logarithm. */
    public static double ratio(double logarithm) {
      return Math.exp(logarithm);
    }
  }

  /**
   * A parameter that moves a difference.
   *
   * @param input name of the parameter
   * @param share of the variance that goes with it, 0 to 1: the squared correlation over the draws
   *     or, where Sobol indices were asked for, the total index
   * @param shareInterval bootstrap interval of the total index, 90 %; empty unless asked for
   * @param first first-order Sobol index; empty unless asked for
   * @param firstInterval bootstrap interval of the first-order index, 90 %; empty unless asked for
   */
  public record Driver(
      String input,
      double share,
      Optional<Interval> shareInterval,
      OptionalDouble first,
      Optional<Interval> firstInterval) {
    /** Refuses null. */
    public Driver {
      Objects.requireNonNull(input, "input");
      Objects.requireNonNull(shareInterval, "shareInterval");
      Objects.requireNonNull(first, "first");
      Objects.requireNonNull(firstInterval, "firstInterval");
    }

    /**
     * Returns a parameter without Sobol indices.
     *
     * @param share squared correlation with the difference, 0 to 1
     */
    static Driver byCorrelation(String input, double share) {
      return new Driver(input, share, Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }
  }

  /**
   * A range that an estimate lies in.
   *
   * @param low its lower end
   * @param high its upper end, not below the lower
   */
  public record Interval(double low, double high) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the upper end is below the lower, or one is no number
     */
    public Interval {
      if (!(low <= high)) {
        throw new IllegalArgumentException("no interval: " + low + " to " + high);
      }
    }
  }

  /**
   * A difference by another model, never averaged with others.
   *
   * @param name of the set or law
   * @param best the difference at its published parameters; NaN if it can't be given
   */
  public record Scenario(String name, double best) {
    /** Refuses null. */
    public Scenario {
      Objects.requireNonNull(name, "name");
    }
  }
}
