package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.ModelPath;
import gripwright.quantity.Load;
import org.junit.jupiter.api.Test;

/** How a load comes back that a log held down. */
class HeldLoadTest {

  private static final HeldLoad HELD =
      new HeldLoad(MONDAY.plusDays(8), 2, EDGE, Load.ofKilograms(50), 51, true);

  @Test
  void nextWeekItComesBackByTheRiseOfThePlan() {
    Dose.Ceiling next = HELD.next(0.1, false, false);
    assertEquals(56.1, next.most().kilograms(), 1e-9);
    assertEquals(
        "the load comes back by 10 % a week at most, from 50 kg on 2027-03-09", next.why());
  }

  @Test
  void inTheSameWeekAndInAnEasedOneItStays() {
    Dose.Ceiling same = HELD.next(0.1, true, false);
    assertEquals(51, same.most().kilograms(), 1e-9);
    assertEquals("no more than 50 kg on 2027-03-09", same.why());
    Dose.Ceiling eased = HELD.next(0.1, false, true);
    assertEquals(51, eased.most().kilograms(), 1e-9);
    assertEquals(
        "no more than 50 kg on 2027-03-09: it comes back after the eased week", eased.why());
  }

  @Test
  void itsWeekBeginsOnADayOfThePlan() {
    assertEquals(MONDAY.plusDays(7), HELD.monday(MONDAY));
  }

  @Test
  void aLineOfThePlanIsTheSameInEveryWeek() {
    ModelPath line = ModelPath.of("plan", "spring").then("block", "base").then("session", "power");
    assertEquals(
        line.then("exercise", 1),
        HeldLoad.line(
            ModelPath.of("plan", "spring")
                .then("block", "base")
                .then("week", 2)
                .then("session", "power")
                .then("date", "2027-03-09")
                .then("exercise", 1)));
  }
}
