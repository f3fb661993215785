package gripwright.planning.progression;

import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.planning.Skarvdal;
import gripwright.wording.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The share of the load of a week after a time without training; the shares are our own. */
class ReturnRampTest {

  /** The kinds of week. */
  private enum Week {
    TRAINED,
    EASED,
    AWAY,
    SKIPPED
  }

  private static ReturnRamp ramp(int fromDay, int toDay) {
    return ReturnRamp.none(
        Skarvdal.ylva()
            .away(
                new Athlete.Absence(
                    MONDAY.plusDays(fromDay), MONDAY.plusDays(toDay), Optional.empty()))
            .build());
  }

  private static ReturnRamp ramp() {
    return ReturnRamp.none(Skarvdal.ylva().build());
  }

  /** The share of each week, and the ramp after the last. */
  private record Course(List<Double> shares, ReturnRamp ramp) {}

  /** Plans weeks with training on Saturday. */
  private static Course course(ReturnRamp start, Week... weeks) {
    ReturnRamp ramp = start;
    List<Double> shares = new ArrayList<>();
    Optional<LocalDate> last = Optional.empty();
    for (int i = 0; i < weeks.length; i++) {
      LocalDate first = MONDAY.plusWeeks(i);
      boolean eased = weeks[i] == Week.EASED;
      boolean trained = eased || weeks[i] == Week.TRAINED;
      ramp = ramp.before(first, last, false);
      double share = ramp.share(eased);
      shares.add(share);
      ramp = ramp.after(trained, eased, share, weeks[i] == Week.SKIPPED);
      last = trained ? Optional.of(first.plusDays(5)) : last;
    }
    return new Course(shares, ramp);
  }

  private static List<Double> shares(ReturnRamp start, Week... weeks) {
    return course(start, weeks).shares();
  }

  @Test
  void trainedWeeksGetTheFullLoad() {
    Course course = course(ramp(), Week.TRAINED, Week.TRAINED, Week.EASED);
    assertEquals(List.of(1.0, 1.0, 1.0), course.shares());
    assertEquals(true, course.ramp().steady());
    assertEquals(false, course.ramp().byLog());
  }

  @Test
  void afterFourteenDaysAwayTheLoadReturnsInTwoSteps() {
    Course course =
        course(
            ramp(7, 20),
            Week.TRAINED,
            Week.AWAY,
            Week.AWAY,
            Week.TRAINED,
            Week.TRAINED,
            Week.TRAINED);
    assertEquals(List.of(1.0, 1.0, 1.0, 0.8, 0.9, 1.0), course.shares());
    assertEquals(
        "first weeks after 14 days or more away", Words.say(course.ramp().from().orElseThrow()));
    assertEquals(false, course.ramp().byLog());
    assertEquals(true, course.ramp().steady());
  }

  @Test
  void thirteenDaysAwayDoNotReduceTheLoad() {
    // Sunday to Friday of the week after next, with one week untrained between
    assertEquals(
        List.of(1.0, 1.0, 1.0), shares(ramp(6, 18), Week.TRAINED, Week.AWAY, Week.TRAINED));
    assertEquals(
        List.of(1.0, 1.0, 0.8), shares(ramp(6, 19), Week.TRAINED, Week.AWAY, Week.TRAINED));
  }

  @Test
  void aWeekThatEndsAwayDoesNotStartTheReturn() {
    assertEquals(
        List.of(1.0, 1.0, 1.0, 0.8),
        shares(ramp(7, 20), Week.TRAINED, Week.AWAY, Week.AWAY, Week.TRAINED));
    assertEquals(
        List.of(1.0, 1.0, 1.0), shares(ramp(4, 20), Week.TRAINED, Week.AWAY, Week.TRAINED));
  }

  @Test
  void anEasedWeekKeepsTheShareOfTheWeekBefore() {
    Course course =
        course(
            ramp(7, 20),
            Week.TRAINED,
            Week.AWAY,
            Week.AWAY,
            Week.TRAINED,
            Week.EASED,
            Week.TRAINED);
    assertEquals(List.of(1.0, 1.0, 1.0, 0.8, 0.8, 0.9), course.shares());
    assertEquals(false, course.ramp().steady(), "the last share was not yet whole");
  }

  @Test
  void theLoadReturnsInOneStepAfterASkippedWeek() {
    Course course = course(ramp(), Week.TRAINED, Week.SKIPPED);
    assertEquals(List.of(1.0, 1.0), course.shares());
    ReturnRamp ramp =
        course.ramp().before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), false);
    assertEquals(0.9, ramp.share(false));
    assertEquals(false, ramp.steady());
    assertEquals(true, ramp.byLog());
    assertEquals(
        "first week after one without training, from 2027-03-08 to 2027-03-14",
        Words.say(ramp.from().orElseThrow()));
    ReturnRamp next =
        ramp.after(true, false, 0.9, false)
            .before(MONDAY.plusWeeks(3), Optional.of(MONDAY.plusDays(19)), false);
    assertEquals(1, next.share(false));
  }

  @Test
  void theLoadReturnsInTwoStepsAfterTwoSkippedWeeks() {
    ReturnRamp ramp =
        course(ramp(), Week.TRAINED, Week.SKIPPED, Week.SKIPPED)
            .ramp()
            .before(MONDAY.plusWeeks(3), Optional.of(MONDAY.plusDays(5)), false);
    assertEquals(0.8, ramp.share(false));
    assertEquals(
        "first weeks after 2 weeks without training", Words.say(ramp.from().orElseThrow()));
    assertEquals(true, ramp.byLog());
  }

  @Test
  void evaluatingAWeekDoesNotChangeTheRamp() {
    ReturnRamp before = course(ramp(), Week.TRAINED, Week.SKIPPED).ramp();
    ReturnRamp week = before.before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), false);
    week.after(true, false, 0.9, false);
    assertEquals(course(ramp(), Week.TRAINED, Week.SKIPPED).ramp(), before);
    assertEquals(week, before.before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), false));
  }

  @Test
  void anAbsenceBeforeTheFirstSessionHasNoReturn() {
    assertEquals(List.of(1.0, 1.0, 1.0), shares(ramp(0, 15), Week.AWAY, Week.AWAY, Week.TRAINED));
  }

  @Test
  void theLoadReturnsInTwoStepsAfterAWeekOffWithPain() {
    ReturnRamp ramp =
        course(ramp(), Week.TRAINED, Week.AWAY)
            .ramp()
            .before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), true);
    assertEquals(0.8, ramp.share(false));
    assertEquals(
        "first weeks after pain that stopped training", Words.say(ramp.from().orElseThrow()));
    assertEquals(true, ramp.byLog());
    ReturnRamp trainedOn =
        course(ramp(), Week.TRAINED, Week.TRAINED)
            .ramp()
            .before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(12)), true);
    assertEquals(1, trainedOn.share(false), "no week was left out");
  }
}
