package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.StandardNormal;

/**
 * One draw of the parameters, as departures from their published means. The spreads are standard
 * deviations; only that of the moment arms is published (15 % between hands), the others are the
 * library's own choice. That of the middle joint stands for how a finger lies otherwise than in the
 * model's pose; what comes of bones that are not known is drawn apart from it.
 */
final class Variation {

  static final int DRAWS = 400;
  static final Variation NONE = new Variation(new double[Parameter.values().length]);

  private static final double ARM_SPREAD = 0.15;
  private static final double CONTACT_SPREAD = 0.10; // of the end bone's length
  private static final double ANGLE_SPREAD = Math.toRadians(5); // clinical goniometry
  private static final double RISE_SPREAD = Math.toRadians(8);
  private static final double PASSIVE_SPREAD = 0.05;
  private static final double TURN_SPREAD = 0.08;
  private static final double PULL_SPREAD = 0.05;
  private static final double SHARE_SPREAD = 0.05;
  private static final double CAPACITY_SPREAD = 0.25;

  private enum Parameter {
    DIP_ARM,
    PIP_FDP_ARM,
    PIP_FDS_ARM,
    CONTACT,
    PIP_ANGLE,
    RISE,
    PASSIVE,
    TURN,
    PULL,
    CAPACITY_A2,
    CAPACITY_A4,
    SHARE_INDEX,
    SHARE_MIDDLE,
    SHARE_RING,
    SHARE_LITTLE
  }

  private final double[] deviates;

  private Variation(double[] deviates) {
    this.deviates = deviates;
  }

  static Variation[] draws(long seed) {
    int parameters = Parameter.values().length;
    Variation[] draws = new Variation[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double[] deviates = new double[parameters];
      for (int j = 0; j < parameters; j++) {
        deviates[j] = StandardNormal.draw(seed, (long) i * parameters + j);
      }
      draws[i] = new Variation(deviates);
    }
    return draws;
  }

  private double of(Parameter parameter) {
    return deviates[parameter.ordinal()];
  }

  double dipArm() {
    return Math.exp(ARM_SPREAD * of(Parameter.DIP_ARM));
  }

  double pipFdpArm() {
    return Math.exp(ARM_SPREAD * of(Parameter.PIP_FDP_ARM));
  }

  double pipFdsArm() {
    return Math.exp(ARM_SPREAD * of(Parameter.PIP_FDS_ARM));
  }

  double contact() {
    return CONTACT_SPREAD * of(Parameter.CONTACT);
  }

  double pipAngle() {
    return ANGLE_SPREAD * of(Parameter.PIP_ANGLE);
  }

  double rise() {
    return RISE_SPREAD * of(Parameter.RISE);
  }

  double passive() {
    return PASSIVE_SPREAD * of(Parameter.PASSIVE);
  }

  double turn() {
    return TURN_SPREAD * of(Parameter.TURN);
  }

  double pull() {
    return PULL_SPREAD * of(Parameter.PULL);
  }

  double capacity(Pulley pulley) {
    Parameter parameter = pulley == Pulley.A2 ? Parameter.CAPACITY_A2 : Parameter.CAPACITY_A4;
    return Math.exp(CAPACITY_SPREAD * of(parameter));
  }

  double share(Finger finger) {
    return SHARE_SPREAD * deviates[Parameter.SHARE_INDEX.ordinal() + finger.ordinal()];
  }
}
