package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.hand.Hands;

/**
 * Setups whose tests count for each other.
 *
 * @param hands which hands hold
 * @param lifting true if a weight is lifted
 * @param shallow the depth of an edge from which nothing is estimated, in hundredths of a
 *     millimetre; 0 for all others
 */
record Region(Hands hands, boolean lifting, long shallow) {

  private static final double HUNDREDTHS = 100;

  static Region of(Setup setup) {
    double depth = setup.edge().millimetres();
    return new Region(
        setup.hands(),
        setup.lifting(),
        depth > EdgeDepth.SHALLOWEST_ESTIMATED ? 0 : Math.round(depth * HUNDREDTHS));
  }
}
