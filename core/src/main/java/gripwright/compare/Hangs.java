package gripwright.compare;

import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.statics.MomentArms;
import gripwright.tissue.OwnHang;
import gripwright.tissue.Pulley;
import gripwright.tissue.PulleyDraws;
import gripwright.tissue.TissueModel;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The pulleys of one pair of hands in the setups of a comparison and in the own hang. */
final class Hangs {

  private static final Load ANY_MASS = Load.ofKilograms(60);

  private final List<@Nullable PulleyDraws> setups = new ArrayList<>();
  private final PulleyDraws own;
  private final boolean[] judged = new boolean[PulleyDraws.PLACES];

  /**
   * Prepares the pulleys. Of two hands that differ the left one counts, unless only the right one
   * holds.
   *
   * @param shape returns the hand of a side
   */
  Hangs(List<Setup> all, Function<Side, HandShape> shape, MomentArms arms) {
    TissueModel model = TissueModel.STANDARD.with(TissueModel.STANDARD.tendons().with(arms));
    for (Setup setup : all) {
      HandShape hand = shape.apply(setup.hands() == Hands.RIGHT ? Side.RIGHT : Side.LEFT);
      GripFit fit = GripFit.of(setup.grip(), hand, setup.edge());
      setups.add(fit.reachable() ? new PulleyDraws(fit, model) : null);
    }
    GripFit hang = GripFit.of(OwnHang.SETUP.grip(), shape.apply(Side.LEFT), OwnHang.SETUP.edge());
    own = new PulleyDraws(hang, model);
    OwnHang known = OwnHang.of(hang, ANY_MASS, model);
    for (Finger finger : Finger.values()) {
      for (Pulley pulley : Pulley.values()) {
        judged[PulleyDraws.place(finger, pulley)] = known.loads(finger, pulley);
      }
    }
  }

  /** Returns the forces for 1 N by setup; null where the hand does not take the grip. */
  double @Nullable [][] forces(double[] deviates) {
    double[][] forces = new double[setups.size()][];
    for (int i = 0; i < forces.length; i++) {
      PulleyDraws draws = setups.get(i);
      if (draws != null) {
        forces[i] = draws.forces(deviates);
      }
    }
    return forces;
  }

  /** Returns those of the own hang; 0 for pulleys that it hardly loads, which are not judged. */
  double[] own(double[] deviates) {
    double[] forces = own.forces(deviates);
    for (int place = 0; place < forces.length; place++) {
      forces[place] = judged[place] ? forces[place] : 0;
    }
    return forces;
  }
}
