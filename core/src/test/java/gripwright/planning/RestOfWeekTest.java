package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.FingerSet;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.placement.Placement;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Days for what is left of a week: Tuesday, Thursday and Saturday are available. */
class RestOfWeekTest {

  private static final SessionPlan SESSION =
      SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE));

  /** Planned for Tuesday and Saturday. */
  private final List<DatedSession> planned =
      Planner.compile(
              Plan.named("spring")
                  .athlete("ylva")
                  .from(MONDAY)
                  .block(Block.named("base", 1).session(SESSION).build())
                  .build(),
              Skarvdal.ylva().build(),
              Skarvdal.tested(),
              List.of())
          .sessions();

  private static final SessionExpansion.Draft DRAFT =
      new SessionExpansion.Draft(
          SESSION,
          new Placement.Request(
              "strength", 28, Duration.ofHours(48), Optional.of(HALF_CRIMP.fingers()), List.of()));

  private static RestOfWeek rest(int until, Map<String, Integer> last, Placement.HardDay... hard) {
    return new RestOfWeek(
        Skarvdal.ylva().build(),
        MONDAY.plusDays(until),
        MONDAY,
        List.of(hard),
        last.entrySet().stream()
            .collect(
                java.util.stream.Collectors.toMap(
                    Map.Entry::getKey, e -> MONDAY.plusDays(e.getValue()))));
  }

  private static Placement.HardDay climbing(int day) {
    return new Placement.HardDay(MONDAY.plusDays(day), FingerSet.FOUR, new HardThing.Climbing());
  }

  private static List<LocalDate> days(RestOfWeek.Placed placed) {
    return placed.dated().stream().map(d -> d.spot().date()).toList();
  }

  private static final LocalDate TUESDAY = MONDAY.plusDays(1);
  private static final LocalDate THURSDAY = MONDAY.plusDays(3);
  private static final LocalDate SATURDAY = MONDAY.plusDays(5);

  @Test
  void sessionThatKeepsItsGapsKeepsItsDayAndReasons() {
    RestOfWeek rest = rest(0, Map.of());
    RestOfWeek.Placed placed = rest.place(planned, List.of(DRAFT));
    assertEquals(List.of(TUESDAY, SATURDAY), days(placed));
    assertEquals(planned.get(0).placedBecause(), placed.dated().get(0).because());
    assertEquals(List.of(), placed.dropped());
  }

  @Test
  void dayTwoDaysAfterTheLastSessionIsKept() {
    List<DatedSession> saturday = planned.subList(1, 2);
    assertEquals(
        List.of(SATURDAY), days(rest(3, Map.of("strength", 3)).place(saturday, List.of(DRAFT))));
    assertEquals(
        List.of(SATURDAY),
        days(rest(4, Map.of("power", 4)).place(saturday, List.of(DRAFT))),
        "another name");
  }

  @Test
  void dayTooSoonIsReplacedByALaterOne() {
    RestOfWeek.Placed placed =
        rest(0, Map.of("strength", 0)).place(planned.subList(0, 1), List.of(DRAFT));
    assertEquals(List.of(THURSDAY), days(placed));
    assertEquals(
        true,
        Words.say(placed.dated().get(0).because()).endsWith("; after what was done"),
        Words.say(placed.dated().get(0).because()));
  }

  @Test
  void nothingIsPlacedOnAPastDay() {
    assertEquals(
        List.of(SATURDAY),
        days(rest(3, Map.of(), climbing(1)).place(planned.subList(0, 1), List.of(DRAFT))));
  }

  @Test
  void sessionsWithoutADayAreDroppedLastFirst() {
    RestOfWeek rest = rest(0, Map.of(), climbing(5));
    RestOfWeek.Placed placed = rest.place(planned, List.of(DRAFT));
    assertEquals(List.of(TUESDAY, THURSDAY), days(placed), "two days before the climbing");
    RestOfWeek.Placed one =
        rest(0, Map.of(), climbing(3), climbing(5)).place(planned, List.of(DRAFT));
    assertEquals(List.of(TUESDAY), days(one));
    assertEquals(List.of(planned.get(1)), one.dropped());
    RestOfWeek.Placed none = rest(5, Map.of("strength", 4)).place(planned, List.of(DRAFT));
    assertEquals(List.of(), none.dated());
    assertEquals(2, none.dropped().size());
  }

  @Test
  void sessionThatCanNotBeTrainedTakesNoDay() {
    RestOfWeek.Placed none = rest(0, Map.of()).place(planned, List.of());
    assertEquals(List.of(), none.dated());
  }
}
