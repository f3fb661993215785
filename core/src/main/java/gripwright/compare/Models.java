package gripwright.compare;

import gripwright.grip.FingerLoss;
import gripwright.statics.MomentArms;
import gripwright.strength.CriticalForce;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The published views of which one must be chosen to describe people. Others run side by side as
 * scenarios, and are never averaged here. Immutable.
 *
 * @param arms moment arms of the tendons
 * @param critical how critical force follows from an all-out series
 * @param loss what fewer fingers hold; empty for the mean of both views, as in plans
 */
record Models(MomentArms arms, CriticalForce.Definition critical, Optional<FingerLoss> loss) {

  static final Models AS_IN_PLANS =
      new Models(
          MomentArms.KETCHUM_1978, CriticalForce.Definition.MEAN_OF_LAST_THREE, Optional.empty());

  /** What a scenario is about, which decides the measures that it may change. */
  enum Subject {
    PULLEYS,
    CRITICAL_FORCE,
    FINGERS
  }

  /**
   * Another choice of one view.
   *
   * @param name the view
   * @param subject what it is about
   * @param models the choice
   */
  record Other(String name, Subject subject, Models models) {}

  /** Returns each other choice, one view changed at a time. */
  List<Other> others() {
    List<Other> others = new ArrayList<>();
    for (MomentArms other : MomentArms.values()) {
      if (other != arms) {
        others.add(new Other(other.name(), Subject.PULLEYS, new Models(other, critical, loss)));
      }
    }
    CriticalForce.Definition asymptote = CriticalForce.Definition.ASYMPTOTE;
    others.add(
        new Other(asymptote.name(), Subject.CRITICAL_FORCE, new Models(arms, asymptote, loss)));
    for (FingerLoss law : List.of(FingerLoss.EXCLUSION, FingerLoss.FORCE_DEFICIT)) {
      others.add(
          new Other(law.name(), Subject.FINGERS, new Models(arms, critical, Optional.of(law))));
    }
    return others;
  }
}
