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

  /** The closed form (3cc.derived.handgrip.et20 to .et90) against the muscle with its drive. */
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
    assertEquals(seconds, new Muscle(HAND).hold(ofMvc, 3600), Math.max(0.01 * seconds, 0.2));
  }

  /** A load that recovery keeps up with is held without end: below R / (F + R). */
  @Test
  void lightLoadsAreHeldWithoutEnd() {
    double floor = HAND.sustainableLoad(1);
    assertEquals(Double.POSITIVE_INFINITY, HAND.enduranceSeconds(0.99 * floor));
    assertEquals(1e6, new Muscle(HAND).hold(0.99 * floor, 1e6));
    assertTrue(Double.isFinite(HAND.enduranceSeconds(1.01 * floor)));
  }

  /**
   * A maximal effort falls to the same floor, 3cc.derived.handgrip.floor, less the fibres that the
   * drive can't activate in time.
   */
  @Test
  void maximalEffortFallsToTheFloor() {
    Muscle muscle = new Muscle(HAND);
    muscle.hold(1, 1e5);
    assertEquals(0.0613, muscle.active(), 1e-4);
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
