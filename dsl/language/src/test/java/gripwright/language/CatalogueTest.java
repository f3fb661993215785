package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.language.check.Standard;
import gripwright.language.source.SourceLoader;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The catalogue has no errors, and its Java form in core is equal to its text. */
class CatalogueTest {

  private static final boolean BLESS = Boolean.getBoolean("gripwright.bless");

  private static Reading read(String file) {
    String text = Catalogue.text(file);
    return Gripwright.read(
        file, SourceLoader.of(Map.of(file, text)), ReadOptions.standard(), Standard.NONE);
  }

  private static void bless(String path, String java) throws IOException {
    Path file = Path.of("../../core/src/main/java/gripwright").resolve(path);
    Files.writeString(file, java);
  }

  @Test
  void gripsInJavaAreGripsInText() throws IOException {
    Reading reading = read("grips.grip");
    assertEquals(List.of(), reading.findings());
    List<Grip> grips = List.copyOf(reading.grips().values());
    if (BLESS) {
      bless("grip/StandardGrips.java", CatalogueJava.grips(grips));
    } else {
      assertEquals(grips, StandardGrips.all());
      assertEquals(reading.grips(), StandardGrips.byName());
    }
  }

  @Test
  void protocolsInJavaAreProtocolsInText() throws IOException {
    Reading reading = read("protocols.grip");
    assertEquals(List.of(), reading.findings());
    List<Protocol> protocols = List.copyOf(reading.protocols().values());
    if (BLESS) {
      bless("protocol/StandardProtocols.java", CatalogueJava.protocols(protocols));
    } else {
      assertEquals(protocols, StandardProtocols.all());
      assertEquals(reading.protocols(), StandardProtocols.byName());
    }
  }

  /** Families as the language defines them. */
  @Test
  void gripsAreInTheirFamilies() {
    assertEquals(Set.of("half-crimp", "full-crimp"), namesOf(GripFamily.FOUR));
    assertEquals(Set.of("open-four", "three-finger-drag"), namesOf(GripFamily.OPEN));
    assertEquals(
        Set.of("front-three", "back-three", "front-two", "middle-two", "back-two"),
        namesOf(GripFamily.SPLIT));
    assertEquals(
        Set.of("index-single", "middle-single", "ring-single", "little-single"),
        namesOf(GripFamily.SINGLE));
  }

  private static Set<String> namesOf(GripFamily family) {
    Set<String> names = new TreeSet<>();
    for (Grip grip : StandardGrips.all()) {
      if (grip.family() == family) {
        names.add(grip.name());
      }
    }
    return names;
  }

  /** The ring finger of the front three is not forced to a right angle: 90 to 120 deg included. */
  @Test
  void theRingFingerOfTheFrontThreeMayOpen() {
    var band = StandardGrips.FRONT_THREE.band(Finger.RING, Joint.PIP).orElseThrow();
    assertEquals(60, band.low().degrees());
    assertEquals(90, band.high().degrees());
  }

  @Test
  void everyGripHasACaution() {
    for (Grip grip : StandardGrips.all()) {
      assertFalse(grip.cautions().isEmpty(), grip.name());
    }
  }

  @Test
  void noTextPromisesTooMuch() {
    for (String file : Catalogue.files()) {
      String text = Catalogue.text(file).toLowerCase(java.util.Locale.ROOT);
      for (String word : List.of("safe", "protects", "prevents")) {
        assertFalse(text.contains(word), file + " says " + word);
      }
    }
  }

  @Test
  void theCatalogueNeedsNoUseLine() {
    Reading reading = Gripwright.read("empty.grip", "language 1\n");
    assertTrue(reading.usable());
    assertEquals(StandardGrips.byName(), reading.grips());
    assertEquals(StandardProtocols.byName(), reading.protocols());
  }
}
