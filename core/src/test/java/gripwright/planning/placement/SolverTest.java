package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerSet;
import gripwright.planning.Calendars;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/** Placement of four weeks against a general solver: ojAlgo's branch and bound, one thread. */
class SolverTest {

  private static final int WEEKS = 4;

  /** A binary variable: a session of a name, or tests, on a day. */
  private record Cell(
      Variable variable, int week, LocalDate day, String name, int gap, int hard, boolean tests) {}

  @Test
  void asManySessionsAndTestsAsTheSolverFinds() {
    int missing = 0;
    for (int seed = 0; seed < 40; seed++) {
      List<Placement.WeekDemand> weeks = RollingTest.season(seed, WEEKS);
      List<Placement.WeekDemand> withTests = new ArrayList<>(weeks.subList(0, WEEKS - 1));
      Placement.WeekDemand last = weeks.get(WEEKS - 1);
      withTests.add(
          new Placement.WeekDemand(
              last.week(), last.requests(), List.of(new Placement.Tests(30, FingerSet.FOUR))));
      Placement.Found found = new PlacementSearch(withTests).search();
      long[] cost = Calendars.cost(withTests, found.weeks());
      assertTrue(found.proved());
      assertEquals(leastMissing(withTests), 1000 * cost[0] + cost[1], "season " + seed);
      missing += (int) cost[0];
    }
    assertTrue(missing > 20, "too easy to say anything: " + missing);
  }

  /** A thousand for each session and one for each test that finds no day. */
  private static long leastMissing(List<Placement.WeekDemand> weeks) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    model.options.integer(IntegerStrategy.DEFAULT.withParallelism(() -> 1)); // repeatable
    List<Cell> cells = new ArrayList<>();
    int all = 0;
    for (int w = 0; w < weeks.size(); w++) {
      Placement.WeekDemand demand = weeks.get(w);
      Map<String, Integer> wanted = new TreeMap<>();
      Map<String, Placement.Request> kinds = new TreeMap<>();
      for (Placement.Request request : demand.requests()) {
        wanted.merge(request.name(), 1, Integer::sum);
        kinds.put(request.name(), request);
        all += 1000;
      }
      Expression[] minutes = new Expression[7];
      for (int d = 0; d < 7; d++) {
        LocalDate day = demand.week().first().plusDays(d);
        minutes[d] = model.newExpression("minutes " + day).upper(demand.week().longestOn(day));
      }
      for (Placement.Request request : kinds.values()) {
        Expression count =
            model
                .newExpression("count " + w + request.name())
                .upper(wanted.getOrDefault(request.name(), 0));
        for (int d = 0; d < 7; d++) {
          LocalDate day = demand.week().first().plusDays(d);
          if (Placement.isOpen(demand.week(), request, day)) {
            Variable x = model.newVariable(request.name() + day).binary().weight(-1000);
            minutes[d].set(x, request.minutes());
            count.set(x, 1);
            int hard = request.hardFingers().map(FingerSet::bits).orElse(0);
            cells.add(new Cell(x, w, day, request.name(), request.gapDays(), hard, false));
          }
        }
      }
      for (Placement.Tests tests : demand.tests()) {
        all += 1;
        Expression once = model.newExpression("tests " + w).upper(1);
        for (int d = 0; d < 7; d++) {
          LocalDate day = demand.week().first().plusDays(d);
          if (Placement.restsBefore(demand.week(), tests, day)) {
            Variable x = model.newVariable("tests" + day).binary().weight(-1);
            once.set(x, 1);
            cells.add(new Cell(x, w, day, "", 1, tests.fingers().bits(), true));
          }
        }
      }
    }
    exclude(model, cells);
    Optimisation.Result result = model.minimise();
    assertEquals(Optimisation.State.OPTIMAL, result.getState());
    return all + Math.round(result.getValue());
  }

  private static void exclude(ExpressionsBasedModel model, List<Cell> cells) {
    for (int i = 0; i < cells.size(); i++) {
      for (int j = 0; j < i; j++) {
        Cell one = cells.get(i);
        Cell other = cells.get(j);
        long apart = Math.abs(ChronoUnit.DAYS.between(one.day(), other.day()));
        if (disturbs(one, other, apart) || disturbs(other, one, apart)) {
          model
              .newExpression(i + " or " + j)
              .upper(1)
              .set(one.variable(), 1)
              .set(other.variable(), 1);
        }
      }
    }
    for (Cell first : cells) {
      atMostOne(model, cells, first, first.gap(), c -> c.name().equals(first.name()));
      for (int finger = 1; finger < 16; finger *= 2) {
        int bit = finger;
        atMostOne(model, cells, first, 2, c -> (c.hard() & bit) != 0);
      }
    }
  }

  /** At most one of a kind within this many days: a stronger constraint than by pairs. */
  private static void atMostOne(
      ExpressionsBasedModel model, List<Cell> cells, Cell first, int days, Predicate<Cell> ofKind) {
    Expression window = model.newExpression("window " + model.countExpressions()).upper(1);
    for (Cell cell : cells) {
      long after = ChronoUnit.DAYS.between(first.day(), cell.day());
      if (after >= 0 && after < days && ofKind.test(cell)) {
        window.set(cell.variable(), 1);
      }
    }
  }

  /** Tests need a day without sessions, and no hard work on the days around. */
  private static boolean disturbs(Cell tests, Cell other, long apart) {
    return tests.tests()
        && (apart == 0
            || (apart < 2
                && other.hard() != 0
                && (other.week() == tests.week() || other.day().isBefore(tests.day()))));
  }
}
