package gripwright.export.picture;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandPose;
import gripwright.hand.HandPose.Point;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * One finger on the edge in side view: the wall on the left, the palm below on the right. Units are
 * pixels, and the origin is the back of the edge at the height of the end joints.
 */
final class FingerDrawing {

  /** Thickness of the finger at the end bone, at the middle and proximal bones, and of the palm. */
  private static final double[] THICKNESS = {0.066, 0.074, 0.084, 0.11};

  private static final double PALM_LENGTH = 0.17;
  private static final double WALL = 14;
  private static final double LEDGE = 30;
  private static final double LABEL_GAP = 12;
  private static final double LINE = 1.6;

  /** About how wide a letter of a label is, in pixels. */
  private static final double LETTER = 6.6;

  private final Svg svg;
  private final double scale;
  private final double handLength;
  private final double edge;

  FingerDrawing(Svg svg, HandPose pose, double scale) {
    this.svg = svg;
    this.scale = scale;
    handLength = pose.shape().length().millimetres();
    edge = pose.edge().millimetres() * scale;
  }

  /** Returns joint centres from the knuckle to the tip, as x to the right and y downwards. */
  static List<double[]> joints(HandPose pose, Finger finger, double scale) {
    return pose.points(finger, Side.RIGHT).stream()
        .map((Point point) -> new double[] {point.out() * scale, -point.up() * scale})
        .toList();
  }

  /** Returns how far a palm reaches below its knuckle, in pixels. */
  static double palm(HandPose pose, double scale) {
    return PALM_LENGTH * pose.shape().length().millimetres() * scale;
  }

  /** Draws a finger, or only the edge if the finger does not hold. */
  void draw(HandPose pose, Finger finger, double top, double bottom) {
    Optional<FingerPose> found = pose.finger(finger);
    if (found.isEmpty()) {
      edge(thickness(0) / 2, top, bottom);
      return;
    }
    List<double[]> joints = joints(pose, finger, scale);
    double[] knuckle = joints.get(0);
    double[] wrist = {knuckle[0], knuckle[1] + palm(pose, scale)};
    // The outlines first and the insides after them, so that bones flow into each other.
    for (double outline : new double[] {2 * LINE, 0}) {
      String colour = outline > 0 ? "black" : "white";
      svg.line(wrist, knuckle, thickness(3) + outline, colour, "butt");
      svg.line(knuckle, knuckle, thickness(3) + outline, colour, "round");
      svg.line(knuckle, joints.get(1), thickness(2) + outline, colour, "round");
      svg.line(joints.get(1), joints.get(2), thickness(1) + outline, colour, "round");
      svg.line(joints.get(2), joints.get(3), thickness(0) + outline, colour, "round");
    }
    svg.dashed(wrist, knuckle);
    for (int i = 0; i + 1 < joints.size(); i++) {
      svg.line(joints.get(i), joints.get(i + 1), 1, "gray", "butt");
      svg.dot(joints.get(i), 3);
    }
    // The pad touches the edge where the tip is lowest.
    edge(joints.get(3)[1] + thickness(0) / 2, top, bottom);
    labels(found.get(), joints);
  }

  private double thickness(int part) {
    return THICKNESS[part] * handLength * scale;
  }

  private void edge(double surface, double top, double bottom) {
    svg.hatched(-WALL, top, WALL, bottom - top);
    svg.hatched(0, surface, edge, LEDGE);
    svg.path(
        "M 0 "
            + Svg.number(top)
            + " V "
            + Svg.number(surface)
            + " H "
            + Svg.number(edge)
            + " V "
            + Svg.number(surface + LEDGE)
            + " H 0 V "
            + Svg.number(bottom));
  }

  private void labels(FingerPose finger, List<double[]> joints) {
    double[] knuckle = joints.get(0);
    svg.label(
        knuckle[0] + thickness(3) / 2 + LABEL_GAP,
        knuckle[1] + 4,
        "start",
        text(finger, Joint.MCP));
    double[] middle = joints.get(1);
    double[] dorsal = dorsal(joints.get(0), middle, joints.get(2));
    place(middle, dorsal, thickness(2) / 2 + LABEL_GAP, text(finger, Joint.PIP));
    double[] above = dorsal(middle, joints.get(2), joints.get(3));
    place(joints.get(2), above, thickness(1) / 2 + LABEL_GAP, text(finger, Joint.DIP));
  }

  /** Returns the direction of a finger's back at a joint, of length 1. */
  private static double[] dorsal(double[] before, double[] joint, double[] after) {
    double x = unit(after, joint, 0) - unit(before, joint, 0);
    double y = unit(after, joint, 1) - unit(before, joint, 1);
    double length = Math.max(1e-9, Math.hypot(x, y));
    return new double[] {-y / length, x / length};
  }

  private static double unit(double[] to, double[] from, int axis) {
    double length = Math.max(1e-9, Math.hypot(to[0] - from[0], to[1] - from[1]));
    return (to[axis] - from[axis]) / length;
  }

  /** Writes a label beside a joint, but not over the wall. */
  private void place(double[] joint, double[] direction, double far, String text) {
    double width = text.length() * LETTER;
    double left = joint[0] + direction[0] * far - width * (1 - direction[0]) / 2;
    double height = joint[1] + direction[1] * far + 4;
    svg.label(Math.max(LABEL_GAP / 2, left), height, "start", text);
  }

  private static String text(FingerPose finger, Joint joint) {
    return joint.name() + " " + Numbers.plain(finger.flexion(joint).degrees(), 0) + "°";
  }
}
