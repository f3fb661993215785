package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.FingerSet;
import gripwright.planning.Skarvdal;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What prevents a day, and when later weeks are searched. */
class PlacementTest {

  private static final LocalDate TUESDAY = MONDAY.plusDays(1);
  private static final LocalDate THURSDAY = MONDAY.plusDays(3);

  private static Placement.Week week(Placement.HardDay... hard) {
    return new Placement.Week(MONDAY, Skarvdal.ylva().build()::slotsOn, List.of(hard), Map.of());
  }

  private static Placement.Request request(int minutes, int gap, Optional<FingerSet> hard) {
    return new Placement.Request("s", minutes, Duration.ofHours(gap), hard, List.of());
  }

  private static Placement.HardDay climbing(int day, FingerSet fingers) {
    return new Placement.HardDay(MONDAY.plusDays(day), fingers, new HardThing.Climbing());
  }

  private static final Optional<FingerSet> DRAGS = Optional.of(DRAG.fingers());

  @Test
  void aDayIsOpenIfItHasTime() {
    Placement.Request hour = request(60, 24, Optional.empty());
    assertEquals(true, Placement.isOpen(week(), hour, THURSDAY));
    assertEquals(false, Placement.isOpen(week(), hour, MONDAY));
    assertEquals(false, Placement.isOpen(week(), request(61, 24, Optional.empty()), THURSDAY));
  }

  @Test
  void aDayIsOpenOnlyOnTheWeekdaysOfTheSession() {
    Placement.Request only =
        new Placement.Request(
            "s",
            45,
            Duration.ofHours(24),
            Optional.empty(),
            List.of(),
            List.of(DayOfWeek.TUESDAY, DayOfWeek.SATURDAY));
    assertEquals(true, Placement.isOpen(week(), only, TUESDAY));
    assertEquals(false, Placement.isOpen(week(), only, THURSDAY));
  }

  @Test
  void fortyEightHoursAreKeptFromHardWorkOnTheSameFingers() {
    FingerSet little = new FingerSet(FingerSet.FOUR.bits() & ~DRAG.fingers().bits());
    for (int day : new int[] {0, 1, 2}) {
      assertEquals(
          false,
          Placement.isOpen(week(climbing(day, FingerSet.FOUR)), request(45, 24, DRAGS), TUESDAY));
    }
    for (Placement.HardDay free :
        List.of(climbing(-1, FingerSet.FOUR), climbing(3, FingerSet.FOUR), climbing(1, little))) {
      assertEquals(true, Placement.isOpen(week(free), request(45, 24, DRAGS), TUESDAY));
    }
    assertEquals(
        true,
        Placement.isOpen(
            week(climbing(1, FingerSet.FOUR)), request(45, 24, Optional.empty()), TUESDAY));
  }

  @Test
  void theGoalDayIsClosedEvenForALightSession() {
    Placement.Request light = request(45, 24, Optional.empty());
    Placement.HardDay goal = new Placement.HardDay(TUESDAY, FingerSet.FOUR, new HardThing.Goal());
    Placement.HardDay other = new Placement.HardDay(THURSDAY, FingerSet.FOUR, new HardThing.Goal());
    assertEquals(false, Placement.isOpen(week(goal), light, TUESDAY));
    assertEquals(true, Placement.isOpen(week(other), light, TUESDAY));
  }

  @Test
  void testsNeedTheirTimeAndRestBefore() {
    assertEquals(
        true, Placement.restsBefore(week(), new Placement.Tests(90, FingerSet.FOUR), TUESDAY));
    assertEquals(
        false, Placement.restsBefore(week(), new Placement.Tests(91, FingerSet.FOUR), TUESDAY));
    Placement.Tests tests = new Placement.Tests(30, DRAG.fingers());
    assertEquals(false, Placement.restsBefore(week(climbing(2, FingerSet.FOUR)), tests, TUESDAY));
    assertEquals(true, Placement.restsBefore(week(climbing(3, FingerSet.FOUR)), tests, TUESDAY));
  }

  @Test
  void gapsAreCountedInWholeDays() {
    assertEquals(1, request(45, 0, Optional.empty()).gapDays());
    assertEquals(1, request(45, 24, Optional.empty()).gapDays());
    assertEquals(2, request(45, 25, Optional.empty()).gapDays());
    assertEquals(3, request(45, 72, Optional.empty()).gapDays());
  }

  private static boolean looksAhead(
      Optional<FingerSet> hard, int gapDays, Placement.Tests... tests) {
    List<Boolean> demand = new ArrayList<>();
    Placement.Found found =
        Placement.place(
            new Placement.WeekDemand(week(), List.of(request(45, 24, hard)), List.of(tests)),
            name -> gapDays,
            () -> {
              demand.add(true);
              return List.of();
            });
    assertEquals(true, found.tries() > 0);
    return !demand.isEmpty();
  }

  /** The session lies on Tuesday, the next day to train is the Tuesday after it. */
  @Test
  void laterWeeksAreSearchedOnlyIfAGapReachesATrainingDay() {
    assertEquals(false, looksAhead(Optional.empty(), 1));
    assertEquals(false, looksAhead(Optional.empty(), 7));
    assertEquals(true, looksAhead(Optional.empty(), 8));
    assertEquals(false, looksAhead(DRAGS, 1, new Placement.Tests(30, FingerSet.FOUR)));
  }
}
