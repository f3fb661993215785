package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.CriticalForce.Definition;
import gripwright.strength.Effort;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest.Series;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriticalForceTest {

  /** All-out test of McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923: 24 x 7 s, 3 s rest. */
  private static Series allOut(int holds, double critical, double above, double decaySeconds) {
    List<Load> means = new ArrayList<>();
    for (int i = 0; i < holds; i++) {
      double start = i * 10;
      double mean =
          above
              * decaySeconds
              / 7
              * (Math.exp(-start / decaySeconds) - Math.exp(-(start + 7) / decaySeconds));
      means.add(Load.ofKilograms(critical + mean));
    }
    return new Series(Duration.ofSeconds(7), Duration.ofSeconds(3), means);
  }

  private static CriticalForce found(Series series, Definition definition) {
    return CriticalForce.ofSeries(series, definition).orElseThrow();
  }

  private static double impulse(Series series, double critical) {
    return series.means().stream().mapToDouble(load -> 7 * (load.kilograms() - critical)).sum();
  }

  /** The parts of the load are known, so both numbers must be recovered for any decay. */
  @ParameterizedTest
  @CsvSource({"25, 35, 40", "20, 30, 25", "60, 45, 60", "16.8, 20, 90"})
  void aMadeUpSeriesGivesItsAsymptoteBack(double critical, double above, double decay) {
    Series series = allOut(24, critical, above, decay);
    CriticalForce found = found(series, Definition.ASYMPTOTE);
    assertEquals(critical, found.force().best().kilograms(), 0.01 * critical);
    assertEquals(impulse(series, critical), found.impulseKgS(), 0.02 * impulse(series, critical));
  }

  /** The mean of the last three recovers them if the load has levelled off by then. */
  @ParameterizedTest
  @CsvSource({"25, 35, 35", "20, 30, 25", "60, 45, 35", "16.8, 20, 30"})
  void aMadeUpSeriesThatLevelsOffGivesItsLastThreeBack(
      double critical, double above, double decay) {
    Series series = allOut(24, critical, above, decay);
    CriticalForce found = found(series, Definition.MEAN_OF_LAST_THREE);
    assertEquals(critical, found.force().best().kilograms(), 0.01 * critical);
    assertEquals(impulse(series, critical), found.impulseKgS(), 0.02 * impulse(series, critical));
    assertTrue(found.levelled());
  }

  @Test
  void aShortSeriesGivesNoResultAndOneThatStillFallsIsMarked() {
    for (Definition definition : List.of(Definition.MEAN_OF_LAST_THREE, Definition.ASYMPTOTE)) {
      assertEquals(Optional.empty(), CriticalForce.ofSeries(allOut(11, 25, 35, 40), definition));
      assertEquals(Optional.empty(), CriticalForce.ofSeries(allOut(17, 25, 35, 40), definition));
    }
    Series falling = allOut(20, 10, 60, 150);
    assertFalse(found(falling, Definition.MEAN_OF_LAST_THREE).levelled());
    assertTrue(
        found(falling, Definition.ASYMPTOTE).force().best().kilograms()
            < 0.7 * found(falling, Definition.MEAN_OF_LAST_THREE).force().best().kilograms());
  }

  /**
   * cf.balas24.cf, cf.balas24.endforce: Balas J et al. 2024, Eur J Appl Physiol 124(9):2787-2798:
   * 20.1 kg as the mean of the last three holds and 16.8 kg as the force at their end, in the same
   * twelve people, 16 % apart.
   */
  @Test
  void theDefinitionsDifferAndAreNamed() {
    Series series = allOut(24, 20.1, 30, 30);
    List<Load> ends = series.means().stream().map(l -> l.times(16.8 / 20.1)).toList();
    CriticalForce end = CriticalForce.ofEnds(series, ends).orElseThrow();
    CriticalForce mean = found(series, Definition.MEAN_OF_LAST_THREE);
    assertEquals(Definition.END_OF_LAST_THREE, end.definition());
    assertEquals(
        -16, 100 * (end.force().best().kilograms() / mean.force().best().kilograms() - 1), 1);
    assertTrue(end.impulseKgS() > mean.impulseKgS());
  }

  /**
   * cf.rel.ef.cv, cf.rel.ief.cv: 21 % for the force at the end, 13.2 % for the impulse above it;
   * the spreads of what a series gives.
   */
  @Test
  void theSpreadOfASeriesIsItsReliability() {
    CriticalForce found = found(allOut(24, 25, 35, 40), Definition.MEAN_OF_LAST_THREE);
    assertEquals(0.21, found.force().spread());
    assertEquals(0.132, found.impulseSpread());
  }

  /**
   * wbal.eq: P = W'/t + CP (Skiba PF et al. 2012, Med Sci Sports Exerc 44(8):1526-1532), with
   * loads.
   */
  @ParameterizedTest
  @CsvSource({"40, 100", "50, 60", "70, 33.3333333333"})
  void unbrokenHoldsGiveForceAndImpulseBack(double load, double seconds) {
    double critical = 25;
    double impulse = 1500;
    assertEquals(seconds, impulse / (load - critical), 1e-9);
    ForceTime curve =
        ForceTime.fit(
                ForceTime.Form.CRITICAL_FORCE,
                List.of(
                    new Effort(300, Load.ofKilograms(30)),
                    new Effort(60, Load.ofKilograms(50)),
                    new Effort(100, Load.ofKilograms(40))))
            .orElseThrow();
    assertEquals(load, curve.load(seconds).best().kilograms(), 1e-6);
    assertEquals(seconds, curve.time(Load.ofKilograms(load)).best(), 1e-6);
  }
}
