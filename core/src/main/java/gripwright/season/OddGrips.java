package gripwright.season;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripStructure;
import gripwright.hand.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds grips whose definition is probably not what the coach meant. */
final class OddGrips {

  /**
   * Hyperextension that few end joints exceed under load, in degrees; the library's own choice,
   * equal to the band of the catalogue's full crimp.
   */
  private static final double BENT_BACK = -40;

  private OddGrips() {}

  /** Returns the findings about a grip, at the grip; none for a grip of the catalogue. */
  static List<Finding> of(Grip grip) {
    List<Finding> findings = new ArrayList<>();
    grip.replaced().ifPresent(catalogue -> findings.add(replaces(grip)));
    GripStructure structure = grip.ownStructure();
    if (!structure.agreesWith(grip.family())) {
      findings.add(
          finding(grip, Finding.advice("plan.grip-family", path(grip)))
              .with("family", grip.family())
              .with("structure", structure)
              .with(structure.word(), ""));
    }
    bentBack(grip).ifPresent(findings::add);
    return findings;
  }

  private static Finding replaces(Grip grip) {
    return finding(grip, Finding.advice("plan.grip-replaces", path(grip)));
  }

  /** Reports several fingers with the same value once. */
  private static Optional<Finding> bentBack(Grip grip) {
    return grip.bands().entrySet().stream()
        .filter(entry -> entry.getKey().joint() == Joint.DIP)
        .filter(entry -> entry.getValue().high().degrees() < BENT_BACK)
        .findFirst()
        .map(
            entry -> {
              Band band = entry.getValue();
              return finding(grip, Finding.warning("plan.grip-bent-back", path(grip)))
                  .with("finger", entry.getKey().finger())
                  .with("low", band.low())
                  .with("high", band.high());
            });
  }

  private static Finding finding(Grip grip, Finding finding) {
    return finding.with("grip", grip.name());
  }

  private static ModelPath path(Grip grip) {
    return ModelPath.of("grip", grip.name());
  }
}
