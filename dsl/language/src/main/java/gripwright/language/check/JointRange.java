package gripwright.language.check;

import gripwright.grip.Band;
import gripwright.hand.Joint;

/**
 * How far the joints of a finger bend, in degrees of flexion.
 *
 * <p>Norms: American Academy of Orthopaedic Surgeons, Joint Motion: Method of Measuring and
 * Recording, 1965: MCP 90, PIP 100, DIP 90. The bounds of the PIP joint are those of {@link Band};
 * those of the two other joints are our own, wide on purpose.
 *
 * @param least the least flexion that a band, or an athlete's own limit, may be centred on
 * @param norm the norm
 * @param greatest the greatest flexion that a band, or an athlete's own limit, may be centred on
 */
record JointRange(double least, double norm, double greatest) {

  private static final JointRange MCP_RANGE = new JointRange(-60, 90, 120);
  private static final JointRange PIP_RANGE =
      new JointRange(Band.LEAST_PIP_CENTRE, 100, Band.GREATEST_PIP_CENTRE);
  private static final JointRange DIP_RANGE = new JointRange(-60, 90, 110);

  static JointRange of(Joint joint) {
    return switch (joint) {
      case MCP -> MCP_RANGE;
      case PIP -> PIP_RANGE;
      case DIP -> DIP_RANGE;
    };
  }
}
