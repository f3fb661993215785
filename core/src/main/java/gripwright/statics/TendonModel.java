package gripwright.statics;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.Objects;

/**
 * The named parameters of one finger's balance.
 *
 * @param arms moment arms of the tendons
 * @param contact distance from the end joint to the middle of the pad's contact, per length of the
 *     end bone, 0.2 to 0.9; the library's own choice
 * @param intrinsic moment of the intrinsic muscles of a hand at the knuckles, in mm for 1 N on the
 *     hand, 0 to 20; no published value is known
 * @param size factor on {@code arms} and {@code intrinsic}, 0.2 to 5; usually 1 for every hand,
 *     because the size of the measured hands is not known
 */
public record TendonModel(MomentArms arms, double contact, double intrinsic, double size) {

  /** Ketchum's moment arms, contact at the middle of the end bone, no intrinsic muscles. */
  public static final TendonModel STANDARD = new TendonModel(MomentArms.KETCHUM_1978, 0.5, 0, 1);

  /** An's smaller arm at the end joint, and a contact nearer to the tip. */
  public static final TendonModel AN_END_JOINT =
      new TendonModel(MomentArms.KETCHUM_1978_AN_END_JOINT, 0.6, 0, 1);

  /** All of An's arms. */
  public static final TendonModel AN = STANDARD.with(MomentArms.AN_1983);

  /** The intrinsic muscles add a moment of 6 mm at the knuckles. */
  public static final TendonModel INTRINSIC = STANDARD.withIntrinsic(6);

  private static final double LEAST_CONTACT = 0.2;
  private static final double GREATEST_CONTACT = 0.9;
  private static final double GREATEST_INTRINSIC = 20;
  private static final double LEAST_SIZE = 0.2;
  private static final double GREATEST_SIZE = 5;

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a number is out of its range
   */
  public TendonModel {
    Objects.requireNonNull(arms, "arms");
    within("contact", contact, LEAST_CONTACT, GREATEST_CONTACT);
    within("intrinsic", intrinsic, 0, GREATEST_INTRINSIC);
    within("size", size, LEAST_SIZE, GREATEST_SIZE);
  }

  private static void within(String name, double value, double least, double greatest) {
    if (!(value >= least && value <= greatest)) {
      throw new IllegalArgumentException(
          name + " not from " + least + " to " + greatest + ": " + value);
    }
  }

  /** Returns the moment arm of a tendon at a joint, in mm; 0 if it does not cross the joint. */
  public double arm(Finger finger, Joint joint, Tendon tendon) {
    return size * arms.arm(finger, joint, tendon);
  }

  /** Returns the moment of the intrinsic muscles at the knuckles, in mm for 1 N on the hand. */
  public double intrinsicMillimetres() {
    return size * intrinsic;
  }

  /** Returns this model with other moment arms. */
  public TendonModel with(MomentArms other) {
    return new TendonModel(other, contact, intrinsic, size);
  }

  /** Returns this model with another moment of the intrinsic muscles, in mm for 1 N on the hand. */
  public TendonModel withIntrinsic(double millimetres) {
    return new TendonModel(arms, contact, millimetres, size);
  }

  /** Returns this model with arms and intrinsic moment multiplied by a factor. */
  public TendonModel times(double factor) {
    return new TendonModel(arms, contact, intrinsic, size * factor);
  }
}
