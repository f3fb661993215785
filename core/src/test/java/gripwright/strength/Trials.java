package gripwright.strength;

import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.providers.ArbitraryProvider;
import net.jqwik.api.providers.TypeUsage;

/**
 * Invented grips and generated tests of them. A grip's name has its fingers and their flexion, so
 * that its posture follows from the name.
 */
public final class Trials implements ArbitraryProvider {

  static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  /** Tests of one athlete on several days before {@link #DAY}, of hangs with both hands. */
  public record Tests(List<StrengthTest> list) {}

  static Grip grip(int bits, int flexion) {
    FingerSet fingers = new FingerSet(bits);
    GripFamily family =
        switch (fingers.count()) {
          case 4 -> GripFamily.FOUR;
          case 1 -> GripFamily.SINGLE;
          default -> GripFamily.SPLIT;
        };
    return Grip.named("grip-" + bits + "-" + flexion).family(family).fingers(fingers).build();
  }

  /** The posture that a grip's name shows. */
  static Posture posture(Setup setup) {
    String[] parts = setup.grip().name().split("-", 3);
    double flexion = Double.parseDouble(parts[2]);
    Map<Finger, Angle> flexions = new EnumMap<>(Finger.class);
    for (Finger finger : setup.grip().fingers().fingers()) {
      // Different times, so that nothing depends on equal ones.
      flexions.put(finger, Angle.ofDegrees(flexion - 8 * finger.ordinal()));
    }
    return new Posture(flexions);
  }

  static Setup on(Grip grip, double edge) {
    return Setup.of(grip, Length.ofMillimetres(edge));
  }

  static StrengthTest held(Setup setup, double seconds, double kilograms, LocalDate day) {
    return new StrengthTest(
        day,
        setup,
        new StrengthTest.Held(
            Duration.ofMillis(Math.round(seconds * 1000)), Load.ofKilograms(kilograms)));
  }

  static StrengthMap map(List<StrengthTest> tests) {
    return StrengthMap.of(tests, Trials::posture, DAY);
  }

  static StrengthMap map(StrengthTest... tests) {
    return map(List.of(tests));
  }

  static Arbitrary<Setup> setups() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 15),
            Arbitraries.of(30, 50, 90, 110),
            Arbitraries.of(6.0, 10.0, 15.0, 20.0, 35.0, 50.0))
        .as((bits, flexion, edge) -> on(grip(bits, flexion), edge));
  }

  static Arbitrary<StrengthTest> tests() {
    return Combinators.combine(
            setups(),
            Arbitraries.of(2.0, 5.0, 7.0, 7.0, 10.0, 30.0, 60.0, 180.0, 600.0),
            Arbitraries.doubles().between(5, 150),
            Arbitraries.integers().between(0, 800))
        .as((setup, seconds, load, days) -> held(setup, seconds, load, DAY.minusDays(days)));
  }

  @Override
  public boolean canProvideFor(TypeUsage type) {
    return type.isOfType(Tests.class)
        || type.isOfType(Setup.class)
        || type.isOfType(StrengthTest.class);
  }

  @Override
  public Set<Arbitrary<?>> provideFor(TypeUsage type, SubtypeProvider subtypes) {
    if (type.isOfType(Setup.class)) {
      return Set.of(setups());
    }
    return type.isOfType(StrengthTest.class)
        ? Set.of(tests())
        : Set.of(tests().list().ofMinSize(1).ofMaxSize(8).map(Tests::new));
  }
}
