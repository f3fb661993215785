package gripwright.hand.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.JointNorms;
import gripwright.hand.Sex;
import gripwright.quantity.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandNormsTest {

  /**
   * anthro.ansur2.*: Gordon CC et al. 2014, NATICK/TR-15/007, computed from the public data file.
   */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, MALE, 177, 193, 210",
    "LENGTH, FEMALE, 165, 180, 199",
    "BREADTH, MALE, 81, 88, 96",
    "BREADTH, FEMALE, 72, 78, 85"
  })
  void percentilesOfHands(HandMeasure measure, Sex sex, double p5, double p50, double p95) {
    assertEquals(p5, measure.percentile(sex, 5).millimetres());
    assertEquals(p50, measure.percentile(sex, 50).millimetres(), 1e-9);
    assertEquals(p95, measure.percentile(sex, 95).millimetres());
    assertEquals(5, measure.percentileOf(sex, Length.ofMillimetres(p5)), 1e-6);
    assertEquals(95, measure.percentileOf(sex, Length.ofMillimetres(p95)), 1e-6);
  }

  /** Mean and standard deviation of the same survey: 193.3 and 9.95, 181.1 and 10.06 mm. */
  @ParameterizedTest
  @CsvSource({"MALE, 193.3, 9.95", "FEMALE, 181.1, 10.06"})
  void betweenTheKnotsTheSpreadIsThatOfTheSurvey(Sex sex, double mean, double deviation) {
    for (double percentile : new double[] {16, 30, 70, 84}) {
      double normal =
          mean
              + deviation
                  * new org.hipparchus.distribution.continuous.NormalDistribution()
                      .inverseCumulativeProbability(percentile / 100);
      assertEquals(normal, HandMeasure.LENGTH.percentile(sex, percentile).millimetres(), 1.2);
    }
  }

  @Test
  void theTailsAreNotKnown() {
    assertThrows(
        IllegalArgumentException.class, () -> HandMeasure.LENGTH.percentile(Sex.MALE, 0.5));
    assertThrows(
        IllegalArgumentException.class, () -> HandMeasure.LENGTH.percentile(Sex.MALE, 99.5));
  }

  /** Mean breadth of the same survey: 88.3 mm in men, 78.2 in women. */
  @ParameterizedTest
  @CsvSource({"MALE, 193.3, 88.3", "FEMALE, 181.1, 78.2"})
  void breadthThatWasNotMeasuredIsThatOfTheSex(Sex sex, double length, double breadth) {
    HandShape shape = HandShape.of(Hand.ofLength(Length.ofMillimetres(length)), Optional.of(sex));
    assertEquals(breadth, shape.breadth().millimetres(), 1e-9);
  }

  /** rom.tam.finger: a normal finger moves 260 deg in all; what lacks of extension is taken off. */
  @Test
  void totalActiveMotion() {
    assertEquals(
        235,
        JointNorms.totalActiveMotion(
            FlexionRange.degrees(0, 90),
            FlexionRange.degrees(15, 90),
            FlexionRange.degrees(0, 70)));
  }
}
