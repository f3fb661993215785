package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Weeks and days of plans are those of {@code java.time}, over leap days and ends of years. */
class CalendarProperties {

  private static final int WEEKS = 4;

  private static CompiledPlan from(LocalDate day) {
    return Gripwright.read(
            "calendar.grip",
            """
            language 1
            athlete ragna "Ragna of Skarvdal" {
              born       1980-02-29
              body-mass  60 kg
              trained    72 months
              ability    french 8a
              hand       { length 178 mm }
              available  mon 90 min, thu 90 min, sun 90 min
              equipment  { edges 20 mm  added 1 kg steps to 60 kg  assist 1 kg steps to 50 kg }
            }
            plan p {
              for   ragna
              from  %s
              block a %d weeks {
                session s 2 per week {
                  do calm-holds with level body-mass - 30 kg on half-crimp edge 20 mm
                }
              }
            }
            """
                .formatted(day, WEEKS))
        .compile()
        .plans()
        .get(0);
  }

  /** Any day, often one near a leap day or the end of a year. */
  @Provide
  Arbitrary<LocalDate> days() {
    Arbitrary<Integer> near = Arbitraries.integers().between(-30, 3);
    Arbitrary<Integer> years = Arbitraries.integers().between(2000, 2104);
    return Arbitraries.oneOf(
        Arbitraries.integers()
            .between(0, 38_000)
            .map(day -> LocalDate.of(2000, 1, 1).plusDays(day)),
        years.flatMap(year -> near.map(by -> LocalDate.of(year, 3, 1).plusDays(by))),
        years.flatMap(year -> near.map(by -> LocalDate.of(year, 12, 31).plusDays(by))));
  }

  @Property
  void everyDayIsInItsOwnWeek(@ForAll("days") LocalDate day) {
    CompiledPlan plan = from(day);
    assertEquals(WEEKS, plan.weeks().size());
    LocalDate next = day;
    for (PlanWeek week : plan.weeks()) {
      assertEquals(next, week.from());
      assertEquals(next.plusDays(6), week.to());
      next = week.to().plusDays(1);
    }
    assertEquals(7L * WEEKS, ChronoUnit.DAYS.between(day, next));
    assertEquals(2 * WEEKS, plan.sessions().size());
    for (DatedSession session : plan.sessions()) {
      PlanWeek week = plan.weeks().get(session.week() - 1);
      assertTrue(!session.date().isBefore(week.from()) && !session.date().isAfter(week.to()));
      assertTrue(
          List.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY, DayOfWeek.SUNDAY)
              .contains(session.date().getDayOfWeek()));
    }
  }

  @Property
  void fromAMondayOnWeeksAreIsoWeeks(@ForAll("days") LocalDate day) {
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    CompiledPlan plan = from(monday);
    for (DatedSession session : plan.sessions()) {
      LocalDate first = plan.weeks().get(session.week() - 1).from();
      assertEquals(
          first.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR),
          session.date().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
      assertEquals(
          first.get(IsoFields.WEEK_BASED_YEAR), session.date().get(IsoFields.WEEK_BASED_YEAR));
      assertEquals(monday.plusWeeks(session.week() - 1L), first);
    }
  }
}
