package gripwright.review;

import gripwright.grip.Setup;
import gripwright.hand.Hands;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The difference between the hands in their last comparable tests of one setup. Immutable.
 *
 * @param setup the setup, of the left hand
 * @param left last test of the left hand that fits the athlete's others
 * @param right the same of the right hand
 * @param percent right less left in per cent of the mean of the two
 * @param detectablePercent the smallest difference that is more than noise, in per cent
 */
public record SideDifference(
    Setup setup,
    Progress.Point left,
    Progress.Point right,
    double percent,
    double detectablePercent) {

  /** Most days between the two tests; the library's own choice. */
  public static final int MOST_DAYS = 28;

  private static final double PER_CENT = 100;

  /** Returns whether the difference is more than noise. */
  public boolean beyondNoise() {
    return Math.abs(percent) > detectablePercent;
  }

  /** Compares left and right wherever both were tested within {@value #MOST_DAYS} days. */
  static List<SideDifference> of(List<Progress> progress) {
    List<SideDifference> all = new ArrayList<>();
    for (Progress left : progress) {
      for (Progress right : progress) {
        if (left.setup().hands() == Hands.LEFT
            && right.setup().hands() == Hands.RIGHT
            && left.setup().withHands(Hands.RIGHT).toString().equals(right.setup().toString())
            && left.how() == right.how()
            && left.series() == right.series()) {
          last(left)
              .flatMap(one -> last(right).map(other -> of(left, one, other)))
              .filter(d -> days(d) <= MOST_DAYS)
              .ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private static java.util.Optional<Progress.Point> last(Progress progress) {
    return progress.points().stream()
        .filter(point -> point.odd().isEmpty())
        .reduce((first, second) -> second);
  }

  private static long days(SideDifference difference) {
    return Math.abs(ChronoUnit.DAYS.between(difference.left().date(), difference.right().date()));
  }

  private static SideDifference of(Progress tests, Progress.Point left, Progress.Point right) {
    double one = left.load().kilograms();
    double other = right.load().kilograms();
    return new SideDifference(
        tests.setup(),
        left,
        right,
        PER_CENT * (other - one) / ((one + other) / 2),
        PER_CENT * tests.reliability().detectableChange());
  }
}
