package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.StandardNormal;
import gripwright.statics.StaticsDraw;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One draw of the parameters, as departures from their published means. The spreads are standard
 * deviations and the library's own choice, but for those of {@link StaticsDraw}. What comes of
 * bones that are not known is drawn apart from it.
 */
final class Variation {

  static final int DRAWS = 400;
  static final Variation NONE = new Variation(new double[Parameter.values().length]);

  private static final double TURN_SPREAD = 0.08;
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
    PULL,
    TURN,
    CAPACITY_A2,
    CAPACITY_A4,
    SHARE_INDEX,
    SHARE_MIDDLE,
    SHARE_RING,
    SHARE_LITTLE
  }

  private final double[] deviates;
  private final StaticsDraw statics;

  private Variation(double[] deviates) {
    this.deviates = deviates;
    this.statics = StaticsDraw.of(number -> deviates[number]);
  }

  /** Returns how many deviates a draw has. */
  static int parameters() {
    return Parameter.values().length;
  }

  /** Returns the draw with these standard normal deviates, one for each parameter. */
  static Variation of(double[] deviates) {
    return new Variation(deviates);
  }

  /** Returns the names of the parameters, in the order of the deviates. */
  static List<String> names() {
    return Arrays.stream(Parameter.values())
        .map(parameter -> parameter.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .toList();
  }

  static Variation[] draws(long stream) {
    int parameters = Parameter.values().length;
    Variation[] draws = new Variation[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double[] deviates = new double[parameters];
      for (int j = 0; j < parameters; j++) {
        deviates[j] = StandardNormal.draw(stream, (long) i * parameters + j);
      }
      draws[i] = new Variation(deviates);
    }
    return draws;
  }

  private double of(Parameter parameter) {
    return deviates[parameter.ordinal()];
  }

  /** The first deviates, in the order of {@link StaticsDraw}. */
  StaticsDraw statics() {
    return statics;
  }

  double turn() {
    return TURN_SPREAD * of(Parameter.TURN);
  }

  double capacity(Pulley pulley) {
    Parameter parameter = pulley == Pulley.A2 ? Parameter.CAPACITY_A2 : Parameter.CAPACITY_A4;
    return Math.exp(CAPACITY_SPREAD * of(parameter));
  }

  double share(Finger finger) {
    return SHARE_SPREAD * deviates[Parameter.SHARE_INDEX.ordinal() + finger.ordinal()];
  }
}
