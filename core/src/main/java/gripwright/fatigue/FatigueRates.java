package gripwright.fatigue;

import java.util.List;

/**
 * A named set of rates of the three-compartment model, with the range of loads where it is valid.
 *
 * <p>Fibres are resting, active or fatigued. Active fibres fatigue at the rate {@code fatigue};
 * fatigued ones recover at the rate {@code recovery}, multiplied by {@code restMultiplier} while no
 * load is held. Sources of the model: Xia T, Frey Law LA 2008, J Biomech 41(14):3046-3052; rest
 * multiplier: Looft JM, Herkert N, Frey-Law LA 2018, J Biomech 77:16-25.
 *
 * @param name name of the set in results and pages
 * @param fatigue share of the active fibres that fatigues each second; above 0, at most 1
 * @param recovery share of the fatigued fibres that recovers each second under load; above 0, at
 *     most 1
 * @param restMultiplier how many times faster recovery is at rest, 1 or more; times {@code
 *     recovery} at most 1
 * @param spread factor by which {@code fatigue} is divided for the optimistic end of the interval
 *     and multiplied for the pessimistic end, 1 or more
 * @param from the lightest load where the set is valid, as a fraction of MVC
 * @param to the heaviest load where it is valid
 * @param source source of the rates
 */
public record FatigueRates(
    String name,
    double fatigue,
    double recovery,
    double restMultiplier,
    double spread,
    double from,
    double to,
    String source)
    implements FatigueSet {

  /**
   * Rate of activation and of deactivation of fibres, per second. Source: Xia T, Frey Law LA 2008,
   * J Biomech 41(14):3046-3052.
   */
  public static final double DRIVE = 10;

  /**
   * The spread of every named set: the 5th and the 95th percentile of published endurance about the
   * model, from one study to the next. Our own calculation, rounded up; see the page on fatigue.
   */
  public static final double USUAL_SPREAD = 2.2;

  /** The heaviest load where the published sets are valid, as a fraction of MVC. */
  public static final double MODERATE = 0.6;

  /** The heaviest load to which any set was fitted, as a fraction of MVC. */
  public static final double HEAVY = 0.8;

  private static final String LOOFT = "; r: Looft JM et al. 2018, J Biomech 77:16-25";
  private static final String RAKSHIT = "Rakshit R, Xiang Y, Yang J 2021, J Biomech 110695\u2020";

  /** Hand and grip, fitted by its authors to sustained holds. The set for 20 to 60 % of MVC. */
  public static final FatigueRates HAND_2012 =
      moderate(
          "HAND_2012",
          0.00980,
          0.00064,
          30,
          "Frey-Law LA, Looft JM, Heitsman J 2012, J Biomech 45(10):1803-1808\u2020" + LOOFT);

  /** Handgrip, fitted by its authors to sustained and intermittent holds. */
  public static final FatigueRates GRIP_2021 =
      moderate("GRIP_2021", 0.01235, 0.00135, 12.51, RAKSHIT);

  /** Handgrip of men. */
  public static final FatigueRates GRIP_MALE_2021 =
      moderate("GRIP_MALE_2021", 0.01238, 0.00178, 8.00, RAKSHIT);

  /** Handgrip of women. */
  public static final FatigueRates GRIP_FEMALE_2021 =
      moderate("GRIP_FEMALE_2021", 0.01159, 0.00217, 7.39, RAKSHIT);

  /** All hand muscles together. */
  public static final FatigueRates HAND_2021 =
      moderate("HAND_2021", 0.01227, 0.00134, 9.10, RAKSHIT);

  /**
   * Fingers at high loads: fatigue and recovery refitted by us to repeated holds of climbers and
   * others, with the rest multiplier of {@link #HAND_2012}. The set for 60 to 80 % of MVC; not for
   * maximal efforts, where force falls faster.
   */
  public static final FatigueRates FINGERS_INTENSE =
      new FatigueRates(
          "FINGERS_INTENSE",
          0.00605,
          0.00019,
          30,
          USUAL_SPREAD,
          MODERATE,
          HEAVY,
          "our fit to Quaine F, Vigouroux L, Martin L 2003, Int J Sports Med 24(6):424-427 and"
              + " Vigouroux L, Quaine F 2006, J Sports Sci 24(2):181-186"
              + LOOFT);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a number is out of its range
   */
  public FatigueRates {
    if (!(fatigue > 0 && fatigue <= 1)
        || !(recovery > 0 && recovery <= 1)
        || !(restMultiplier >= 1 && restMultiplier * recovery <= 1)
        || !(spread >= 1)
        || !(from >= 0 && from <= to)) {
      throw new IllegalArgumentException("not rates of fatigue: " + name);
    }
  }

  private static FatigueRates moderate(
      String name, double fatigue, double recovery, double restMultiplier, String source) {
    return new FatigueRates(
        name, fatigue, recovery, restMultiplier, USUAL_SPREAD, 0.2, MODERATE, source);
  }

  /** Returns every named set. */
  public static List<FatigueRates> all() {
    return List.of(
        HAND_2012, GRIP_2021, GRIP_MALE_2021, GRIP_FEMALE_2021, HAND_2021, FINGERS_INTENSE);
  }

  /**
   * Returns the set for a session by its heaviest hold: {@link #HAND_2012} up to 60 % of MVC,
   * {@link #FINGERS_INTENSE} above. The two disagree at 60 %: for the same session, the second
   * predicts more remaining capacity.
   *
   * @param heaviest the heaviest load, as a fraction of MVC
   */
  public static FatigueRates forHeaviest(double heaviest) {
    return heaviest <= MODERATE ? HAND_2012 : FINGERS_INTENSE;
  }

  @Override
  public FatigueRates optimistic() {
    return withFatigue(fatigue / spread);
  }

  @Override
  public FatigueRates pessimistic() {
    return withFatigue(Math.min(1, fatigue * spread));
  }

  @Override
  public FatigueRates times(double factor) {
    return withFatigue(Math.min(1, fatigue * factor));
  }

  /** Returns these rates with another rate of fatigue, in 1/s, above 0 and at most 1. */
  public FatigueRates withFatigue(double other) {
    return new FatigueRates(name, other, recovery, restMultiplier, spread, from, to, source);
  }

  /** Returns these rates with another rest multiplier; 1 is the model without it. */
  public FatigueRates withRestMultiplier(double other) {
    return new FatigueRates(name, fatigue, recovery, other, spread, from, to, source);
  }

  /**
   * Returns how long a load can be held by fresh fingers, if fibres respond at once: {@code -ln(1 -
   * R (1 - f) / (F f)) / R}. With the drive of {@link Muscle} it is longer by about a tenth of a
   * second and 0.1 %. Source: follows from Frey-Law LA, Looft JM, Heitsman J 2012, J Biomech
   * 45(10):1803-1808 (failure when resting and active fibres together fall below the load).
   *
   * @param ofMvc load as a fraction of MVC, above 0; 1 and more gives 0 s
   * @return seconds; infinite if recovery keeps pace with fatigue
   * @throws IllegalArgumentException if the load is not above 0
   */
  public double enduranceSeconds(double ofMvc) {
    if (!(ofMvc > 0)) {
      throw new IllegalArgumentException("not a load to hold: " + ofMvc + " of MVC");
    }
    double lost = recovery * Math.max(0, 1 - ofMvc) / (fatigue * ofMvc);
    return lost >= 1 ? Double.POSITIVE_INFINITY : -Math.log1p(-lost) / recovery;
  }

  /**
   * Returns the highest load that can be repeated indefinitely, in the limit of short cycles. With
   * k = d + r (1 - d) for a share of time under tension d it is {@code R k / (F d + R k)}. Source:
   * follows from Looft JM, Herkert N, Frey-Law LA 2018, J Biomech 77:16-25.
   *
   * @param dutyCycle share of time under tension, above 0 and at most 1; 0.7 for 7 s on and 3 s off
   * @return fraction of MVC, above 0 and below 1
   * @throws IllegalArgumentException if the share is out of range
   */
  public double sustainableLoad(double dutyCycle) {
    if (!(dutyCycle > 0 && dutyCycle <= 1)) {
      throw new IllegalArgumentException("not a share of time under load: " + dutyCycle);
    }
    double back = recovery * (dutyCycle + restMultiplier * (1 - dutyCycle));
    return back / (fatigue * dutyCycle + back);
  }

  /** With the drive of {@link Muscle}. */
  @Override
  public double greatestLoad(double seconds) {
    if (!(seconds >= 0)) {
      throw new IllegalArgumentException("not a time: " + seconds + " s");
    }
    double called = DRIVE + fatigue;
    double slow = -Math.expm1(-recovery * seconds);
    double fast = Math.exp(-called * seconds) - Math.exp(-recovery * seconds);
    double active = fatigue * DRIVE / called;
    return 1 / (1 + active * (slow / recovery + fast / (called - recovery)));
  }

  @Override
  public Muscle fresh() {
    return new Muscle(this);
  }
}
