package gripwright.history;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import gripwright.finding.ModelPath;
import gripwright.hand.Finger;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.schedule.PlanWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Up to which day a log covers a plan of two weeks, and what of it counts. */
class LogTimelineTest {

  private static final Plan PLAN =
      Plan.named("spring")
          .athlete("ylva")
          .from(MONDAY)
          .block(
              Block.named("base", 2)
                  .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                  .build())
          .build();

  private static Log log(LogEntry... entries) {
    Log log = Log.empty("ylva");
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return log;
  }

  private static LogTimeline timeline(LogEntry... entries) {
    return LogTimeline.of(PLAN, Skarvdal.ylva().build(), log(entries));
  }

  private static LogEntry trained(int day, String session) {
    return new LogEntry.Trained(MONDAY.plusDays(day), session, List.of(), Optional.empty());
  }

  private static LogEntry skipped(int day) {
    return new LogEntry.Skipped(MONDAY.plusDays(day), "strength", Optional.empty());
  }

  private static LogEntry climbed(int day) {
    return LogEntry.Climbed.builder(MONDAY.plusDays(day), false, "easy", Duration.ofHours(1))
        .build();
  }

  private static LogEntry pain(int day, double score) {
    return LogEntry.Pain.builder(MONDAY.plusDays(day), Finger.RING, score).build();
  }

  private static Optional<LocalDate> day(int day) {
    return Optional.of(MONDAY.plusDays(day));
  }

  @Test
  void lastKnownDayIsThatOfTheLastPlannedSession() {
    assertEquals(Optional.empty(), timeline().lastKnownDay());
    assertEquals(day(3), timeline(trained(1, "strength"), trained(3, "strength")).lastKnownDay());
    assertEquals(day(3), timeline(trained(1, "strength"), skipped(3)).lastKnownDay());
    assertEquals(day(0), timeline(trained(0, "strength")).lastKnownDay());
    assertEquals(day(13), timeline(trained(13, "strength")).lastKnownDay());
    assertEquals(
        Optional.empty(), timeline(trained(-1, "strength")).lastKnownDay(), "before the plan");
    assertEquals(Optional.empty(), timeline(trained(14, "strength")).lastKnownDay(), "after it");
    assertEquals(Optional.empty(), timeline(trained(3, "extra"), climbed(4)).lastKnownDay());
  }

  @Test
  void laterEntryMakesTheDaysBeforeItPast() {
    LogEntry session = trained(1, "strength");
    assertEquals(day(4), timeline(session, climbed(5)).lastKnownDay());
    assertEquals(day(4), timeline(session, pain(5, 1)).lastKnownDay());
    assertEquals(day(4), timeline(session, trained(5, "extra")).lastKnownDay());
    assertEquals(day(1), timeline(session, climbed(2)).lastKnownDay());
    assertEquals(day(1), timeline(session, climbed(0)).lastKnownDay());
    assertEquals(day(13), timeline(session, climbed(30)).lastKnownDay(), "the plan is over");
  }

  @Test
  void daysUpToTheLastKnownDayArePast() {
    LogTimeline timeline = timeline(trained(3, "strength"));
    assertEquals(true, timeline.isPast(MONDAY.plusDays(3)));
    assertEquals(false, timeline.isPast(MONDAY.plusDays(4)));
    assertEquals(false, timeline().isPast(MONDAY));
  }

  @Test
  void sessionsOfOtherNamesCountOnUnknownDays() {
    LogTimeline timeline =
        timeline(
            trained(1, "strength"), trained(-1, "extra"), trained(0, "extra"), trained(5, "extra"));
    assertEquals(
        List.of(MONDAY.plusDays(5)),
        timeline.others().stream().map(LogEntry.Trained::date).toList());
    assertEquals(
        List.of(MONDAY, MONDAY.plusDays(13)),
        timeline(
                trained(0, "extra"),
                trained(13, "extra"),
                trained(-1, "extra"),
                trained(14, "extra"))
            .others()
            .stream()
            .map(LogEntry.Trained::date)
            .toList());
  }

  @Test
  void stoppingPainCountsBetweenTheLastSessionAndTheWeek() {
    LocalDate week = MONDAY.plusDays(7);
    assertEquals(false, timeline(pain(3, 5)).hurts(Optional.empty(), week), "not above 5");
    assertEquals(true, timeline(pain(3, 6)).hurts(Optional.empty(), week));
    assertEquals(true, timeline(pain(3, 6)).hurts(day(3), week));
    assertEquals(false, timeline(pain(3, 6)).hurts(day(4), week));
    assertEquals(false, timeline(pain(7, 6)).hurts(day(3), week));
    assertEquals(true, timeline(pain(6, 6)).hurts(day(3), week));
    assertEquals(true, timeline(pain(0, 6)).hurts(Optional.empty(), week));
    assertEquals(false, timeline(pain(-1, 6)).hurts(Optional.empty(), week), "before the plan");
  }

  @Test
  void weekHasItsSessionsUpToTheLastKnownDay() {
    LocalDate week = MONDAY.plusDays(7);
    LogTimeline timeline =
        timeline(
            trained(6, "strength"),
            trained(7, "strength"),
            climbed(8),
            pain(8, 1),
            skipped(9),
            trained(13, "extra"));
    assertEquals(
        List.of(MONDAY.plusDays(7), MONDAY.plusDays(9)),
        timeline.ofWeek(week).entries().stream().map(LogEntry::date).toList(),
        "the evening of the last day may still come");
    assertEquals(
        List.of(MONDAY.plusDays(6)),
        timeline.ofWeek(MONDAY).entries().stream().map(LogEntry::date).toList());
  }

  @Test
  void sessionsBesideThePlanAreThoseOfTwelveWeeksBeforeAndOthersDuringIt() {
    LogTimeline timeline =
        timeline(
            trained(-85, "strength"),
            trained(-84, "strength"),
            climbed(-2),
            trained(-1, "extra"),
            trained(2, "strength"),
            trained(4, "extra"));
    assertEquals(
        List.of(MONDAY.minusDays(84), MONDAY.minusDays(1), MONDAY.plusDays(4)),
        timeline.beside(List.of()).stream().map(LogEntry::date).toList());
  }

  @Test
  void logCoversPlanIfAnyEntryIsWithinItsDays() {
    assertEquals(false, timeline().coversPlanDays());
    assertEquals(true, timeline(climbed(0)).coversPlanDays());
    assertEquals(true, timeline(climbed(13)).coversPlanDays());
    assertEquals(false, timeline(climbed(-1), climbed(14)).coversPlanDays());
  }

  @Test
  void logBeforeADayExcludesThatDay() {
    LogTimeline timeline = timeline(trained(-1, "strength"), trained(0, "strength"), climbed(1));
    assertEquals(2, timeline.before(MONDAY.plusDays(1)).log().entries().size());
    LogTimeline asThePlanBegan = timeline.withoutPlanDays();
    assertEquals(1, asThePlanBegan.log().entries().size());
    assertEquals(Optional.empty(), asThePlanBegan.lastKnownDay());
  }

  @Test
  void timelineWithoutLaterEntriesIsUnchanged() {
    LogTimeline timeline = timeline(climbed(-1));
    assertEquals(timeline, timeline.withoutPlanDays());
    assertEquals(timeline, timeline(climbed(-1)));
    assertEquals(timeline.hashCode(), timeline(climbed(-1)).hashCode());
    assertNotEquals(timeline, timeline(climbed(0)));
  }

  @Test
  void placeIsPastOnceItsDateOrTheLastDayOfItsWeekIsPast() {
    LogTimeline timeline = timeline(trained(6, "strength"));
    ModelPath block = ModelPath.of("plan", "spring").then("block", "base");
    List<PlanWeek> weeks = new ArrayList<>();
    for (int week = 1; week <= 2; week++) {
      weeks.add(
          PlanWeek.builder(
                  week, "base", week, MONDAY.plusWeeks(week - 1L), block.then("week", week))
              .build());
    }
    ModelPath session = block.then("week", 2).then("session", "strength");
    assertEquals(true, timeline.isPast(session.then("date", "2027-03-07"), weeks));
    assertEquals(false, timeline.isPast(session.then("date", "2027-03-08"), weeks));
    assertEquals(true, timeline.isPast(block.then("week", 1), weeks));
    assertEquals(false, timeline.isPast(block.then("week", 2), weeks));
  }
}
