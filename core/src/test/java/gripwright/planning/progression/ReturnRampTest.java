package gripwright.planning.progression;

import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.planning.Skarvdal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which share of its load a week gets after a time without training; the shares are our own. */
class ReturnRampTest {

  /** What becomes of a week that is looked at. */
  private enum Week {
    TRAINED,
    EASED,
    AWAY,
    SKIPPED
  }

  private static ReturnRamp ramp(int fromDay, int toDay) {
    return new ReturnRamp(
        Skarvdal.ylva()
            .away(
                new Athlete.Absence(
                    MONDAY.plusDays(fromDay), MONDAY.plusDays(toDay), Optional.empty()))
            .build());
  }

  private static ReturnRamp ramp() {
    return new ReturnRamp(Skarvdal.ylva().build());
  }

  /** Goes through weeks that are trained on Saturday, and returns the share of each. */
  private static List<Double> shares(ReturnRamp ramp, Week... weeks) {
    List<Double> shares = new ArrayList<>();
    Optional<LocalDate> last = Optional.empty();
    for (int i = 0; i < weeks.length; i++) {
      LocalDate first = MONDAY.plusWeeks(i);
      boolean eased = weeks[i] == Week.EASED;
      boolean trained = eased || weeks[i] == Week.TRAINED;
      ramp.before(first, last, false);
      double share = ramp.share(eased);
      shares.add(share);
      ramp.after(trained, eased, share, weeks[i] == Week.SKIPPED);
      last = trained ? Optional.of(first.plusDays(5)) : last;
    }
    return shares;
  }

  @Test
  void weeksThatAreTrainedGetTheWholeLoad() {
    ReturnRamp ramp = ramp();
    assertEquals(List.of(1.0, 1.0, 1.0), shares(ramp, Week.TRAINED, Week.TRAINED, Week.EASED));
    assertEquals(true, ramp.steady());
    assertEquals(false, ramp.byLog());
  }

  @Test
  void afterFourteenDaysAwayTheLoadReturnsInTwoSteps() {
    ReturnRamp ramp = ramp(7, 20);
    assertEquals(
        List.of(1.0, 1.0, 1.0, 0.8, 0.9, 1.0),
        shares(ramp, Week.TRAINED, Week.AWAY, Week.AWAY, Week.TRAINED, Week.TRAINED, Week.TRAINED));
    assertEquals("first weeks after 14 days or more away", ramp.from());
    assertEquals(false, ramp.byLog());
    assertEquals(true, ramp.steady());
  }

  @Test
  void thirteenDaysAwayCostNothing() {
    // Sunday to Friday of the week after next, with one week untrained between
    assertEquals(
        List.of(1.0, 1.0, 1.0), shares(ramp(6, 18), Week.TRAINED, Week.AWAY, Week.TRAINED));
    assertEquals(
        List.of(1.0, 1.0, 0.8), shares(ramp(6, 19), Week.TRAINED, Week.AWAY, Week.TRAINED));
  }

  @Test
  void aWeekThatEndsAwayReturnsNothingYet() {
    assertEquals(
        List.of(1.0, 1.0, 1.0, 0.8),
        shares(ramp(7, 20), Week.TRAINED, Week.AWAY, Week.AWAY, Week.TRAINED));
    assertEquals(
        List.of(1.0, 1.0, 1.0), shares(ramp(4, 20), Week.TRAINED, Week.AWAY, Week.TRAINED));
  }

  @Test
  void anEasedWeekKeepsTheShareOfTheWeekBefore() {
    ReturnRamp ramp = ramp(7, 20);
    assertEquals(
        List.of(1.0, 1.0, 1.0, 0.8, 0.8, 0.9),
        shares(ramp, Week.TRAINED, Week.AWAY, Week.AWAY, Week.TRAINED, Week.EASED, Week.TRAINED));
    assertEquals(false, ramp.steady(), "the last share was not yet whole");
  }

  @Test
  void aSkippedWeekReturnsInOneStepAndSaysSo() {
    ReturnRamp ramp = ramp();
    assertEquals(List.of(1.0, 1.0), shares(ramp, Week.TRAINED, Week.SKIPPED));
    ramp.before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), false);
    assertEquals(0.9, ramp.share(false));
    assertEquals(false, ramp.steady());
    assertEquals(true, ramp.byLog());
    assertEquals(
        "first week after one without training, from 2027-03-08 to 2027-03-14", ramp.from());
    ramp.after(true, false, 0.9, false);
    ramp.before(MONDAY.plusWeeks(3), Optional.of(MONDAY.plusDays(19)), false);
    assertEquals(1, ramp.share(false));
  }

  @Test
  void twoSkippedWeeksReturnInTwoSteps() {
    ReturnRamp ramp = ramp();
    shares(ramp, Week.TRAINED, Week.SKIPPED, Week.SKIPPED);
    ramp.before(MONDAY.plusWeeks(3), Optional.of(MONDAY.plusDays(5)), false);
    assertEquals(0.8, ramp.share(false));
    assertEquals("first weeks after 2 weeks without training", ramp.from());
    assertEquals(true, ramp.byLog());
  }

  @Test
  void beforeTheFirstSessionNothingReturnsFromAnAbsence() {
    assertEquals(List.of(1.0, 1.0, 1.0), shares(ramp(0, 15), Week.AWAY, Week.AWAY, Week.TRAINED));
  }

  @Test
  void aWeekOffAfterPainReturnsInTwoSteps() {
    ReturnRamp ramp = ramp();
    shares(ramp, Week.TRAINED, Week.AWAY);
    ramp.before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(5)), true);
    assertEquals(0.8, ramp.share(false));
    assertEquals("first weeks after pain that stopped training", ramp.from());
    assertEquals(true, ramp.byLog());
    ReturnRamp trainedOn = ramp();
    shares(trainedOn, Week.TRAINED, Week.TRAINED);
    trainedOn.before(MONDAY.plusWeeks(2), Optional.of(MONDAY.plusDays(12)), true);
    assertEquals(1, trainedOn.share(false), "no week was left out");
  }
}
