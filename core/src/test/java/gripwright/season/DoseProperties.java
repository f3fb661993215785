package gripwright.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;

/** What holds of how much is trained in a day, in a week and from one week to the next. */
class DoseProperties {

  /** Rules about the weeks at the start of a block or plan and about rows of weeks. */
  private static final Set<String> AT_A_JOIN =
      Set.of(
          "rule.join-load-rise",
          "rule.join-sessions",
          "rule.weeks-without-ease",
          "rule.many-weeks-without-ease",
          "rule.hard-days-apart");

  private static final double[] LEVELS = {0.4, 0.5, 0.62, 0.72, 0.84};

  /**
   * The same in kilograms, away from the limits of light, heavy and hard levels, because the known
   * maximum falls with the age of the test and a second plan begins later.
   */
  private static final double[] LOADS = {30, 45, 56, 65, 76};

  private static Athlete athlete() {
    Athlete.Builder ylva = Skarvdal.ylva();
    for (DayOfWeek day : DayOfWeek.values()) {
      ylva.available(day, Duration.ofHours(4));
    }
    return ylva.build();
  }

  private static Log tested() {
    return Skarvdal.log(Skarvdal.test(Skarvdal.HALF_CRIMP, Skarvdal.MONDAY.minusDays(7), 90));
  }

  /** A dose: level, number of sets and sessions a week. */
  private record Dose(int level, int sets, int perWeek) {

    static Dose of(List<Integer> numbers) {
      return new Dose(numbers.get(0) % LEVELS.length, 2 + numbers.get(1), 1 + numbers.get(2) % 4);
    }

    Block block(String name, int weeks) {
      return block(name, weeks, new Level.OfMax(LEVELS[level]));
    }

    Block inKilograms(String name, int weeks) {
      return block(name, weeks, Level.total(Load.ofKilograms(LOADS[level])));
    }

    private Block block(String name, int weeks, Level atLevel) {
      Exercise exercise =
          Exercise.of(Skarvdal.HOLDS, Skarvdal.HALF_CRIMP, Skarvdal.EDGE)
              .with("level", atLevel)
              .with("sets", sets);
      Duration gap = Duration.ofHours(perWeek > 3 ? 24 : 48);
      return Block.named(name, weeks)
          .session(SessionPlan.of("s", perWeek, exercise).atLeastApart(gap))
          .build();
    }
  }

  private static Plan plan(String name, int startWeek, List<Block> blocks) {
    Plan.Builder plan = Plan.named(name).athlete("ylva").from(Skarvdal.MONDAY.plusWeeks(startWeek));
    blocks.forEach(plan::block);
    return plan.build();
  }

  private static List<Finding> findings(Plan... plans) {
    return Season.of(Arrays.asList(plans), List.of(athlete()), List.of(tested()), List.of())
        .compile()
        .findings();
  }

  /** Tells whether each session found a day; which of them lacks one is the planner's choice. */
  private static boolean hasAllSessions(List<Finding> findings) {
    return findings.stream().noneMatch(f -> f.code().equals("plan.no-day"));
  }

  private static Map<String, Long> atJoin(List<Finding> findings) {
    return findings.stream()
        .map(Finding::code)
        .filter(AT_A_JOIN::contains)
        .collect(Collectors.groupingBy(c -> c, TreeMap::new, Collectors.counting()));
  }

  @Property(tries = 60)
  void splittingAPlanInTwoChangesNoFindingAtTheJoin(
      @ForAll @Size(3) List<@IntRange(min = 0, max = 4) Integer> first,
      @ForAll @Size(3) List<@IntRange(min = 0, max = 4) Integer> second,
      @ForAll @IntRange(min = 1, max = 8) int weeks) {
    Block a = Dose.of(first).inKilograms("a", weeks);
    Block b = Dose.of(second).inKilograms("b", 7);
    List<Finding> asOne = findings(plan("whole", 0, List.of(a, b)));
    List<Finding> asTwo = findings(plan("one", 0, List.of(a)), plan("two", weeks, List.of(b)));
    Assume.that(Stream.of(asOne, asTwo).allMatch(DoseProperties::hasAllSessions));
    Map<String, Long> whole = atJoin(asOne);
    Map<String, Long> split = atJoin(asTwo);
    Statistics.label("at the join").collect(whole.keySet());
    assertEquals(whole, split);
  }

  @Property(tries = 60)
  void raisingADoseNeverLowersTheHighestSeverity(
      @ForAll @Size(3) List<@IntRange(min = 0, max = 4) Integer> before,
      @ForAll @Size(3) List<@IntRange(min = 0, max = 4) Integer> dose,
      @ForAll @IntRange(min = 0, max = 2) int what,
      @ForAll @IntRange(min = 1, max = 40) int by) {
    Block a = Dose.of(before).block("a", 2);
    Dose low = Dose.of(dose);
    Dose high =
        new Dose(
            what == 0 ? Math.min(LEVELS.length - 1, low.level() + by) : low.level(),
            what == 1 ? Math.min(60, low.sets() + by) : low.sets(),
            what == 2 ? Math.min(6, low.perWeek() + by) : low.perWeek());
    int lower = severity(findings(plan("p", 0, List.of(a, low.block("b", 2)))));
    int higher = severity(findings(plan("p", 0, List.of(a, high.block("b", 2)))));
    Statistics.label("rises").collect(lower < higher);
    assertTrue(higher >= lower, low + " to " + high + ": " + lower + " to " + higher);
  }

  private static int severity(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.place().steps().stream().noneMatch(step -> step.name().equals("a")))
        .map(f -> f.severity().ordinal())
        .min(Comparator.naturalOrder())
        .map(ordinal -> -ordinal)
        .orElse(-9);
  }
}
