package gripwright.athlete;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

class EquipmentProperties {

  @Provide
  Arbitrary<Double> steps() {
    return Arbitraries.of(0.25, 0.5, 1.0, 1.25, 2.5, 5.0, 0.45359237, 1.1339809);
  }

  private static Equipment equipment(double add, double assist) {
    return new Equipment(
        List.of(Length.ofMillimetres(20)),
        Optional.of(new Equipment.Steps(Load.ofKilograms(add), Load.ofKilograms(60))),
        Optional.of(new Equipment.Steps(Load.ofKilograms(assist), Load.ofKilograms(40))));
  }

  @Property
  void theBuiltLoadIsTheGreatestNotAboveTheWantedOne(
      @ForAll("steps") double add,
      @ForAll("steps") double assist,
      @ForAll @DoubleRange(min = 1, max = 180) double wanted,
      @ForAll @DoubleRange(min = 40, max = 100) double mass) {
    Equipment equipment = equipment(add, assist);
    Optional<Load> built = equipment.greatestUpTo(Load.ofKilograms(wanted), Load.ofKilograms(mass));
    Statistics.label("built").collect(built.isPresent(), wanted > mass);
    if (built.isEmpty()) {
      assertTrue(wanted < mass - 40 + assist);
      return;
    }
    double total = built.get().kilograms();
    assertTrue(total <= wanted + 1e-6);
    assertTrue(equipment.canBuild(built.get(), Load.ofKilograms(mass)));
    double next = total + (total >= mass - 1e-9 ? add : assist);
    assertTrue(next > wanted || total >= mass + 60 - add, next + " could have been built");
  }

  @Example
  void multipleOfTheStepIsNotRoundedDown() {
    Equipment equipment = equipment(0.1, 0.1);
    Load mass = Load.ofKilograms(60.3);
    assertEquals(
        "61 kg",
        equipment.greatestUpTo(Load.ofKilograms(61), mass).orElseThrow().toString(),
        "60.3 + 7 x 0.1 is not quite 61 in binary");
  }

  @Example
  void removedWeightIsRoundedUp() {
    assertEquals(
        48.0,
        equipment(1.25, 2.5)
            .greatestUpTo(Load.ofKilograms(50), Load.ofKilograms(60.5))
            .orElseThrow()
            .kilograms());
  }

  @Example
  void aWeightFromTheFloorNeedsNoBodyMass() {
    Equipment equipment = equipment(1.25, 2.5);
    assertEquals(
        22.5, equipment.greatestUpTo(Load.ofKilograms(23.7), Load.ZERO).orElseThrow().kilograms());
    assertEquals(Optional.empty(), equipment.greatestUpTo(Load.ofKilograms(-1), Load.ZERO));
  }

  @Property
  void leastLoadIsPositiveAndMinimal(
      @ForAll("steps") double add,
      @ForAll("steps") double assist,
      @ForAll @DoubleRange(min = 20, max = 100) double kilograms,
      @ForAll boolean wholeSteps,
      @ForAll boolean lifting) {
    Equipment equipment = equipment(add, assist);
    double standing = wholeSteps ? Math.floor(kilograms / assist) * assist : kilograms;
    Load mass = lifting ? Load.ZERO : Load.ofKilograms(standing);
    double least = equipment.least(mass).orElseThrow().kilograms();
    Statistics.label("how").collect(lifting ? "lifting" : standing <= 40 ? "all off" : "some off");
    assertTrue(least > 0);
    assertTrue(equipment.canBuild(Load.ofKilograms(least), mass), least + " kg");
    assertEquals(
        Optional.empty(), equipment.greatestUpTo(Load.ofKilograms(least * 0.999 - 1e-6), mass));
  }

  /** The last step of assistance would leave no load on the edge, in kg, exactly and almost. */
  @Example
  void totalOfZeroIsNoLoad() {
    Equipment equipment = equipment(0.5, 0.5);
    for (double beside : new double[] {-1e-13, 0, 1e-13}) {
      Load mass = Load.ofKilograms(40 + beside);
      assertEquals(Optional.empty(), equipment.greatestUpTo(Load.ofKilograms(0.49), mass));
      assertEquals("0.5 kg", equipment.least(mass).orElseThrow().toString());
    }
    assertEquals(Optional.empty(), equipment.greatestUpTo(Load.ofKilograms(0.49), Load.ZERO));
  }
}
