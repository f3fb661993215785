package gripwright.review.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.review.ImpulseResponse;
import gripwright.review.MadeWeeks;
import gripwright.review.TrainingLoad;
import gripwright.strength.TestReliability;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Load, its measures and change between tests against values that were published. */
final class PublishedLoadTest {

  /**
   * Foster C et al. 2001, J Strength Cond Res 15(1):109-115, Table 5, the training diary of a speed
   * skater from Sunday to Saturday: loads as printed, which are not all effort times duration;
   * weekly load 3400, monotony 1.26, strain 4284. The printed monotony comes out of the printed
   * loads to 4 % with the deviation of all seven days, and to 11 % with that of a sample.
   */
  @Test
  void fostersDiary() {
    double[] days = {940, 50, 840 + 280, 180, 390, 50, 390 + 280};
    double sum = 0;
    for (double day : days) {
      sum += day;
    }
    assertEquals(3400, sum);
    double monotony = TrainingLoad.monotony(days).orElseThrow();
    assertEquals(1.26, monotony, 0.04 * 1.26);
    TrainingLoad.Week week = MadeWeeks.of(days);
    assertEquals(3400, week.load());
    assertEquals(4284, week.strain().orElseThrow(), 0.04 * 4284);
  }

  /** Published with its own steps: mean 50, deviation 53.45 of all seven days, monotony 0.94. */
  @Test
  void aVariedWeek() {
    assertEquals(
        0.94, TrainingLoad.monotony(new double[] {50, 0, 100, 50, 0, 150, 0}).orElseThrow(), 0.005);
  }

  @Test
  void monotonyWithoutMeaningIsEmpty() {
    assertTrue(TrainingLoad.monotony(new double[7]).isEmpty());
    assertTrue(TrainingLoad.monotony(new double[] {30, 30, 30, 30, 30, 30, 30}).isEmpty());
    double third = 0.1 + 0.2;
    assertTrue(
        TrainingLoad.monotony(new double[] {third, 0.3, third, 0.3, 0.3, 0.3, 0.3}).isEmpty());
    assertTrue(TrainingLoad.monotony(new double[0]).isEmpty());
  }

  /**
   * Williams S et al. 2017, Br J Sports Med 51(3):209-210 (load.ewma.*): weights of 2 / (N + 1),
   * that is 0.25 over 7 days and 0.069 over 28; today's load by the weight and yesterday's value by
   * the rest.
   */
  @Test
  void weightedLoads() {
    double[] acute = TrainingLoad.weighted(new double[] {400, 0, 800}, 7);
    assertEquals(400, acute[0]);
    assertEquals(300, acute[1], 1e-9);
    assertEquals(425, acute[2], 1e-9);
    double[] chronic = TrainingLoad.weighted(new double[] {0, 1000}, 28);
    assertEquals(69, chronic[1], 0.05);
  }

  /**
   * A step of the recurrence with other constants, as published by an open calculator of the model:
   * fitness 100 and fatigue 60, then a load of 50 with 42 and 7 days gives 147.65 and 102.00, and
   * with gains of 1 and 2 a balance of -56.36.
   */
  @Test
  void aStepOfTheRecurrence() {
    ImpulseResponse fitness = new ImpulseResponse(42, 7, 1, 2);
    double grown = fitness.of(new double[] {100, 50}).get(1).fitness();
    double tired = fitness.of(new double[] {60, 50}).get(1).fatigue();
    assertEquals(147.65, grown, 0.005);
    assertEquals(102.00, tired, 0.015);
    assertEquals(-56.36, grown - 2 * tired, 0.02);
  }

  /**
   * Fitz-Clarke JR, Morton RH, Banister EW 1991, J Appl Physiol 71(3):1151-1158 (from memory;
   * load.ir.cross, load.ir.peak): with 45 and 15 days and gains of 1 and 2, a day's load has cost
   * more than it gave for 16 days, and gives most after 40.
   */
  @Test
  void aDaysLoadPaysAfterSixteenDaysAndMostAfterForty() {
    double[] loads = new double[101];
    loads[0] = 100;
    List<ImpulseResponse.State> states = ImpulseResponse.STANDARD.of(loads);
    int pays = 0;
    int most = 0;
    for (int i = 1; i < states.size(); i++) {
      if (states.get(i).balance() > 0 && pays == 0) {
        pays = i;
      }
      if (states.get(i).balance() > states.get(most).balance()) {
        most = i;
      }
    }
    assertEquals(16, pays);
    assertEquals(40, most);
  }

  /**
   * The same load every day (load.ir.asym): fitness tends to load / (1 - exp(-1/45)), 45.5 times
   * it; fatigue to 15.5 times.
   */
  @Test
  void theSameEveryDayTendsToASum() {
    double[] loads = new double[1000];
    java.util.Arrays.fill(loads, 1);
    ImpulseResponse.State last = ImpulseResponse.STANDARD.of(loads).get(999);
    assertEquals(45.5, last.fitness(), 0.01);
    assertEquals(15.5, last.fatigue(), 0.01);
  }

  /**
   * Weir JP 2005, J Strength Cond Res 19(1):231-240 (rel.formula.sem, rel.formula.mdc): the
   * standard error is the deviation times the root of 1 less the correlation; of 12 kg and 0.938
   * (cf.rel.peak.icc) it is 3.0 kg, and 8.3 kg are detectable.
   */
  @Test
  void detectableChange() {
    double error = TestReliability.standardError(12, TestReliability.PEAK_FORCE.correlation());
    assertEquals(2.99, error, 0.005);
    assertEquals(8.28, TestReliability.DETECTABLE * error, 0.005);
  }
}
