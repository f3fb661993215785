package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.hand.Finger;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Up to which day a log tells of a plan of two weeks, and what of it counts. */
class LoggedDaysTest {

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

  private static LogTimeline heard(LogEntry... entries) {
    return new LogTimeline(PLAN, Skarvdal.ylva().build(), log(entries));
  }

  private static LogEntry trained(int day, String session) {
    return new LogEntry.Trained(MONDAY.plusDays(day), session, List.of(), Optional.empty());
  }

  private static LogEntry skipped(int day) {
    return new LogEntry.Skipped(MONDAY.plusDays(day), "strength", Optional.empty());
  }

  private static LogEntry climbed(int day) {
    return new LogEntry.Climbed(
        MONDAY.plusDays(day),
        false,
        "easy",
        Duration.ofHours(1),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static LogEntry pain(int day, double score) {
    return new LogEntry.Pain(
        MONDAY.plusDays(day),
        Finger.RING,
        Optional.empty(),
        Optional.empty(),
        score,
        LogEntry.Pain.Kind.DULL,
        Optional.empty());
  }

  private static Optional<LocalDate> day(int day) {
    return Optional.of(MONDAY.plusDays(day));
  }

  @Test
  void daysAreKnownUpToTheLastSessionOfThePlan() {
    assertEquals(Optional.empty(), lastKnownDay());
    assertEquals(day(3), heard(trained(1, "strength"), trained(3, "strength")).until());
    assertEquals(day(3), heard(trained(1, "strength"), skipped(3)).until());
    assertEquals(day(0), heard(trained(0, "strength")).until());
    assertEquals(day(13), heard(trained(13, "strength")).until());
    assertEquals(Optional.empty(), heard(trained(-1, "strength")).until(), "before the plan");
    assertEquals(Optional.empty(), heard(trained(14, "strength")).until(), "after it");
    assertEquals(Optional.empty(), heard(trained(3, "extra"), climbed(4)).until());
  }

  @Test
  void anyLaterLineSaysThatTheDaysBeforeItAreOver() {
    LogEntry session = trained(1, "strength");
    assertEquals(day(4), heard(session, climbed(5)).until());
    assertEquals(day(4), heard(session, pain(5, 1)).until());
    assertEquals(day(4), heard(session, trained(5, "extra")).until());
    assertEquals(day(1), heard(session, climbed(2)).until());
    assertEquals(day(1), heard(session, climbed(0)).until());
    assertEquals(day(13), heard(session, climbed(30)).until(), "the plan is over");
  }

  @Test
  void aDayIsPastUpToTheLastThatIsKnown() {
    LogTimeline heard = heard(trained(3, "strength"));
    assertEquals(true, heard.isPast(MONDAY.plusDays(3)));
    assertEquals(false, heard.isPast(MONDAY.plusDays(4)));
    assertEquals(false, heard().isPast(MONDAY));
  }

  @Test
  void sessionsOfOtherNamesCountWhereTheirDaysAreNotKnownOtherwise() {
    LogTimeline heard =
        heard(
            trained(1, "strength"), trained(-1, "extra"), trained(0, "extra"), trained(5, "extra"));
    assertEquals(
        List.of(MONDAY.plusDays(5)), heard.others().stream().map(LogEntry.Trained::date).toList());
    assertEquals(
        List.of(MONDAY, MONDAY.plusDays(13)),
        heard(trained(0, "extra"), trained(13, "extra"), trained(-1, "extra"), trained(14, "extra"))
            .others()
            .stream()
            .map(LogEntry.Trained::date)
            .toList());
  }

  @Test
  void painThatStopsCountsFromTheLastSessionOnAndBeforeAWeek() {
    LocalDate week = MONDAY.plusDays(7);
    assertEquals(false, heard(pain(3, 5)).hurts(Optional.empty(), week), "not above 5");
    assertEquals(true, heard(pain(3, 6)).hurts(Optional.empty(), week));
    assertEquals(true, heard(pain(3, 6)).hurts(day(3), week));
    assertEquals(false, heard(pain(3, 6)).hurts(day(4), week));
    assertEquals(false, heard(pain(7, 6)).hurts(day(3), week));
    assertEquals(true, heard(pain(6, 6)).hurts(day(3), week));
    assertEquals(true, heard(pain(0, 6)).hurts(Optional.empty(), week));
    assertEquals(false, heard(pain(-1, 6)).hurts(Optional.empty(), week), "before the plan");
  }

  @Test
  void aWeekHasItsSessionsUpToTheLastDayThatIsKnown() {
    LocalDate week = MONDAY.plusDays(7);
    LogTimeline heard =
        heard(
            trained(6, "strength"),
            trained(7, "strength"),
            climbed(8),
            pain(8, 1),
            skipped(9),
            trained(13, "extra"));
    assertEquals(
        List.of(MONDAY.plusDays(7), MONDAY.plusDays(9)),
        heard.ofWeek(week).entries().stream().map(LogEntry::date).toList(),
        "the evening of the last day may still come");
    assertEquals(
        List.of(MONDAY.plusDays(6)),
        heard.ofWeek(MONDAY).entries().stream().map(LogEntry::date).toList());
  }

  @Test
  void aLogSpeaksOfAPlanIfAnyLineIsOfItsDays() {
    assertEquals(false, LogTimeline.speaks(log(), PLAN));
    assertEquals(true, LogTimeline.speaks(log(climbed(0)), PLAN));
    assertEquals(true, LogTimeline.speaks(log(climbed(13)), PLAN));
    assertEquals(false, LogTimeline.speaks(log(climbed(-1), climbed(14)), PLAN));
  }

  @Test
  void whatALogSaidBeforeADayEndsTheDayBefore() {
    assertEquals(
        1, LogTimeline.before(log(climbed(-1), climbed(0), climbed(1)), MONDAY).entries().size());
  }
}
