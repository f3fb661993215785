package gripwright.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a grip is by its fingers and bands, whatever it is called. */
class GripStructureTest {

  private static Grip.Builder grip(String name, GripFamily family, Finger first, Finger... others) {
    return Grip.named(name).family(family).fingers(first, others);
  }

  private static Grip.Builder four(String name) {
    return grip(name, GripFamily.FOUR, Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE);
  }

  @Test
  void theCataloguesFamiliesAreWhatItsGripsAre() {
    for (Grip grip : StandardGrips.all()) {
      assertTrue(grip.structure().agreesWith(grip.family()), grip.name());
      assertEquals(grip.name().equals("full-crimp"), grip.fullCrimp(), grip.name());
      assertEquals(Optional.empty(), grip.replaced());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "INDEX, MIDDLE, RING, INDEX, RING, 45, OPEN",
    "INDEX, MIDDLE, RING, INDEX, RING, 45.1, SPLIT",
    "MIDDLE, RING, LITTLE, MIDDLE, LITTLE, 45, OPEN",
    "MIDDLE, RING, LITTLE, MIDDLE, RING, 45, SPLIT",
    "INDEX, MIDDLE, RING, INDEX, MIDDLE, 30, SPLIT",
  })
  void threeFingersAreOpenIfTheOuterTwoAreNearlyStraight(
      Finger one, Finger two, Finger three, Finger a, Finger b, double to, GripStructure is) {
    Grip grip =
        grip("ours", GripFamily.OPEN, one, two, three)
            .band(a, Joint.PIP, Band.degrees(0, to))
            .band(b, Joint.PIP, Band.degrees(0, to))
            .build();
    assertEquals(is, grip.structure());
  }

  @Test
  void fewerFingersAreSplitOrSingleAndFourAreFour() {
    assertEquals(
        GripStructure.SPLIT,
        grip("two", GripFamily.SPLIT, Finger.INDEX, Finger.LITTLE).build().structure());
    assertEquals(
        GripStructure.SINGLE, grip("one", GripFamily.SINGLE, Finger.RING).build().structure());
    assertEquals(GripStructure.FOUR, four("all").build().structure());
    assertEquals(
        GripStructure.SPLIT,
        grip("free", GripFamily.OPEN, Finger.INDEX, Finger.MIDDLE, Finger.RING).build().structure(),
        "without bands nothing says that it is open");
  }

  @ParameterizedTest
  @CsvSource({
    "75, -1, 2, true",
    "74.9, -1, 2, false",
    "75, 0, 2, false",
    "75, -1, 1, false",
    "100, 20, 2, false",
    "100.1, 20, 2, true",
    "100.1, 20, 1, false",
  })
  void aFullCrimpNeedsTwoFingersBentSo(
      double pipLow, double dipHigh, int fingers, boolean fullCrimp) {
    Grip.Builder builder = four("ours");
    for (Finger finger : List.of(Finger.MIDDLE, Finger.RING).subList(0, fingers)) {
      builder.band(finger, Joint.PIP, Band.degrees(pipLow, 110));
      builder.band(finger, Joint.DIP, Band.degrees(-30, dipHigh));
    }
    assertEquals(fullCrimp, builder.build().fullCrimp());
  }

  @Test
  void oneThatReplacesIsNeverLaxer() {
    Grip crimp = four("full-crimp").build();
    assertTrue(crimp.fullCrimp());
    assertEquals(Map.of("half-crimp", 12.0), crimp.allNeeds().familiar());
    assertEquals(
        GripStructure.SINGLE,
        grip("index-single", GripFamily.SPLIT, Finger.INDEX, Finger.MIDDLE).build().structure());
    assertEquals(
        GripStructure.SPLIT,
        grip("half-crimp", GripFamily.SPLIT, Finger.INDEX, Finger.MIDDLE).build().structure());
  }

  @Test
  void ofTwoNeedsTheGreaterCount() {
    Ability low = Ability.of(GradeScale.FRENCH, "7a");
    Ability high = Ability.of(GradeScale.FRENCH, "8a");
    Prerequisites one = new Prerequisites(12, Optional.of(high), Map.of("a", 3.0, "b", 9.0));
    Prerequisites other = new Prerequisites(24, Optional.of(low), Map.of("a", 6.0));
    assertEquals(
        new Prerequisites(24, Optional.of(high), Map.of("a", 6.0, "b", 9.0)), one.and(other));
    assertEquals(one.and(other), other.and(one));
    assertEquals(other, other.and(Prerequisites.NONE));
  }

  @Test
  void aMiddleJointIsNotHeldBentBack() {
    assertThrows(
        IllegalArgumentException.class,
        () -> four("ours").band(Finger.INDEX, Joint.PIP, Band.degrees(-10, -0.1)).build());
    four("ours").band(Finger.INDEX, Joint.PIP, Band.degrees(-10, 0)).build();
    four("ours").band(Finger.INDEX, Joint.DIP, Band.degrees(-60, -60)).build();
  }
}
