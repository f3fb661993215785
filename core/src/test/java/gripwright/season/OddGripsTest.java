package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of grips that were built in Java, as of those that were read. */
class OddGripsTest {

  private static final Grip OWN =
      Grip.named("half-crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .build();
  private static final Grip NOT_OPEN =
      Grip.named("ours")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .build();

  private static List<String> said(Grip grip) {
    return said(
        Season.of(List.of(plan(grip)), List.of(Skarvdal.ylva().build()), List.of(), List.of()));
  }

  private static List<String> said(Season season) {
    return season.compile().findings().stream()
        .filter(f -> f.place().toString().startsWith("grip "))
        .map(f -> f.severity().word() + " " + f.code() + " " + f.place())
        .toList();
  }

  private static Plan plan(Grip grip) {
    return Plan.named("spring")
        .athlete("ylva")
        .from(MONDAY)
        .block(
            Block.named("base", 2)
                .session(
                    SessionPlan.of(
                        "strength",
                        1,
                        Exercise.of(HOLDS, grip, EDGE),
                        Exercise.of(HOLDS, grip, EDGE)))
                .build())
        .build();
  }

  @Test
  void gripsOfTheCatalogueHaveNoFindings() {
    StandardGrips.all().forEach(grip -> assertEquals(List.<Finding>of(), OddGrips.of(grip)));
  }

  @Test
  void replacementIsReportedOnce() {
    assertEquals(List.of("advice plan.grip-replaces grip half-crimp"), said(OWN));
  }

  @Test
  void differentFamilyIsReported() {
    assertEquals(List.of("advice plan.grip-family grip ours"), said(NOT_OPEN));
  }

  @Test
  void stronglyHyperextendedEndJointIsReported() {
    Grip.Builder grip =
        Grip.named("bent")
            .family(GripFamily.FOUR)
            .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE);
    assertEquals(
        List.of("warning plan.grip-bent-back grip bent"),
        said(grip.band(Finger.RING, Joint.DIP, Band.degrees(-50, -40.1)).build()));
    assertEquals(
        List.of(), said(grip.band(Finger.RING, Joint.DIP, Band.degrees(-50, -40)).build()));
  }

  @Test
  void gripsThatNoPlanUsesAreReportedToo() {
    Season season =
        Season.of(
            List.of(plan(StandardGrips.HALF_CRIMP)),
            List.of(Skarvdal.ylva().build()),
            List.of(),
            List.of());
    assertEquals(List.of(), said(season));
    assertEquals(
        List.of("advice plan.grip-family grip ours"),
        said(season.withGrips(List.of(NOT_OPEN, StandardGrips.OPEN_FOUR))));
  }
}
