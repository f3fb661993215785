package gripwright.strength;

import static gripwright.quantity.Numbers.plain;
import static gripwright.strength.Trials.DAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.strength.StrengthChange.Verdict;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a change is called progress or a loss, by simulation: the table of
 * docs/models/review.md. Strength rises evenly over twelve weeks, and each test has the noise of
 * its kind.
 */
class ProgressTableTest {

  private static final Setup SETUP = Trials.on(Trials.grip(0b1111, 90), 20);
  private static final int DRAWS = 1000;
  private static final int DAYS = 84;
  private static final long STREAM = 17;

  /** How often something was called, as shares of all draws. */
  private record Rates(double progress, double loss, double ofTwo) {}

  private static StrengthTest test(TestReliability kind, double kilograms, LocalDate day) {
    Load load = Load.ofKilograms(kilograms);
    Duration time = Duration.ofSeconds(7);
    return new StrengthTest(
        day,
        SETUP,
        kind == TestReliability.MAXIMAL_HOLD
            ? new StrengthTest.Held(time, load)
            : new StrengthTest.Series(time, Duration.ofSeconds(3), List.of(load)));
  }

  private static Rates rates(TestReliability kind, int tests, double gain) {
    Random random = new Random(STREAM);
    int progress = 0;
    int loss = 0;
    int ofTwo = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      List<StrengthTest> drawn = new ArrayList<>();
      double[] logs = new double[tests];
      for (int i = 0; i < tests; i++) {
        double share = (double) i / (tests - 1);
        logs[i] = Math.log1p(gain) * share + kind.variation() * random.nextGaussian();
        LocalDate day = DAY.minusDays(Math.round(DAYS * (1 - share)));
        drawn.add(test(kind, 80 * Math.exp(logs[i]), day));
      }
      Verdict verdict =
          StrengthCourse.of(drawn, List.of(), Trials::posture, DAY)
              .change(SETUP, DAY.minusDays(DAYS), DAY)
              .orElseThrow()
              .verdict();
      progress += verdict == Verdict.HIGHER ? 1 : 0;
      loss += verdict == Verdict.LOWER ? 1 : 0;
      ofTwo += logs[tests - 1] - logs[0] > kind.detectableChange() ? 1 : 0;
    }
    return new Rates((double) progress / DRAWS, (double) loss / DRAWS, (double) ofTwo / DRAWS);
  }

  @Test
  void isAsWritten() throws IOException {
    StringBuilder table =
        new StringBuilder(
            "| kind of test | tests | true change | called progress | called a loss |"
                + " first against last: more than noise |\n"
                + "| --- | --- | --- | --- | --- | --- |\n");
    for (TestReliability kind : List.of(TestReliability.MAXIMAL_HOLD, TestReliability.PEAK_FORCE)) {
      for (int tests : new int[] {2, 4, 6}) {
        for (double gain : new double[] {0, 0.05, 0.1}) {
          Rates rates = rates(kind, tests, gain);
          table
              .append(kind == TestReliability.MAXIMAL_HOLD ? "| maximal hold" : "| all-out series")
              .append(" | " + tests + " | ")
              .append(gain == 0 ? "none" : "+" + percent(gain))
              .append(" | " + percent(rates.progress()))
              .append(" | " + percent(rates.loss()))
              .append(" | " + percent(rates.ofTwo()))
              .append(" |\n");
          assertTrue(gain > 0 || rates.progress() <= 0.05, "false alarms: " + rates);
          assertTrue(rates.loss() <= 0.05, "false alarms of a loss: " + rates);
        }
      }
    }
    ModelPage.check("review.md", "progress", table.toString());
  }

  private static String percent(double share) {
    return plain(100 * share, 0) + " %";
  }

  /** For two tests the rate follows from the normal distribution. */
  @ParameterizedTest
  @CsvSource({"0, 0.03", "0.05, 0.25", "0.1, 0.69"})
  void twoTestsMeetTheClosedForm(double gain, double expected) {
    double noise = 2 * 0.028 * 0.028;
    double drift = 0.04 * 0.04 * DAYS / 30.4375;
    double least = 1.6448536 * Math.sqrt(noise * (drift + noise) / drift);
    double exact =
        1 - new NormalDistribution(Math.log1p(gain), Math.sqrt(noise)).cumulativeProbability(least);
    assertEquals(expected, exact, 0.01);
    // Three standard errors of a share of a thousand draws.
    assertEquals(exact, rates(TestReliability.MAXIMAL_HOLD, 2, gain).progress(), 0.045);
  }
}
