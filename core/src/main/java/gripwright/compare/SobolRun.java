package gripwright.compare;

import gripwright.budget.Meter;
import gripwright.budget.Stage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sobol indices of every difference in the parameters of the models. */
final class SobolRun {

  private static final int MOST_ROWS = 2_000;
  private static final int BLOCK = 2; // 0 and 1 are those of the draws and of the persons
  private static final int RESAMPLED_BLOCK = 4;

  /** Samples behind an interval: enough for its 5th and 95th percentile. */
  private static final int RESAMPLES = 500;

  private final SubjectRun run;
  private final People.Prepared prepared;
  private final Meter meter;

  SobolRun(SubjectRun run, People.Prepared prepared, Meter meter) {
    this.run = run;
    this.prepared = prepared;
    this.meter = meter;
  }

  /** Returns the indices of each input for each pair and measure. */
  Map<String, Sobol.Indices> indices() {
    Comparison comparison = run.comparison();
    Pairs pairs = run.pairs();
    List<Measure> measures = comparison.measures();
    int inputs = prepared.inputs().size();
    int outputs = pairs.count() * measures.size();
    int rows = Math.min(MOST_ROWS, comparison.draws());
    Philox random = new Philox(comparison.stream());
    List<Evaluation> evaluations = run.evaluations(FatigueScenario.AS_IN_PLANS);
    List<Sobol.Indices> indices =
        Sobol.indices(
            inputs,
            new Resampling(rows, RESAMPLES, random, RESAMPLED_BLOCK),
            outputs,
            (row, input, second) -> {
              if (input == 0 && !second) {
                meter.progress(Stage.COMPARING, row, rows);
              }
              return random.normal(0, row, input, second ? BLOCK + 1 : BLOCK);
            },
            deviates -> {
              double[][] values = SubjectRun.values(evaluations, prepared.drawn(deviates));
              double[] differences = new double[outputs];
              for (int pair = 0; pair < pairs.count(); pair++) {
                for (int m = 0; m < measures.size(); m++) {
                  differences[pair * measures.size() + m] =
                      Pairs.difference(
                          measures.get(m), values[pairs.first(pair)], values[pairs.second(pair)]);
                }
              }
              return differences;
            });
    Map<String, Sobol.Indices> named = new HashMap<>();
    for (int pair = 0; pair < pairs.count(); pair++) {
      for (int m = 0; m < measures.size(); m++) {
        named.put(Outcomes.key(pair, measures.get(m)), indices.get(pair * measures.size() + m));
      }
    }
    return named;
  }
}
