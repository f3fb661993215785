package gripwright.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.planning.GeneratedSeason;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** What holds for every budget, whatever the athlete, the log and the plan. */
class BudgetProperties {

  private static Season season(GeneratedSeason one) {
    return Season.of(List.of(one.plan()), List.of(one.athlete()), List.of(one.log()), List.of());
  }

  private static CompiledSeason compile(GeneratedSeason one, Budget budget) {
    return season(one).compile(SeasonOptions.standard().withBudget(budget));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aGenerousBudgetChangesNothing(@ForAll GeneratedSeason one) {
    AtomicLong now = new AtomicLong();
    Budget generous =
        Budget.standard()
            .withDeadline(Duration.ofDays(1), now::incrementAndGet)
            .withCancellation(() -> false)
            .withProgress((stage, done, of) -> now.incrementAndGet());
    for (Limit limit : Limit.values()) {
      generous = generous.with(limit, Long.MAX_VALUE);
    }
    assertEquals(season(one).compile(), compile(one, generous));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void smallBudgetGivesWholePlansAndReportsTheOthers(
      @ForAll GeneratedSeason one, @ForAll @LongRange(min = 1, max = 5_000) long work) {
    CompiledSeason whole = season(one).compile();
    Budget small = Budget.standard().with(Limit.PLACEMENT, work);
    CompiledSeason some = compile(one, small);
    assertEquals(some, compile(one, small), "the same every time");
    boolean stopped = some.findings().stream().anyMatch(f -> f.code().equals("budget.placement"));
    assertEquals(stopped ? List.of() : whole.plans(), some.plans());
    assertTrue(stopped || some.equals(whole));
    assertTrue(!stopped || !some.usable());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void storedValuesDoNotExceedTheMeasuredSize(@ForAll GeneratedSeason one) {
    GeneratedSeason planned = one.withoutSessionsLogged();
    Meter meter = Budget.standard().meter();
    new SeasonRun(season(planned), List.of(planned.plan()), meter).compile();
    gripwright.plan.PlanSize size = gripwright.plan.PlanSize.of(planned.plan());
    assertTrue(meter.taken(Limit.SESSIONS) <= size.sessions());
    assertTrue(meter.taken(Limit.HOLDS) <= size.holds() + advanced(planned));
  }

  /** Sets may become more than were written, and the log may have more than was planned. */
  private static long advanced(GeneratedSeason one) {
    return one.plan().blocks().stream().anyMatch(b -> !b.content().advances().isEmpty())
        ? Limit.HOLDS.standard()
        : 0;
  }
}
