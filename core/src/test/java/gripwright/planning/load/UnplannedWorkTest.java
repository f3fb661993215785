package gripwright.planning.load;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Work that no plan asked for: five holds of 10 s at 84 % max with 3 min between. */
class UnplannedWorkTest {

  private static Optional<PlannedExercise> work(
      Log log, String protocol, boolean lifting, Optional<Load> load) {
    Athlete ylva = Skarvdal.ylva().build();
    HandFindings hands = new HandFindings(ylva);
    LogEntry.Done done =
        LogEntry.Done.builder(protocol, new Setup(HALF_CRIMP, EDGE, Hands.BOTH, lifting))
            .sets(2)
            .load(load)
            .build();
    return new UnplannedWork(
            Map.of(HOLDS.name(), HOLDS), new Prescription(ylva, log, MONDAY, hands), hands.fits())
        .of(done, Map.of(), MONDAY, ModelPath.of("plan", "spring"));
  }

  private static final Optional<Load> UNWRITTEN = Optional.empty();

  @Test
  void withATestTheProtocolGivesTheLoad() {
    PlannedExercise exercise =
        work(Skarvdal.tested(), "single-holds", false, UNWRITTEN).orElseThrow();
    assertEquals(84, exercise.percentOfMax().orElseThrow(), 1e-9);
    assertEquals(5, exercise.scheme().sets());
  }

  @Test
  void withoutATestTheLineGivesItElseBodyMass() {
    Log none = Log.empty("ylva");
    PlannedExercise written =
        work(none, "single-holds", false, Optional.of(Load.ofKilograms(70))).orElseThrow();
    assertEquals(70, written.totalLoad().kilograms());
    assertEquals(60, written.bodyMass().kilograms());
    assertEquals(true, written.hard(), "nothing is known of the maximum");
    assertEquals(Level.total(Load.ofKilograms(70)), written.scheme().holds().get(0).level());
    assertEquals(
        List.of(10.0, 180.0, 10.0),
        written.steps().subList(0, 3).stream().map(LoadedStep::seconds).toList());
    assertEquals(
        60, work(none, "single-holds", false, UNWRITTEN).orElseThrow().totalLoad().kilograms());
  }

  @Test
  void aLiftNeedsAWrittenLoad() {
    Log none = Log.empty("ylva");
    assertEquals(Optional.empty(), work(none, "single-holds", true, UNWRITTEN));
    PlannedExercise lift =
        work(none, "single-holds", true, Optional.of(Load.ofKilograms(30))).orElseThrow();
    assertEquals(30, lift.totalLoad().kilograms());
    assertEquals(0, lift.bodyMass().kilograms());
  }

  @Test
  void anUnknownProtocolShowsNothing() {
    assertEquals(Optional.empty(), work(Skarvdal.tested(), "repeaters", false, UNWRITTEN));
  }
}
