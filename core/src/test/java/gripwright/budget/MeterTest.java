package gripwright.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeterTest {

  private static Overrun stopped(Runnable work) {
    return assertThrows(OverBudget.class, work::run).overrun();
  }

  @ParameterizedTest
  @EnumSource(Limit.class)
  void theLimitIsAllowedAndOneMoreIsNot(Limit limit) {
    Meter meter = Budget.standard().with(limit, 7).meter();
    meter.take(limit, 3);
    meter.take(limit, 4);
    assertEquals(7, meter.taken(limit));
    assertEquals(new Overrun.TooMuch(limit, 8, 7), stopped(() -> meter.take(limit, 1)));
  }

  @ParameterizedTest
  @EnumSource(Limit.class)
  void theDefaultAppliesUntilAHostSetsAnother(Limit limit) {
    assertEquals(limit.standard(), Budget.standard().most(limit));
    Budget other = Budget.standard().with(limit, 12);
    assertEquals(12, other.most(limit));
    for (Limit another : Limit.values()) {
      if (another != limit) {
        assertEquals(another.standard(), other.most(another));
      }
    }
  }

  @Test
  void limitsAreCountedSeparately() {
    Meter meter = Budget.standard().with(Limit.WORK, 5).with(Limit.FINDINGS, 5).meter();
    meter.take(Limit.WORK, 5);
    meter.take(Limit.FINDINGS, 5);
    assertEquals(5, meter.taken(Limit.WORK));
  }

  @Test
  void requireChecksASizeWithoutCountingIt() {
    Meter meter = Budget.standard().with(Limit.WEEKS, 10).meter();
    meter.require(Limit.WEEKS, 10);
    meter.require(Limit.WEEKS, 10);
    assertEquals(0, meter.taken(Limit.WEEKS));
    assertEquals(
        new Overrun.TooMuch(Limit.WEEKS, 11, 10), stopped(() -> meter.require(Limit.WEEKS, 11)));
  }

  @Test
  void whatIsGivenBackCanBeTakenAgain() {
    Meter meter = Budget.standard().with(Limit.VALUES, 10).meter();
    meter.take(Limit.VALUES, 10);
    meter.giveBack(Limit.VALUES, 4);
    meter.take(Limit.VALUES, 4);
    stopped(() -> meter.take(Limit.VALUES, 1));
  }

  @Test
  void aCountNeverOverflows() {
    Meter meter = Budget.standard().with(Limit.WORK, Long.MAX_VALUE - 1).meter();
    meter.take(Limit.WORK, Long.MAX_VALUE - 1);
    assertEquals(
        new Overrun.TooMuch(Limit.WORK, Long.MAX_VALUE, Long.MAX_VALUE - 1),
        stopped(() -> meter.take(Limit.WORK, Long.MAX_VALUE - 1)));
  }

  @Test
  void eachRunCountsFromZero() {
    Budget budget = Budget.standard().with(Limit.WORK, 5);
    budget.meter().take(Limit.WORK, 5);
    budget.meter().take(Limit.WORK, 5);
  }

  @Test
  void theDeadlineCountsFromTheBeginningOfTheRun() {
    AtomicLong now = new AtomicLong(Long.MAX_VALUE - 10); // a clock may pass its greatest number
    Budget budget = Budget.standard().withDeadline(Duration.ofNanos(100), now::get);
    now.addAndGet(1_000);
    Meter meter = budget.meter();
    now.addAndGet(100);
    meter.look();
    now.addAndGet(1);
    assertEquals(new Overrun.OutOfTime(Duration.ofNanos(100)), stopped(meter::look));
  }

  @Test
  void deadlineAndCancellationAreCheckedWhileWorkIsCounted() {
    AtomicBoolean cancelled = new AtomicBoolean();
    Meter meter = Budget.standard().withCancellation(cancelled::get).meter();
    meter.take(Limit.WORK, 1);
    cancelled.set(true);
    assertEquals(
        new Overrun.Cancelled(false),
        stopped(
            () -> {
              for (int i = 0; i < 2_000; i++) {
                meter.take(Limit.WORK, 1);
              }
            }));
    assertTrue(meter.taken(Limit.WORK) < 1_100, "soon");
  }

  @Test
  void anInterruptedThreadStopsAndStaysInterrupted() {
    Meter meter = Budget.standard().meter();
    Thread.currentThread().interrupt();
    assertEquals(new Overrun.Cancelled(true), stopped(meter::look));
    assertTrue(Thread.interrupted());
  }

  @Test
  void anUnboundedMeterCountsAndNeverStops() {
    Meter meter = Meter.unbounded();
    Thread.currentThread().interrupt();
    meter.look();
    assertTrue(Thread.interrupted());
    meter.require(Limit.WEEKS, Long.MAX_VALUE);
    meter.take(Limit.WORK, Limit.WORK.standard() + 1);
    assertEquals(Limit.WORK.standard() + 1, meter.taken(Limit.WORK));
  }

  @Test
  void reportingProgressChecksTheDeadlineToo() {
    List<String> reports = new ArrayList<>();
    AtomicBoolean cancelled = new AtomicBoolean();
    Meter meter =
        Budget.standard()
            .withProgress((stage, done, of) -> reports.add(stage + " " + done + " " + of))
            .withCancellation(cancelled::get)
            .meter();
    meter.progress(Stage.PLANNING, 1, 2);
    meter.progress(Stage.READING, 3, 2);
    cancelled.set(true);
    stopped(() -> meter.progress(Stage.CHECKING, 4, 4));
    assertEquals(List.of("PLANNING 1 2", "READING 3 3", "CHECKING 4 4"), reports);
  }

  @Test
  void theFirstRuleNameIsKept() {
    OverBudget stop =
        assertThrows(
            OverBudget.class,
            () -> Budget.standard().with(Limit.WORK, 1).meter().take(Limit.WORK, 2));
    assertEquals(Optional.empty(), stop.rule());
    assertEquals(Optional.of("inner"), stop.in("inner").in("outer").rule());
    assertEquals(0, stop.getStackTrace().length);
  }

  @Test
  void invalidLimitsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Budget.standard().with(Limit.WEEKS, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> Budget.standard().withDeadline(Duration.ofNanos(-1), System::nanoTime));
    assertFalse(Budget.standard().isCancelled());
  }
}
