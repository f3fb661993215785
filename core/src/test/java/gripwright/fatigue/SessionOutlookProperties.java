package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** The effect of an easier line on its findings. */
class SessionOutlookProperties {

  /**
   * A line in two sizes.
   *
   * @param seconds time of a hold
   * @param percent level
   * @param sets how many
   * @param pause seconds between sets
   * @param series true for sets of six holds
   */
  record Line(int seconds, int percent, int sets, int pause, boolean series) {

    Exercise exercise() {
      Exercise exercise =
          Exercise.of(series ? Skarvdal.SERIES : Skarvdal.HOLDS, Skarvdal.HALF_CRIMP, Skarvdal.EDGE)
              .with("level", Level.ofMax(percent))
              .with("sets", sets);
      return series
          ? exercise
          : exercise
              .with("work", Duration.ofSeconds(seconds))
              .with("pause", Duration.ofSeconds(pause));
    }

    CompiledPlan compile() {
      Plan plan =
          Plan.named("spring")
              .athlete("ylva")
              .from(Skarvdal.MONDAY)
              .block(
                  Block.named("base", 1).session(SessionPlan.of("strength", 1, exercise())).build())
              .build();
      return Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    }
  }

  @Provide
  Arbitrary<Line> lines() {
    return Combinators.combine(
            Arbitraries.integers().between(3, 180),
            Arbitraries.integers().between(35, 100),
            Arbitraries.integers().between(1, 8),
            Arbitraries.integers().between(5, 200),
            Arbitraries.of(true, false))
        .as(Line::new);
  }

  private static List<Finding> reported(CompiledPlan plan) {
    return plan.findings().stream().filter(f -> f.code().startsWith("plan.hold-")).toList();
  }

  private static Optional<PlannedExercise.EndReserve> reserve(CompiledPlan plan) {
    return plan.sessions().stream()
        .flatMap(s -> s.exercises().get(0).endReserve().stream())
        .findFirst();
  }

  private static void assertEasier(Line line, Line easier) {
    CompiledPlan plan = line.compile();
    CompiledPlan other = easier.compile();
    Statistics.label("told").collect(reported(plan).size(), reported(other).size());
    assertTrue(reported(plan).size() <= 1);
    if (reported(plan).isEmpty() && reserve(plan).isPresent()) {
      assertEquals(List.of(), reported(other));
    }
    if (reserve(plan).isPresent() && reserve(other).isPresent()) {
      assertTrue(
          reserve(other).get().mean() >= reserve(plan).get().mean() - 1e-9,
          reserve(plan) + " " + reserve(other));
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aLowerLevelNeverLeavesLessNorAddsAFinding(
      @ForAll("lines") Line line, @ForAll @DoubleRange(min = 0.5, max = 1) double factor) {
    int lower = Math.max(33, (int) (line.percent() * factor));
    assertEasier(line, new Line(line.seconds(), lower, line.sets(), line.pause(), line.series()));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aLongerRestNeverLeavesLessNorAddsAFinding(
      @ForAll("lines") Line line, @ForAll @IntRange(min = 1, max = 200) int more) {
    Line singles = new Line(line.seconds(), line.percent(), line.sets(), line.pause(), false);
    assertEasier(
        singles, new Line(line.seconds(), line.percent(), line.sets(), line.pause() + more, false));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void atTheHintedLevelNothingIsReported(@ForAll("lines") Line line) {
    for (Finding finding : reported(line.compile())) {
      if (finding.arguments().get("level") instanceof Clause level) {
        int percent = (int) level.arguments().get("percent");
        assertTrue(percent < line.percent());
        assertEquals(
            List.of(),
            reported(
                new Line(line.seconds(), percent, line.sets(), line.pause(), line.series())
                    .compile()));
      }
    }
  }
}
