package gripwright.fatigue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.fatigue.Course;
import gripwright.fatigue.Drills;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Muscle;
import gripwright.quantity.Numbers;
import gripwright.strength.EnduranceLaw;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EnduranceTest {

  private static final FatigueRates HAND = FatigueRates.HAND_2012;

  /** Frey Law LA, Avin KG 2010, Ergonomics 53(1):109-129, hand and grip: 33.55 f^-1.61 s. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 447.7",
    "0.3, 233.1",
    "0.4, 146.7",
    "0.5, 102.4",
    "0.6, 76.4",
    "0.7, 59.6",
    "0.8, 48.1",
    "0.9, 39.8"
  })
  void thePowerLawIsAsPublished(double ofMvc, double seconds) {
    assertEquals(seconds, Endurance.freyLaw(ofMvc), 0.1);
  }

  /** In its valid range, the set stays near the curve that it was fitted to. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.3, 0.4, 0.5, 0.6})
  void theSetOf2012FollowsThePowerLawUpToSixtyPercent(double ofMvc) {
    assertTrue(HAND.validAt(ofMvc));
    double published = Endurance.freyLaw(ofMvc);
    assertEquals(published, HAND.enduranceSeconds(ofMvc), 0.115 * published);
  }

  /** Above, it is pessimistic: half of the curve at 80 %, under a third at 90 %. */
  @ParameterizedTest
  @CsvSource({"0.7, 0.75", "0.8, 0.54", "0.9, 0.29"})
  void theSetOf2012FallsShortAtHighLoads(double ofMvc, double share) {
    assertEquals(share, HAND.enduranceSeconds(ofMvc) / Endurance.freyLaw(ofMvc), 0.01);
    assertTrue(!HAND.validAt(ofMvc));
  }

  /** -ln(1 - R (1 - f) / (F f)) / R with the rates of Frey-Law 2012 (arithmetic). */
  @ParameterizedTest
  @CsvSource({
    "0.2, 473.1",
    "0.3, 258.3",
    "0.4, 161.1",
    "0.5, 105.5",
    "0.6, 69.6",
    "0.7, 44.4",
    "0.8, 25.7",
    "0.9, 11.4"
  })
  void closedFormOfOneHold(double ofMvc, double seconds) {
    assertEquals(seconds, HAND.enduranceSeconds(ofMvc), 0.1);
    assertEquals(seconds, new Muscle(HAND).hold(ofMvc, 3600), Math.max(0.01 * seconds, 0.2));
  }

  /** A load that recovery keeps up with is held without end: below R / (F + R) (arithmetic). */
  @Test
  void lightLoadsAreHeldWithoutEnd() {
    double floor = HAND.sustainableLoad(1);
    assertEquals(0.0613, floor, 1e-4);
    assertEquals(
        0.0858,
        new FatigueRates("general", 0.00970, 0.00091, 1, 1, 0, 1, "Frey-Law 2012")
            .sustainableLoad(1),
        1e-4);
    assertEquals(Double.POSITIVE_INFINITY, HAND.enduranceSeconds(0.99 * floor));
    assertEquals(1e6, new Muscle(HAND).hold(0.99 * floor, 1e6));
    assertTrue(Double.isFinite(HAND.enduranceSeconds(1.01 * floor)));
  }

  /**
   * A maximal effort falls to the same floor, less the fibres that the drive can't activate in
   * time.
   */
  @Test
  void maximalEffortFallsToTheFloor() {
    Muscle muscle = new Muscle(HAND);
    muscle.hold(1, 1e5);
    assertEquals(0.0613, muscle.active(), 1e-4);
  }

  /** 60 s at 50 % with the rates of Frey-Law 2012 and a drive of 10 both ways (arithmetic). */
  @Test
  void sharesAfterAMinute() {
    Muscle muscle = new Muscle(HAND);
    muscle.hold(0.5, 60);
    assertEquals(0.4995, muscle.active(), 1e-3);
    assertEquals(0.2128, muscle.resting(), 1e-3);
    assertEquals(0.2877, muscle.fatigued(), 1e-3);
  }

  /** R k / (F d + R k), k = d + r (1 - d): Frey-Law 2012 with r of Looft 2018 (arithmetic). */
  @ParameterizedTest
  @CsvSource({
    "0.50, 1, 0.116", "0.50, 15, 0.511", "0.50, 30, 0.669",
    "0.70, 1, 0.085", "0.70, 15, 0.327", "0.70, 30, 0.475",
    "0.778, 1, 0.077", "0.778, 15, 0.257", "0.778, 30, 0.385"
  })
  void highestLoadWithoutEnd(double dutyCycle, double restMultiplier, double ofMvc) {
    FatigueRates rates = HAND.withRestMultiplier(restMultiplier);
    assertEquals(ofMvc, rates.sustainableLoad(dutyCycle), 1e-3);
  }

  /** The same with the grip set of Rakshit 2021 (arithmetic). */
  @ParameterizedTest
  @CsvSource({"0.50, 0.596", "0.70, 0.410"})
  void highestLoadWithoutEndOfTheSetOf2021(double dutyCycle, double ofMvc) {
    assertEquals(ofMvc, FatigueRates.GRIP_2021.sustainableLoad(dutyCycle), 1e-3);
  }

  /** Short cycles a little below the limit go on for an hour; a little above, they don't. */
  @ParameterizedTest
  @CsvSource({"0.5", "0.7", "0.778"})
  void theLimitIsWhereSimulatedCyclesFail(double dutyCycle) {
    double limit = HAND.sustainableLoad(dutyCycle);
    double work = 4 * dutyCycle;
    for (double share : new double[] {0.95, 1.05}) {
      Course course = Course.of(HAND, Drills.repeated(900, work, 4 - work, share * limit));
      assertEquals(share > 1, course.firstMissed().isPresent(), "at " + share);
    }
  }

  /** Without the multiplier the model is that of 2008, and rest is worth no more than load. */
  @Test
  void aMultiplierOfOneIsTheModelWithoutIt() {
    Muscle muscle = new Muscle(HAND.withRestMultiplier(1));
    muscle.hold(0.5, 60);
    double fatigued = muscle.fatigued();
    muscle.rest(1);
    double settled = muscle.fatigued();
    muscle.rest(100);
    assertTrue(settled > fatigued - 1e-3);
    assertEquals(settled * Math.exp(-100 * HAND.recovery()), muscle.fatigued(), 1e-6);
  }

  /** The interval is no narrower than the scatter of what is published at 20 to 60 %. */
  @Test
  void theSpreadCoversThePublishedScatter() {
    double square =
        Endurance.measured().stream()
            .mapToDouble(e -> Math.log(e.seconds() / HAND.enduranceSeconds(e.ofMvc())))
            .map(x -> x * x)
            .average()
            .orElseThrow();
    double factor = Math.exp(Endurance.TO_95_PERCENT * Math.sqrt(square));
    assertEquals(FatigueRates.USUAL_SPREAD, factor, 0.1);
    assertTrue(FatigueRates.USUAL_SPREAD >= factor, "scatter " + factor);
  }

  @Test
  void writesTheTables() throws IOException {
    StringBuilder table =
        new StringBuilder(
            """
            | load | Frey Law 2010\u2020 | Rohmert 1960\u2020 | `HAND_2012` | with drive | `GRIP_2021` | `HAND_2021` | `FINGERS_INTENSE` |
            |---|---|---|---|---|---|---|---|
            """);
    for (int percent = 20; percent <= 90; percent += 10) {
      double load = percent / 100.0;
      table.append(
          String.format(
              Locale.ROOT,
              "| %d %% | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |%n",
              percent,
              Endurance.freyLaw(load),
              EnduranceLaw.ROHMERT.seconds(load),
              HAND.enduranceSeconds(load),
              new Muscle(HAND).hold(load, 3600),
              FatigueRates.GRIP_2021.enduranceSeconds(load),
              FatigueRates.HAND_2021.enduranceSeconds(load),
              FatigueRates.FINGERS_INTENSE.enduranceSeconds(load)));
    }
    ModelPage.check("fatigue.md", "endurance", table.toString());
    table =
        new StringBuilder("| set | F | R | r | valid for | source |\n|---|---|---|---|---|---|\n");
    for (FatigueRates rates : FatigueRates.all()) {
      table.append(
          String.format(
              Locale.ROOT,
              "| `%s` | %.5f | %.5f | %s | %.0f to %.0f %% | %s |%n",
              rates.name(),
              rates.fatigue(),
              rates.recovery(),
              Numbers.plain(rates.restMultiplier(), 2),
              100 * rates.from(),
              100 * rates.to(),
              rates.source()));
    }
    ModelPage.check("fatigue.md", "rates", table.toString());
    table =
        new StringBuilder(
            "| held for | "
                + "Rohmert 1960\u2020 | `HAND_2012` | `FINGERS_INTENSE` |\n|---|---|---|---|\n");
    for (int seconds : new int[] {5, 7, 10, 20, 30, 60, 120}) {
      table.append(
          String.format(
              Locale.ROOT,
              "| %d s | %.1f %% | %.1f %% | %.1f %% |%n",
              seconds,
              100 * EnduranceLaw.ROHMERT.share(seconds),
              100 * HAND.greatestLoad(seconds),
              100 * FatigueRates.FINGERS_INTENSE.greatestLoad(seconds)));
    }
    ModelPage.check("fatigue.md", "greatest", table.toString());
  }
}
