package gripwright.language.check;

import gripwright.hand.Joint;

/**
 * Range of a finger joint in degrees of flexion.
 *
 * <p>Norms: American Academy of Orthopaedic Surgeons, Joint Motion: Method of Measuring and
 * Recording, 1965: MCP 90, PIP 100, DIP 90. The bounds are those of {@link Joint#middleOfRange}.
 *
 * @param least the lowest flexion that a band, or an athlete's own limit, may be centred on
 * @param norm the norm
 * @param greatest the highest flexion that a band, or an athlete's own limit, may be centred on
 */
record JointRange(double least, double norm, double greatest) {

  static JointRange of(Joint joint) {
    double norm =
        switch (joint) {
          case MCP, DIP -> 90;
          case PIP -> 100;
        };
    return new JointRange(joint.middleOfRange().low(), norm, joint.middleOfRange().high());
  }
}
