package gripwright.statics;

import java.util.function.IntToDoubleFunction;

/**
 * The deviations of one finger's parameters from their means in one draw.
 *
 * @param dipArm factor on FDP's arm at the end joint
 * @param pipFdpArm factor on FDP's arm at the middle joint
 * @param pipFdsArm factor on FDS's arm at the middle joint
 * @param contact shift of the contact towards the tip, per length of the end bone
 * @param pip additional flexion of the middle joint, in radians
 * @param rise additional slope of the middle bone, in radians
 * @param passive additional share of the end joint's moment that passive structures carry
 * @param pull additional force of the edge towards the wall, per upward force
 */
public record StaticsDraw(
    double dipArm,
    double pipFdpArm,
    double pipFdsArm,
    double contact,
    double pip,
    double rise,
    double passive,
    double pull) {

  /** No deviation. */
  public static final StaticsDraw NONE = new StaticsDraw(1, 1, 1, 0, 0, 0, 0, 0);

  /** Number of random deviates in a draw. */
  public static final int DEVIATES = 8;

  private static final double ARM_SPREAD = 0.15;
  private static final double CONTACT_SPREAD = 0.10;
  private static final double PIP_SPREAD = Math.toRadians(5);
  private static final double RISE_SPREAD = Math.toRadians(8);
  private static final double PASSIVE_SPREAD = 0.05;
  private static final double PULL_SPREAD = 0.05;

  /**
   * Returns a draw. Standard deviations: moment arms 15 %, as published between hands; the others
   * are the library's own choice: contact 10 % of the end bone, middle joint 5 deg, slope 8 deg,
   * passive share 0.05, pull 0.05. The deviation of the middle joint accounts for fingers that
   * differ from the model's pose.
   *
   * @param deviates standard normal deviates by index, 0 to {@value #DEVIATES} - 1
   */
  public static StaticsDraw of(IntToDoubleFunction deviates) {
    return new StaticsDraw(
        Math.exp(ARM_SPREAD * deviates.applyAsDouble(0)),
        Math.exp(ARM_SPREAD * deviates.applyAsDouble(1)),
        Math.exp(ARM_SPREAD * deviates.applyAsDouble(2)),
        CONTACT_SPREAD * deviates.applyAsDouble(3),
        PIP_SPREAD * deviates.applyAsDouble(4),
        RISE_SPREAD * deviates.applyAsDouble(5),
        PASSIVE_SPREAD * deviates.applyAsDouble(6),
        PULL_SPREAD * deviates.applyAsDouble(7));
  }
}
