package gripwright.fatigue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.fatigue.Bout;
import gripwright.fatigue.Course;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Forecast;
import gripwright.fatigue.Muscle;
import gripwright.fatigue.PoolRates;
import gripwright.fatigue.ReferenceMuscle;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published protocol with enough detail for a simulation. */
class TrialsTest {

  static List<Trial> trials() {
    return Trial.all();
  }

  /** All three shares after every hold and rest, for every set and both ends of its interval. */
  @ParameterizedTest
  @MethodSource("trials")
  void agreesWithAGeneralPurposeIntegrator(Trial trial) {
    for (FatigueRates set : FatigueRates.all()) {
      for (FatigueRates rates : List.of(set, set.optimistic(), set.pessimistic())) {
        Muscle muscle = new Muscle(rates);
        ReferenceMuscle reference = new ReferenceMuscle(rates, 1e-10);
        for (Bout bout : trial.bouts()) {
          if (bout.isHold()) {
            muscle.hold(bout.ofMvc(), bout.seconds());
          } else {
            muscle.rest(bout.seconds());
          }
          reference.spend(bout);
          assertEquals(0, reference.difference(muscle), 1e-8, rates.name());
        }
      }
    }
  }

  /** Protocols that people trained with must not be reported as impossible. */
  @ParameterizedTest
  @MethodSource("trials")
  void noTrialIsCertainlyImpossible(Trial trial) {
    Forecast forecast = Forecast.of(FatigueRates.forHeaviest(trial.heaviest()), trial.bouts());
    assertTrue(
        trial.protocol().contains("failure")
            || forecast.shortfall().filter(Forecast.Shortfall::certain).isEmpty());
    if (trial.shortRests() && !trial.protocol().contains("failure")) {
      assertTrue(
          Forecast.of(PoolRates.SHORT_RESTS, trial.bouts())
              .shortfall()
              .filter(Forecast.Shortfall::certain)
              .isEmpty());
    }
  }

  @Test
  void writesTheTable() throws IOException {
    StringBuilder table =
        new StringBuilder(
            """
            | protocol | assumed by us | source | set | capacity at the end (interval) | mean fails in hold | by `SHORT_RESTS` |
            |---|---|---|---|---|---|---|
            """);
    for (Trial trial : trials()) {
      FatigueRates rates = FatigueRates.forHeaviest(trial.heaviest());
      Forecast forecast = Forecast.of(rates, trial.bouts());
      Course mean = forecast.mean();
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | `%s` | %.0f %% (%.0f to %.0f) | %s | %s |%n",
              trial.protocol(),
              trial.filledIn(),
              trial.source(),
              rates.name(),
              100 * mean.endReserve(),
              100 * forecast.pessimistic().endReserve(),
              100 * forecast.optimistic().endReserve(),
              fails(mean),
              trial.shortRests() ? fails(Course.of(PoolRates.SHORT_RESTS, trial.bouts())) : ""));
    }
    ModelPage.check("fatigue.md", "trials", table.toString());
  }

  private static String fails(Course course) {
    return course.firstMissed().isPresent()
        ? course.firstMissed().getAsInt() + 1 + " of " + course.holds().size()
        : "none";
  }
}
