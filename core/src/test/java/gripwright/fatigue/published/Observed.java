package gripwright.fatigue.published;

import gripwright.fatigue.Bout;
import gripwright.fatigue.Drills;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Muscle;
import gripwright.strength.EnduranceLaw;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A published measure of fatigue at high loads beside the model's.
 *
 * @param what was measured
 * @param source where it is published
 * @param fitted true if the rates were fitted to it, false if it was held out
 * @param value as published
 * @param model the same by a set of rates
 */
record Observed(
    String what,
    String source,
    boolean fitted,
    double value,
    ToDoubleFunction<FatigueRates> model) {

  private static final String QUAINE = "Quaine 2003";
  private static final String VIGOUROUX = "Vigouroux 2006";
  private static final double INSTANT = 0.1;

  /**
   * Fitted:
   *
   * <ul>
   *   <li>Quaine F, Vigouroux L, Martin L 2003, Int J Sports Med 24(6):424-427: 5 s on and 5 s off
   *       at 80 % of maximal finger force until 70 to 80 % could not be kept for 5 s: 19.33 (SD
   *       4.84) repetitions of ten elite climbers, 12.88 (4.96) of ten others.
   *   <li>Vigouroux L, Quaine F 2006, J Sports Sci 24(2):181-186: the same for 36 repetitions;
   *       after failure, force settled about 63 % in nine elite climbers and 50 % in ten others.
   * </ul>
   *
   * Held out:
   *
   * <ul>
   *   <li>Vigouroux and Quaine 2006: failure after 3 min in climbers and 1 min 30 s in others,
   *       taken as 18 and 9 repetitions and as the 70 % of 2003.
   *   <li>Frey Law LA, Avin KG 2010, Ergonomics 53(1):109-129: hand and grip, 33.55 f^-1.61 s.
   *   <li>Rohmert W 1960, Int Z angew Physiol 18:123-164 (from memory).
   *   <li>West W et al. 1995, Eur J Appl Physiol 71:301-305 (authors and pages from memory): grip
   *       held at 75 %: women 89.9 s, men 66.4 s.
   *   <li>Giles D et al. 2019, Int J Sports Physiol Perform 14(7):972-979 (from memory): climbers,
   *       7 s on and 3 s off; critical force 425.7 N, 41.0 % of MVC, and 30 882 N s above it give
   *       10.9 repetitions at 80 % and 22.4 at 60 %.
   *   <li>Handgrip and quadriceps muscle endurance testing in young adults 2013, SpringerPlus
   *       2:451: twelve maximal grips of 3 s with 5 s between: last three by first three, 25.2 by
   *       33.6 kg.
   *   <li>Nolan J, McLennan PL, Peoples GE 2020, J Sports Med Phys Fitness 60(8):1057-1064: maximal
   *       grip until half: climbers 54 s, power lifters 46 s, aerobically trained 35 s.
   *   <li>Kamimura T, Ikuta Y 2001, J Rehabil Med 33(5):225-229: maximal grip after 5 s: 82 to 87 %
   *       of its peak.
   * </ul>
   */
  static List<Observed> all() {
    return List.of(
        new Observed("repetitions 5:5 s at 80 %, elite climbers", QUAINE, true, 19.33, fives()),
        new Observed("repetitions 5:5 s at 80 %, others", QUAINE, true, 12.88, fives()),
        new Observed(
            "force at which it levels off, climbers", VIGOUROUX, true, 0.63, Observed::plateau),
        new Observed(
            "force at which it levels off, others", VIGOUROUX, true, 0.50, Observed::plateau),
        new Observed("repetitions 5:5 s at 80 %, climbers", VIGOUROUX, false, 18, fives()),
        new Observed("repetitions 5:5 s at 80 %, others", VIGOUROUX, false, 9, fives()),
        new Observed(
            "repetitions 7:3 s at 80 %, climbers",
            "Giles 2019\u2020", false, 10.9, rates -> repetitions(rates, 0.8, 7, 3, 0.8)),
        new Observed(
            "repetitions 7:3 s at 60 %, climbers",
            "Giles 2019\u2020", false, 22.4, rates -> repetitions(rates, 0.6, 7, 3, 0.6)),
        new Observed(
            "s held at 70 %", "Frey Law 2010\u2020", false, Endurance.freyLaw(0.7), sustained(0.7)),
        new Observed(
            "s held at 80 %", "Frey Law 2010\u2020", false, Endurance.freyLaw(0.8), sustained(0.8)),
        new Observed(
            "s held at 80 %",
            "Rohmert 1960\u2020", false, EnduranceLaw.ROHMERT.seconds(0.8), sustained(0.8)),
        new Observed("s held at 75 %, women", "West 1995", false, 89.9, sustained(0.75)),
        new Observed("s held at 75 %, men", "West 1995", false, 66.4, sustained(0.75)),
        new Observed(
            "maximal grips 3:5 s, ratio of the last three to the first three",
            "SpringerPlus 2013",
            false,
            25.2 / 33.6,
            Observed::twelveMaximalGrips),
        new Observed(
            "s of a maximal grip until half the force is left, climbers",
            "Nolan 2020",
            false,
            54,
            toHalf()),
        new Observed(
            "s of a maximal grip until half the force is left, power lifters",
            "Nolan 2020",
            false,
            46,
            toHalf()),
        new Observed(
            "s of a maximal grip until half the force is left, aerobic",
            "Nolan 2020",
            false,
            35,
            toHalf()),
        new Observed(
            "maximal grip, share of its peak after 5 s",
            "Kamimura 2001",
            false,
            0.845,
            Observed::afterFiveSeconds));
  }

  /** Returns whether force was as great as it could be, which is above the range of the set. */
  boolean maximal() {
    return what.contains("maximal");
  }

  /** The logarithm of model by published. */
  double error(FatigueRates rates) {
    return Math.log(model.applyAsDouble(rates) / value);
  }

  private static ToDoubleFunction<FatigueRates> sustained(double ofMvc) {
    return rates -> new Muscle(rates).hold(ofMvc, 3600);
  }

  private static ToDoubleFunction<FatigueRates> fives() {
    return rates -> repetitions(rates, 0.8, 5, 5, 0.7);
  }

  private static ToDoubleFunction<FatigueRates> toHalf() {
    return rates -> {
      Muscle muscle = new Muscle(rates);
      double seconds = 0;
      while (muscle.capacity() > 0.5) {
        muscle.hold(1, INSTANT);
        seconds += INSTANT;
      }
      return seconds;
    };
  }

  /**
   * Repetitions until capacity at the end of one falls below a bound, with the part of the last.
   */
  private static double repetitions(
      FatigueRates rates, double load, double work, double rest, double bound) {
    Muscle muscle = new Muscle(rates);
    double before = 1;
    for (int done = 0; done < 1000; done++) {
      muscle.hold(load, work);
      if (muscle.capacity() < bound) {
        return done + (before - bound) / (before - muscle.capacity());
      }
      before = muscle.capacity();
      muscle.rest(rest);
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double plateau(FatigueRates rates) {
    return meanForce(rates, Drills.repeated(36, 5, 5, 0.8), 33, 36);
  }

  private static double twelveMaximalGrips(FatigueRates rates) {
    List<Bout> grips = Drills.repeated(12, 3, 5, 1);
    return meanForce(rates, grips, 9, 12) / meanForce(rates, grips, 0, 3);
  }

  private static double afterFiveSeconds(FatigueRates rates) {
    Muscle muscle = new Muscle(rates);
    double peak = 0;
    for (double seconds = 0; seconds < 5; seconds += INSTANT) {
      muscle.hold(1, INSTANT);
      peak = Math.max(peak, muscle.active());
    }
    return muscle.active() / peak;
  }

  /** Mean force of some holds, from half a second into each. */
  private static double meanForce(FatigueRates rates, List<Bout> bouts, int from, int to) {
    Muscle muscle = new Muscle(rates);
    double sum = 0;
    int count = 0;
    int hold = 0;
    for (Bout bout : bouts) {
      if (!bout.isHold()) {
        muscle.rest(bout.seconds());
        continue;
      }
      muscle.hold(bout.ofMvc(), 0.5);
      for (double left = bout.seconds() - 0.5; left > INSTANT / 2; left -= INSTANT) {
        muscle.hold(bout.ofMvc(), INSTANT);
        if (hold >= from && hold < to) {
          sum += muscle.active();
          count++;
        }
      }
      hold++;
    }
    return sum / count;
  }
}
