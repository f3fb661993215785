package gripwright.published;

import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Muscle;
import java.util.Map;

/** The three-compartment model: rates, and what follows from them. */
final class FatigueComparisons {

  private static final FatigueRates HAND = FatigueRates.HAND_2012;
  private static final Map<String, FatigueRates> OF_2021 =
      Map.of(
          "grip", FatigueRates.GRIP_2021,
          "grip.male", FatigueRates.GRIP_MALE_2021,
          "grip.female", FatigueRates.GRIP_FEMALE_2021,
          "hand", FatigueRates.HAND_2021);

  private FatigueComparisons() {}

  static void into(Comparisons all) {
    all.constant("3cc.handgrip.F", HAND::fatigue);
    all.constant("3cc.handgrip.R", HAND::recovery);
    all.constant("3cc.LD", () -> FatigueRates.DRIVE);
    all.constant("3cc.LR", () -> FatigueRates.DRIVE);
    all.constant("3ccr.r.hand", HAND::restMultiplier);
    OF_2021.forEach(
        (name, rates) -> {
          all.constant("3ccr.rakshit." + name + ".F", rates::fatigue);
          all.constant("3ccr.rakshit." + name + ".R", rates::recovery);
          all.constant("3ccr.rakshit." + name + ".r", rates::restMultiplier);
        });
    oneHold(all);
    repeated(all);
    all.model("int.grip.fatigueindex", FatigueComparisons::lossOverTwelveMaximalGrips);
  }

  private static void oneHold(Comparisons all) {
    for (int percent = 20; percent <= 90; percent += 10) {
      double ofMvc = percent / 100.0;
      all.arithmetic("3cc.derived.handgrip.et" + percent, () -> HAND.enduranceSeconds(ofMvc));
    }
    all.arithmetic("3cc.derived.handgrip.floor", () -> HAND.sustainableLoad(1));
    all.arithmetic(
        "3cc.derived.general.floor",
        () ->
            new FatigueRates("general", 0.00970, 0.00091, 1, 1, 0, 1, "Frey-Law 2012")
                .sustainableLoad(1));
    all.arithmetics(
        "3cc.derived.handgrip.state60",
        () -> {
          Muscle muscle = minuteAtHalf();
          return new double[] {muscle.active(), muscle.resting(), muscle.fatigued()};
        });
    all.arithmetic(
        "3cc.invariant.sum",
        () -> {
          Muscle muscle = minuteAtHalf();
          return muscle.active() + muscle.resting() + muscle.fatigued();
        });
  }

  private static Muscle minuteAtHalf() {
    Muscle muscle = new Muscle(HAND);
    muscle.hold(0.5, 60);
    return muscle;
  }

  private static void repeated(Comparisons all) {
    for (String dutyCycle : new String[] {"0.50", "0.70", "0.778"}) {
      for (int restMultiplier : new int[] {1, 15, 30}) {
        FatigueRates rates = HAND.withRestMultiplier(restMultiplier);
        all.arithmetic(
            "3ccr.derived.crit.dc" + dutyCycle + ".r" + restMultiplier,
            () -> rates.sustainableLoad(Double.parseDouble(dutyCycle)));
      }
    }
    all.arithmetic(
        "3ccr.derived.crit.rakshit.dc0.70", () -> FatigueRates.GRIP_2021.sustainableLoad(0.7));
    all.arithmetic(
        "3ccr.derived.crit.rakshit.dc0.50", () -> FatigueRates.GRIP_2021.sustainableLoad(0.5));
  }

  /** Loss of force from the first to the last of twelve maximal grips, in per cent. */
  private static double lossOverTwelveMaximalGrips() {
    Muscle muscle = new Muscle(FatigueRates.forHeaviest(1));
    double first = 0;
    double last = 0;
    for (int grip = 0; grip < 12; grip++) {
      muscle.hold(1, 3);
      last = muscle.capacity();
      first = grip == 0 ? last : first;
      muscle.rest(5);
    }
    return 100 * (1 - last / first);
  }
}
