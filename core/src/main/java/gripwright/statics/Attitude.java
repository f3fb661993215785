package gripwright.statics;

import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Segment;

/**
 * The orientation of a finger's bones in its plane, in radians, and the contact with the edge.
 *
 * @param flexion of the middle joint
 * @param rise of the middle bone from end joint to middle joint, above horizontal
 * @param pitch of the end bone, its tip below horizontal
 * @param contact distance from the end joint along the end bone to the middle of the contact, in mm
 */
public record Attitude(double flexion, double rise, double pitch, double contact) {

  /** Returns the attitude of a finger in a pose, with the contact that a model assumes. */
  public static Attitude of(HandShape shape, FingerPose pose, TendonModel model) {
    double distal = shape.bone(pose.finger(), Segment.DISTAL).millimetres();
    return new Attitude(
        Math.toRadians(pose.pip().degrees()),
        Math.toRadians(pose.rise().degrees()),
        Math.toRadians(pose.pitch().degrees()),
        FingerStatics.contact(distal, pose.beyondReach().millimetres(), model));
  }

  /** Returns the flexion of the end joint, in radians. */
  double dip() {
    return pitch - rise;
  }
}
