package gripwright.compare;

import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Driver;
import gripwright.compare.ComparisonResult.Matched;
import gripwright.compare.ComparisonResult.PlannedHold;
import gripwright.compare.ComparisonResult.PlannedWeek;
import gripwright.compare.ComparisonResult.Scenario;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.ComparisonResult.Value;
import gripwright.compare.ComparisonResult.Verdict;
import gripwright.grip.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Writes out what the arms give one athlete or one cohort, and how they differ. */
final class Outcomes {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;
  private static final double QUARTER = 0.25;
  private static final int MOST_DRIVERS = 3;

  private final Comparison comparison;
  private final People people;
  private final List<Arm> arms;
  private final List<Program> written;
  private final List<Setup> setups;
  private final Pairs pairs;

  /**
   * @param arms after matching
   * @param written the arms, as programs
   * @param setups those of the programs, by place
   */
  Outcomes(
      Comparison comparison,
      People people,
      List<Arm> arms,
      List<Program> written,
      List<Setup> setups,
      Pairs pairs) {
    this.comparison = comparison;
    this.people = people;
    this.arms = arms;
    this.written = written;
    this.setups = setups;
    this.pairs = pairs;
  }

  /**
   * What was evaluated for all pairs.
   *
   * @param prepared the people
   * @param best values of each arm at the published parameters
   * @param drawn differences over the draws
   * @param persons differences over the persons of a cohort; empty for an athlete
   * @param scenarios the arms by other models
   * @param sobol indices by pair and measure; empty if not wanted
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
  record Evaluated(
      People.Prepared prepared,
      double[][] best,
      Pairs.Tallies drawn,
      Optional<Pairs.Tallies> persons,
      List<Scenarios.Modelled> scenarios,
      Map<String, Sobol.Indices> sobol) {}

  Subject of(List<Matched> matches, Evaluated evaluated) {
    List<Difference> differences = new ArrayList<>();
    for (int pair = 0; pair < pairs.count(); pair++) {
      for (Measure measure : comparison.measures()) {
        differences.add(difference(pair, measure, evaluated));
      }
    }
    return new Subject(
        people.name(),
        people.size(),
        comparison.draws(),
        evaluated.prepared().inputs(),
        matches,
        armResults(evaluated.prepared(), evaluated.best(), evaluated.drawn()),
        differences,
        pareto(evaluated.drawn()));
  }

  private Difference difference(int pair, Measure measure, Evaluated evaluated) {
    int a = pairs.first(pair);
    int b = pairs.second(pair);
    Optional<Missing> missing = missing(a, b, measure, evaluated.prepared());
    Tally tally = evaluated.drawn().of(pair, measure);
    boolean sized = missing.isEmpty() && tally.total() > 0;
    boolean ordered = sized || missing.equals(Optional.of(Missing.ORDER_ONLY));
    List<Scenario> scenarios = new ArrayList<>();
    evaluated
        .scenarios()
        .forEach(
            modelled -> {
              if (sized && modelled.concerns().test(measure)) {
                double[][] values = modelled.values();
                scenarios.add(
                    new Scenario(modelled.name(), Pairs.difference(measure, values[a], values[b])));
              }
            });
    double nominal =
        sized ? Pairs.difference(measure, evaluated.best()[a], evaluated.best()[b]) : Double.NaN;
    return new Difference(
        arms.get(a).name(),
        arms.get(b).name(),
        measure,
        missing,
        nominal,
        sized ? tally.quantile(0.5) : Double.NaN,
        sized ? tally.quantile(QUARTER) : Double.NaN,
        sized ? tally.quantile(1 - QUARTER) : Double.NaN,
        sized ? tally.quantile(LOW) : Double.NaN,
        sized ? tally.quantile(HIGH) : Double.NaN,
        ordered ? tally.greater() : Double.NaN,
        sized ? tally.standardError() : Double.NaN,
        ordered ? ofPersons(pair, measure, evaluated) : OptionalDouble.empty(),
        sized ? drivers(pair, measure, tally, evaluated) : List.of(),
        scenarios,
        verdict(missing, sized, tally, nominal, scenarios),
        sized ? percentiles(tally) : List.of());
  }

  private static OptionalDouble ofPersons(int pair, Measure measure, Evaluated evaluated) {
    return evaluated.persons().isPresent()
        ? OptionalDouble.of(evaluated.persons().get().of(pair, measure).greater())
        : OptionalDouble.empty();
  }

  private static List<Double> percentiles(Tally tally) {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i <= 100; i++) {
      all.add(tally.quantile(i / 100.0));
    }
    return all;
  }

  private Optional<Missing> missing(int a, int b, Measure measure, People.Prepared prepared) {
    if (written.get(a).isNothing() || written.get(b).isNothing()) {
      return Optional.of(Missing.NOTHING_DONE);
    }
    for (int arm : new int[] {a, b}) {
      Missing why =
          new Evaluation(written.get(arm), FatigueScenario.AS_IN_PLANS, Set.of(measure))
              .missing(measure, prepared.reference());
      if (why != null) {
        return Optional.of(why);
      }
    }
    return measure.difference() == Measure.Difference.CENSORED
        ? Optional.of(Missing.ORDER_ONLY)
        : Optional.empty();
  }

  private static Verdict verdict(
      Optional<Missing> missing,
      boolean sized,
      Tally tally,
      double nominal,
      List<Scenario> others) {
    if (missing.isPresent()) {
      return missing.get() == Missing.NOTHING_DONE
          ? Verdict.NOTHING_DONE
          : missing.get() == Missing.ORDER_ONLY && tally.total() > 0
              ? tally.allTied() ? Verdict.EQUAL : Verdict.UNDECIDED
              : Verdict.NOT_AVAILABLE;
    }
    if (!sized) {
      return Verdict.NOT_AVAILABLE;
    }
    if (tally.allTied()) {
      return Verdict.EQUAL;
    }
    double sign = Math.signum(nominal);
    if (others.stream()
        .anyMatch(other -> other.best() != 0 && Math.signum(other.best()) == -sign)) {
      return Verdict.DEPENDS_ON_THE_MODEL;
    }
    return tally.quantile(LOW) > 0
        ? Verdict.MORE
        : tally.quantile(HIGH) < 0 ? Verdict.LESS : Verdict.UNDECIDED;
  }

  private List<Driver> drivers(int pair, Measure measure, Tally tally, Evaluated evaluated) {
    List<String> inputs = evaluated.prepared().inputs();
    Sobol.Indices indices = evaluated.sobol().get(key(pair, measure));
    List<Driver> drivers = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Driver driver =
          indices == null
              ? Driver.byCorrelation(inputs.get(i), tally.driven(i))
              : indices.driver(inputs.get(i), i);
      if (driver.share() > 0.01) {
        drivers.add(driver);
      }
    }
    drivers.sort(Comparator.comparingDouble((Driver driver) -> -driver.share()));
    return drivers.subList(0, Math.min(MOST_DRIVERS, drivers.size()));
  }

  static String key(int pair, Measure measure) {
    return pair + " " + measure.name().toLowerCase(Locale.ROOT);
  }

  private List<ArmResult> armResults(
      People.Prepared prepared, double[][] best, Pairs.Tallies drawn) {
    List<ArmResult> results = new ArrayList<>();
    for (int i = 0; i < arms.size(); i++) {
      Program program = written.get(i);
      Map<Measure, Value> values = new EnumMap<>(Measure.class);
      for (Measure measure : comparison.measures()) {
        values.put(measure, value(i, measure, prepared, best, drawn));
      }
      int[] times = program.times();
      int sessions = 0;
      int holds = 0;
      double heaviest = 0;
      OptionalDouble ofTest = OptionalDouble.empty();
      for (int s = 0; s < times.length; s++) {
        Program.Session session = program.sessions().get(s);
        sessions += times[s];
        holds += times[s] * session.holds();
        for (int step = 0; step < session.steps(); step++) {
          double load = session.isHold(step) ? session.load(step, prepared.reference()) : 0;
          if (load > heaviest) {
            heaviest = load;
            ofTest = people.shareOfTest(setups.get(session.setups()[step]), load);
          }
        }
      }
      results.add(
          new ArmResult(
              arms.get(i),
              sessions,
              holds,
              heaviest > 0 ? OptionalDouble.of(heaviest) : OptionalDouble.empty(),
              ofTest,
              values,
              schedule(program, prepared.reference()),
              weeks(program, prepared.reference())));
    }
    return results;
  }

  private List<PlannedHold> schedule(Program program, Person person) {
    List<PlannedHold> holds = new ArrayList<>();
    int[] times = program.times();
    for (int s = 0; s < times.length; s++) {
      Program.Session session =
          FatigueScenario.AS_IN_PLANS.actual(program.sessions().get(s), person);
      int number = 0;
      for (int step = 0; step < session.steps(); step++) {
        if (session.isHold(step)) {
          double rest = 0;
          for (int next = step + 1; next < session.steps() && !session.isHold(next); next++) {
            rest += session.seconds()[next];
          }
          holds.add(
              new PlannedHold(
                  s + 1,
                  times[s],
                  ++number,
                  setups.get(session.setups()[step]),
                  session.seconds()[step],
                  rest,
                  session.load(step, person),
                  session.share(step, person)));
        }
      }
    }
    return holds;
  }

  private static List<PlannedWeek> weeks(Program program, Person person) {
    List<PlannedWeek> weeks = new ArrayList<>();
    for (int week = 0; week < program.weeks().size(); week++) {
      double held = 0;
      double load = 0;
      for (int place : program.weeks().get(week)) {
        Program.Session session =
            FatigueScenario.AS_IN_PLANS.actual(program.sessions().get(place), person);
        for (int step = 0; step < session.steps(); step++) {
          if (session.isHold(step)) {
            held += session.seconds()[step];
            load += session.seconds()[step] * session.load(step, person);
          }
        }
      }
      weeks.add(
          new PlannedWeek(
              week + 1, program.eased()[week], program.weeks().get(week).length, held, load));
    }
    return weeks;
  }

  private Value value(
      int arm, Measure measure, People.Prepared prepared, double[][] best, Pairs.Tallies drawn) {
    if (written.get(arm).isNothing()) {
      return new Value(0, 0, 0, Optional.of(Missing.NOTHING_DONE));
    }
    Missing why =
        new Evaluation(written.get(arm), FatigueScenario.AS_IN_PLANS, Set.of(measure))
            .missing(measure, prepared.reference());
    if (why != null) {
      return Value.without(why);
    }
    double value = best[arm][measure.ordinal()];
    Tally tally = drawn.ofArm(arm, measure);
    if (measure.difference() == Measure.Difference.CENSORED || tally.total() == 0) {
      return new Value(value, value, value, Optional.empty());
    }
    double low = tally.quantile(LOW);
    double high = tally.quantile(HIGH);
    boolean ratio = measure.difference() == Measure.Difference.RATIO;
    return new Value(
        value,
        ratio ? value * Math.exp(low) : value + low,
        ratio ? value * Math.exp(high) : value + high,
        Optional.empty());
  }

  private Map<String, Double> pareto(Pairs.Tallies drawn) {
    Map<String, Double> pareto = new LinkedHashMap<>();
    if (!comparison.objectives().isEmpty()) {
      for (int i = 0; i < arms.size(); i++) {
        if (!written.get(i).isNothing()) {
          pareto.put(arms.get(i).name(), drawn.undominated(i));
        }
      }
    }
    return pareto;
  }
}
