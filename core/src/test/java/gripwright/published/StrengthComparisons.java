package gripwright.published;

import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.CriticalForce.Definition;
import gripwright.strength.ImpulseBalance;
import gripwright.strength.LoadEstimate;
import gripwright.strength.Posture;
import gripwright.strength.StrengthTest.Series;
import gripwright.strength.TestReliability;
import gripwright.strength.Transfer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;

/** Critical force, the impulse above it, how tests repeat, and the angle of the joints. */
final class StrengthComparisons {

  private static final Map<String, TestReliability> MEASURES =
      Map.of(
          "peak", TestReliability.PEAK_FORCE,
          "ef", TestReliability.END_FORCE,
          "ief", TestReliability.IMPULSE_ABOVE_END_FORCE);
  private static final double CRITICAL = 20.1;

  private StrengthComparisons() {}

  static void into(Comparisons all) {
    reliability(all);
    criticalForce(all);
    recoveryInCycling(all);
    angles(all);
    knee(all);
  }

  private static void reliability(Comparisons all) {
    MEASURES.forEach(
        (name, measure) -> {
          all.constant("cf.rel." + name + ".cv", () -> 100 * measure.variation());
          all.constant("cf.rel." + name + ".icc", measure::correlation);
          all.arithmetic("cf.derived.mdc." + name, () -> 100 * measure.detectableChange());
          all.models(
              "cf.rel." + name + ".loa",
              () -> {
                double change = 100 * measure.detectableChange();
                return new double[] {-change, change};
              });
        });
    all.model("rel.pos25.cv.between", () -> 100 * TestReliability.MAXIMAL_HOLD.variation());
    all.model("rel.pos25.derived.mdc", () -> 100 * TestReliability.MAXIMAL_HOLD.detectableChange());
    all.rule(
        "rel.formula.sem", () -> Math.abs(TestReliability.standardError(10, 0.96) - 2) < 1e-12);
    all.arithmetic("rel.formula.mdc", () -> TestReliability.DETECTABLE);
  }

  private static void criticalForce(Comparisons all) {
    all.rule("cf.giles21.def", StrengthComparisons::meanOfTheEndAndImpulseAboveIt);
    all.rule("wbal.eq", () -> Math.abs(made().loadFor(60).kilograms() - 1500 / 60.0 - 25) < 1e-9);
    all.model("cf.balas24.ttf", () -> known().secondsAt(Load.ofKilograms(CRITICAL)));
    all.models(
        "cf.balas24.complete", () -> new double[] {completing(2), completing(4), completing(6)});
  }

  private static boolean meanOfTheEndAndImpulseAboveIt() {
    List<Load> means = new ArrayList<>();
    double impulse = 0;
    for (int i = 0; i < 24; i++) {
      double above = i < 20 ? 20 - i : 0;
      means.add(Load.ofKilograms(25 + above));
      impulse += 7 * above;
    }
    Series series = new Series(Duration.ofSeconds(7), Duration.ofSeconds(3), means);
    CriticalForce found =
        CriticalForce.ofSeries(series, Definition.MEAN_OF_LAST_THREE).orElseThrow();
    return Math.abs(found.force().best().kilograms() - 25) < 1e-9
        && Math.abs(found.impulseKgS() - impulse) < 1e-9;
  }

  private static CriticalForce of(double kilograms) {
    return new CriticalForce(
        Definition.MEAN_OF_LAST_THREE,
        new LoadEstimate(Load.ofKilograms(kilograms), 0.1),
        1500,
        0.1,
        true);
  }

  private static CriticalForce made() {
    return of(25);
  }

  private static CriticalForce known() {
    return of(CRITICAL);
  }

  /** Below critical force the model says that everyone goes on for 720 s. */
  private static double completing(double kilogramsBelow) {
    return known().secondsAt(Load.ofKilograms(CRITICAL - kilogramsBelow)) >= 720 ? 100 : 0;
  }

  private static void recoveryInCycling(Comparisons all) {
    double never = 1e5;
    all.constant(
        "wbal.tau.a",
        () ->
            ImpulseBalance.cyclingRecoverySeconds(0)
                - ImpulseBalance.cyclingRecoverySeconds(never));
    all.constant("wbal.tau.c", () -> ImpulseBalance.cyclingRecoverySeconds(never));
    all.constant(
        "wbal.tau.b",
        () ->
            Math.log(
                    (ImpulseBalance.cyclingRecoverySeconds(0)
                            - ImpulseBalance.cyclingRecoverySeconds(never))
                        / (ImpulseBalance.cyclingRecoverySeconds(100)
                            - ImpulseBalance.cyclingRecoverySeconds(never)))
                / 100);
    for (int watts : new int[] {0, 50, 100, 200}) {
      all.arithmetic(
          "wbal.derived.tau" + watts, () -> ImpulseBalance.cyclingRecoverySeconds(watts));
    }
  }

  /** Both ends of a transfer were built on the studies with the narrowest and widest window. */
  private static void angles(Comparisons all) {
    all.inView(
        "angle.kitai.window",
        "the low end of the transfer between angles",
        () -> widest(5, degrees -> across(degrees).low() > 0));
    all.inView(
        "angle.knapik.window",
        "the high end of the transfer between angles",
        () -> widest(1, degrees -> across(degrees).high() >= 1));
    all.order("angle.weir.sig", () -> across(30).share() / between(45, 15).share());
  }

  private static void knee(Comparisons all) {
    for (int degrees : new int[] {35, 50, 80}) {
      all.model("angle.lanza." + degrees, () -> between(65, degrees).share());
    }
  }

  /** The last of equal steps on which a condition holds. */
  private static double widest(int step, DoublePredicate holds) {
    double last = 0;
    while (holds.test(last + step)) {
      last += step;
    }
    return last;
  }

  private static Transfer across(double degrees) {
    return between(45, 45 + degrees);
  }

  private static Transfer between(double trained, double degrees) {
    return Transfer.between(
        new Posture(Map.of(Finger.MIDDLE, Angle.ofDegrees(trained))),
        new Posture(Map.of(Finger.MIDDLE, Angle.ofDegrees(degrees))));
  }
}
