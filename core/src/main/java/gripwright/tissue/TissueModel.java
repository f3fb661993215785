package gripwright.tissue;

/**
 * The named parameters of a tissue estimate.
 *
 * @param arms moment arms of the tendons
 * @param sheath how the pulleys share a turn
 * @param horizontalPull force of the edge on the finger towards the wall by the force upwards; 0
 *     for someone who hangs still, whose weight has no horizontal part. Up to 0.24 when pulling on
 *     one hand (Amca AM et al. 2012, J Sports Sci 30(7):669-677: 138.0 of 575.7 N)
 * @param seed of the draws that give the intervals
 */
public record TissueModel(MomentArms arms, Sheath sheath, double horizontalPull, long seed) {

  /** Ketchum's moment arms, an even sheath without friction, hanging still. */
  public static final TissueModel STANDARD =
      new TissueModel(MomentArms.KETCHUM_1978, Sheath.EVEN, 0, 1978);

  /**
   * Checks the pull.
   *
   * @throws IllegalArgumentException if the horizontal pull is not within -1 to 1
   */
  public TissueModel {
    if (!(Math.abs(horizontalPull) <= 1)) {
      throw new IllegalArgumentException("not a horizontal pull: " + horizontalPull);
    }
  }

  /** Returns how many draws give the intervals of forces. */
  public static int draws() {
    return Variation.DRAWS;
  }

  /** Returns this model with other moment arms. */
  public TissueModel with(MomentArms other) {
    return new TissueModel(other, sheath, horizontalPull, seed);
  }

  /** Returns this model with another sheath. */
  public TissueModel with(Sheath other) {
    return new TissueModel(arms, other, horizontalPull, seed);
  }

  /** Returns this model with a horizontal pull, as a share of the force upwards. */
  public TissueModel withHorizontalPull(double share) {
    return new TissueModel(arms, sheath, share, seed);
  }

  /** Returns this model with other draws. */
  public TissueModel withSeed(long other) {
    return new TissueModel(arms, sheath, horizontalPull, other);
  }
}
