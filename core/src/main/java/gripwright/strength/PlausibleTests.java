package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The greatest plausible test result relative to body mass: more is probably a wrong number, unit
 * or hand.
 *
 * <p>Limits are for what is held for 7 s, with any number of fingers, hanging or lifting; they are
 * our own: with two hands 2.2 times body mass up to 20 mm, 2.4 at 30 mm and 2.6 from 40 mm on, with
 * one hand 1.3, 1.4 and 1.55, and linear between those depths. Immutable.
 */
public final class PlausibleTests {

  /** From this many times the limit on, a test is an error. */
  public static final double IMPOSSIBLE = 2;

  /** Two tests of one setup on two days that are this close confirm each other. */
  public static final double BELIEVED_SHARE = 0.9;

  private static final double[] DEPTHS = {20, 30, 40};
  private static final double[] TWO_HANDS = {2.2, 2.4, 2.6};
  private static final double[] ONE_HAND = {1.3, 1.4, 1.55};

  /** The flattest fade that is likely: two spreads below that of the population. */
  private static final double FLAT_FADE = 1 - 2 * StrengthMap.FADE_SPREAD;

  private static final double TOLERANCE = 1e-9;

  private final List<StrengthTest> tests;
  private final Function<LocalDate, Load> bodyMass;

  /**
   * Prepares to judge tests.
   *
   * @param tests all tests of one athlete; they can confirm each other
   * @param bodyMass the athlete's body mass as it is known on a day
   */
  public PlausibleTests(List<StrengthTest> tests, Function<LocalDate, Load> bodyMass) {
    Objects.requireNonNull(tests, "tests");
    Objects.requireNonNull(bodyMass, "bodyMass");
    this.tests = List.copyOf(tests);
    this.bodyMass = bodyMass;
  }

  /**
   * Returns the most that is plausible for 7 s.
   *
   * @param setup edge and hands; body mass also counts in a lift, as a measure of size
   * @param mass body mass
   */
  public static Load most(Setup setup, Load mass) {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(mass, "mass");
    double[] times = setup.hands() == Hands.BOTH ? TWO_HANDS : ONE_HAND;
    double depth = setup.edge().millimetres();
    int last = DEPTHS.length - 1;
    double factor = depth <= DEPTHS[0] ? times[0] : times[last];
    for (int i = 0; i < last; i++) {
      if (depth > DEPTHS[i] && depth <= DEPTHS[i + 1]) {
        double part = (depth - DEPTHS[i]) / (DEPTHS[i + 1] - DEPTHS[i]);
        factor = times[i] + part * (times[i + 1] - times[i]);
      }
    }
    return mass.times(factor);
  }

  /**
   * Returns a test's load divided by the greatest plausible load: above 1 it is implausible, from
   * {@value #IMPOSSIBLE} on impossible.
   *
   * <p>A hold longer or shorter than 7 s is converted to 7 s by Rohmert's law: a shorter one counts
   * as less; a longer one as more, with the flattest likely fade, since athletes with long holds
   * fade little. Times below 2 s count as 2 s, above 10 min as 10 min.
   *
   * @return 0 if no load was moved
   */
  public double share(StrengthTest test) {
    Objects.requireNonNull(test, "test");
    return share(test, FLAT_FADE);
  }

  private double share(StrengthTest test, double fade) {
    return test.effort()
        .map(
            effort ->
                atReference(effort, fade).kilograms()
                    / most(test.setup(), bodyMass.apply(test.date())).kilograms())
        .orElse(0.0);
  }

  private static Load atReference(Effort effort, double longFade) {
    double seconds =
        Math.max(ForceTime.SHORTEST_SECONDS, Math.min(ForceTime.LONGEST_SECONDS, effort.seconds()));
    double allowed = FadingForce.allowed(EnduranceLaw.ROHMERT, seconds);
    double fade = seconds > ForceTime.REFERENCE_SECONDS ? longFade : 1;
    return effort.load().times(Math.exp(-fade * allowed));
  }

  /** Returns whether a test is implausible and no other test confirms it. */
  public boolean doubtful(StrengthTest test) {
    double share = share(test);
    return share > 1 + TOLERANCE
        && (share >= IMPOSSIBLE - TOLERANCE
            || tests.stream().noneMatch(other -> confirm(other, test)));
  }

  /** Returns whether a test is impossible, even if others agree with it. */
  public boolean impossible(StrengthTest test) {
    return share(test) >= IMPOSSIBLE - TOLERANCE;
  }

  /**
   * Returns whether two tests of one setup speak for each other: on two days, and by what they
   * stand for at 7 s within 10 %.
   */
  static boolean confirm(StrengthTest other, StrengthTest test) {
    Optional<Effort> one = other.effort();
    Optional<Effort> two = test.effort();
    if (one.isEmpty()
        || two.isEmpty()
        || other.date().equals(test.date())
        || !same(other.setup(), test.setup())) {
      return false;
    }
    double a = atReference(one.get(), FLAT_FADE).kilograms();
    double b = atReference(two.get(), FLAT_FADE).kilograms();
    return Math.min(a, b) >= Math.max(a, b) * (BELIEVED_SHARE - TOLERANCE);
  }

  private static boolean same(Setup one, Setup other) {
    return one.hands() == other.hands()
        && one.lifting() == other.lifting()
        && EdgeDepth.same(one.edge(), other.edge())
        && one.grip().name().equals(other.grip().name());
  }

  /**
   * Returns a test as it counts: a doubtful one is reduced so that the maximum that follows from
   * it, by the average fade, is no more than the greatest plausible load.
   */
  public StrengthTest counted(StrengthTest test) {
    return doubtful(test) ? test.with(test.result().accept(new Less(1 / share(test, 1)))) : test;
  }

  /** Reduces all loads of a result to a share. */
  private record Less(double share) implements StrengthTest.Result.Visitor<StrengthTest.Result> {
    @Override
    public StrengthTest.Result held(StrengthTest.Held held) {
      return new StrengthTest.Held(held.hold(), held.load().times(share));
    }

    @Override
    public StrengthTest.Result toFailure(StrengthTest.ToFailure failure) {
      return new StrengthTest.ToFailure(failure.load().times(share), failure.lasting());
    }

    @Override
    public StrengthTest.Result series(StrengthTest.Series series) {
      return new StrengthTest.Series(
          series.work(), series.rest(), series.means().stream().map(m -> m.times(share)).toList());
    }
  }
}
