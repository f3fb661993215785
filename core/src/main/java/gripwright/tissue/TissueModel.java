package gripwright.tissue;

import gripwright.statics.MomentArms;
import gripwright.statics.TendonModel;
import java.util.Objects;

/**
 * The named parameters of a tissue estimate.
 *
 * @param tendons moment arms of the tendons and the like, by which the pose is solved, too
 * @param sheath how the pulleys share a turn
 * @param horizontalPull force of the edge on the finger towards the wall by the force upwards; 0
 *     for someone who hangs still, whose weight has no horizontal part. Up to 0.24 when pulling on
 *     one hand (Amca AM et al. 2012, J Sports Sci 30(7):669-677: 138.0 of 575.7 N)
 * @param stream of random numbers that the draws behind the intervals come from; any value
 */
public record TissueModel(TendonModel tendons, Sheath sheath, double horizontalPull, long stream) {

  /** Ketchum's moment arms, A2 with its part of the knuckle's turn, no friction, hanging still. */
  public static final TissueModel STANDARD =
      new TissueModel(TendonModel.STANDARD, Sheath.KNUCKLE, 0, 1978);

  /**
   * Checks the pull.
   *
   * @throws IllegalArgumentException if the horizontal pull is not within -1 to 1
   */
  public TissueModel {
    Objects.requireNonNull(tendons, "tendons");
    Objects.requireNonNull(sheath, "sheath");
    if (!(Math.abs(horizontalPull) <= 1)) {
      throw new IllegalArgumentException("not a horizontal pull: " + horizontalPull);
    }
  }

  /** Returns how many draws give the intervals of forces. */
  public static int draws() {
    return Variation.DRAWS;
  }

  /** Returns the moment arms. */
  public MomentArms arms() {
    return tendons.arms();
  }

  /** Returns this model with other tendons. */
  public TissueModel with(TendonModel other) {
    return new TissueModel(other, sheath, horizontalPull, stream);
  }

  /** Returns this model with another sheath. */
  public TissueModel with(Sheath other) {
    return new TissueModel(tendons, other, horizontalPull, stream);
  }

  /** Returns this model with a horizontal pull, as a share of the force upwards. */
  public TissueModel withHorizontalPull(double share) {
    return new TissueModel(tendons, sheath, share, stream);
  }

  /** Returns this model with other draws. */
  public TissueModel withStream(long other) {
    return new TissueModel(tendons, sheath, horizontalPull, other);
  }
}
