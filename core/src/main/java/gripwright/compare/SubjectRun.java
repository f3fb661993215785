package gripwright.compare;

import gripwright.budget.Meter;
import gripwright.compare.ComparisonResult.Matched;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Compares the arms for one athlete or one cohort. Not thread-safe; it may start threads. */
final class SubjectRun {

  private final Comparison comparison;
  private final People people;
  private final Programs programs;
  private final List<Arm> arms;
  private final Function<Models, People> others;
  private final List<Program> written;
  private final List<Setup> setups;
  private final Set<Measure> measures;
  private final boolean pulleys;
  private final Pairs pairs;
  private People.@Nullable Prepared prepared;

  /**
   * @param programs with which all arms were written out
   * @param arms after matching
   * @param others returns the same people by other models
   */
  SubjectRun(
      Comparison comparison,
      People people,
      Programs programs,
      List<Arm> arms,
      Function<Models, People> others) {
    this.comparison = comparison;
    this.people = people;
    this.programs = programs;
    this.arms = arms;
    this.others = others;
    this.measures = EnumSet.copyOf(comparison.measures());
    comparison.objectives().forEach(objective -> measures.add(objective.measure()));
    this.pulleys = measures.stream().anyMatch(Evaluation::isExposure);
    this.written =
        arms.stream().map(arm -> programs.of(arm, ModelPath.ROOT).orElseThrow()).toList();
    this.setups = List.copyOf(programs.setups());
    this.pairs = new Pairs(written, comparison.measures(), comparison.objectives());
  }

  /** Evaluates a chunk, here or elsewhere. */
  private interface Source {
    Pairs.Tallies of(ComparisonParts.Kind kind, Chunks.Chunk chunk);
  }

  /** Has what {@link #evaluated} returned for a chunk. */
  interface Elsewhere {
    byte[] of(ComparisonParts.Kind kind, Chunks.Chunk chunk);
  }

  Subject run(List<Matched> matches, RunOptions options, Meter meter) {
    return result(matches, options, meter, here());
  }

  /**
   * Runs with draws and persons that were evaluated elsewhere.
   *
   * @throws IllegalArgumentException if what was evaluated is of another part or comparison
   */
  Subject join(List<Matched> matches, RunOptions options, Meter meter, Elsewhere elsewhere) {
    int inputs = prepared().inputs().size();
    return result(
        matches,
        options.threads(1),
        meter,
        (kind, chunk) ->
            TallyBytes.read(
                title(kind, chunk),
                elsewhere.of(kind, chunk),
                pairs.tallies(kind == ComparisonParts.Kind.DRAWS ? inputs : 0)));
  }

  /** Evaluates a chunk for {@link #join}. */
  byte[] evaluated(ComparisonParts.Kind kind, Chunks.Chunk chunk) {
    return TallyBytes.write(title(kind, chunk), here().of(kind, chunk));
  }

  private String title(ComparisonParts.Kind kind, Chunks.Chunk chunk) {
    return String.join(
        " ",
        comparison.name(),
        people.name(),
        Long.toString(comparison.stream()),
        kind.name(),
        chunk.toString());
  }

  /** Returns how many draws or persons there are. */
  int count(ComparisonParts.Kind kind) {
    return switch (kind) {
      case DRAWS -> comparison.draws();
      case PERSONS -> people.size();
    };
  }

  private Source here() {
    People.Prepared with = prepared();
    Philox random = new Philox(comparison.stream());
    return (kind, chunk) ->
        switch (kind) {
          case DRAWS -> draws(chunk, with, random);
          case PERSONS -> persons(chunk, with);
        };
  }

  /** Returns the people on all setups, which takes long and is done once. */
  private People.Prepared prepared() {
    if (prepared == null) {
      prepared = people.prepare(setups, pulleys);
    }
    return prepared;
  }

  private Subject result(List<Matched> matches, RunOptions options, Meter meter, Source source) {
    People.Prepared with = prepared();
    Pairs.Tallies drawn = pairs.tallies(with.inputs().size());
    tally(ComparisonParts.Kind.DRAWS, drawn, source, options, meter);
    Pairs.@Nullable Tallies ofPersons = null;
    if (people.size() > 0) {
      ofPersons = pairs.tallies(0);
      tally(ComparisonParts.Kind.PERSONS, ofPersons, source, options, meter);
    }
    double[][] best = values(evaluations(FatigueScenario.AS_IN_PLANS), with.reference());
    List<Scenarios.Modelled> scenarios =
        new Scenarios(people, setups, measures).of(with, best, others, this::evaluations);
    Map<String, Sobol.Indices> sobol =
        options.sobol() ? new SobolRun(this, with, meter).indices() : Map.of();
    return new Outcomes(comparison, people, arms, written, setups, pairs)
        .of(
            matches,
            new Outcomes.Evaluated(
                with, best, drawn, Optional.ofNullable(ofPersons), scenarios, sobol));
  }

  private void tally(
      ComparisonParts.Kind kind,
      Pairs.Tallies sum,
      Source source,
      RunOptions options,
      Meter meter) {
    Chunks.run(
        count(kind),
        new Chunks.Work<>(options.threads(), () -> chunk -> source.of(kind, chunk), sum::add),
        meter);
  }

  List<Evaluation> evaluations(FatigueScenario scenario) {
    return written.stream().map(each -> new Evaluation(each, scenario, measures)).toList();
  }

  static double[][] values(List<Evaluation> evaluations, Person person) {
    double[][] values = new double[evaluations.size()][];
    for (int i = 0; i < values.length; i++) {
      values[i] = evaluations.get(i).values(person);
    }
    return values;
  }

  Pairs pairs() {
    return pairs;
  }

  Comparison comparison() {
    return comparison;
  }

  private Pairs.Tallies draws(Chunks.Chunk chunk, People.Prepared prepared, Philox random) {
    List<Evaluation> evaluations = evaluations(FatigueScenario.AS_IN_PLANS);
    int inputs = prepared.inputs().size();
    Pairs.Tallies tallies = pairs.tallies(inputs);
    double[] deviates = new double[inputs];
    double[][] reference = values(evaluations(FatigueScenario.AS_IN_PLANS), prepared.reference());
    for (int draw = chunk.from(); draw < chunk.to(); draw++) {
      for (int i = 0; i < inputs; i++) {
        deviates[i] = random.normal(0, draw, i, 0);
      }
      tallies.add(values(evaluations, prepared.drawn(deviates)), reference, deviates);
    }
    return tallies;
  }

  private Pairs.Tallies persons(Chunks.Chunk chunk, People.Prepared prepared) {
    List<Evaluation> evaluations = evaluations(FatigueScenario.AS_IN_PLANS);
    Pairs.Tallies tallies = pairs.tallies(0);
    double[] none = new double[0];
    double[][] reference = values(evaluations, prepared.reference());
    boolean anew = comparison.matchEach() && !comparison.matches().isEmpty() && !isRelative();
    Programs own = anew ? programs.copy() : programs;
    for (int number = chunk.from(); number < chunk.to(); number++) {
      Person person = prepared.member(number);
      tallies.add(
          anew ? values(matched(own, person), person) : values(evaluations, person),
          reference,
          none);
    }
    return tallies;
  }

  /** Returns whether every load is a share of a maximum, so that a match is the same for all. */
  private boolean isRelative() {
    return written.stream()
        .flatMap(program -> program.sessions().stream())
        .allMatch(Program.Session::isRelative);
  }

  private List<Evaluation> matched(Programs own, Person person) {
    Matching matching = new Matching(own, FatigueScenario.AS_IN_PLANS, person);
    Map<String, Arm> now = new LinkedHashMap<>();
    comparison.arms().forEach(arm -> now.put(arm.name(), arm));
    for (Comparison.Match match : comparison.matches()) {
      Arm to = now.getOrDefault(match.to(), arms.get(0));
      Arm arm = now.getOrDefault(match.arm(), arms.get(0));
      now.put(
          match.arm(),
          matching
              .solve(match, arm, matching.quantity(match.quantity(), to), ModelPath.ROOT)
              .arm());
    }
    return now.values().stream()
        .map(arm -> own.of(arm, ModelPath.ROOT).orElseThrow())
        .map(program -> new Evaluation(program, FatigueScenario.AS_IN_PLANS, measures))
        .toList();
  }
}
