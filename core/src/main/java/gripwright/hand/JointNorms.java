package gripwright.hand;

import gripwright.quantity.Angle;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How far the joints of a finger move, by the body that published it.
 *
 * <p>The bodies agree on the knuckle and the middle joint and differ on the end joint (90 or 70
 * deg), so a norm is never quoted without its source. Goniometry in a clinic is good to about 5
 * deg. A crimp bends the end joint backwards beyond these norms; that is what it is, not a mistake.
 */
public enum JointNorms {
  /**
   * American Academy of Orthopaedic Surgeons, Joint Motion: Method of Measuring and Recording,
   * 1965: MCP 45 deg back to 90, PIP 0 to 100, DIP 0 to 90.
   */
  AAOS(range(-45, 90), range(0, 100), range(0, 90)),
  /**
   * American Medical Association, Guides to the Evaluation of Permanent Impairment, with the total
   * active motion of the American Society for Surgery of the Hand: MCP 20 deg back to 90, PIP 0 to
   * 100, DIP 0 to 70. From memory.
   */
  AMA(range(-20, 90), range(0, 100), range(0, 70));

  /** Total active motion of a finger that moves as the AMA norm says, in degrees. From memory. */
  public static final double TOTAL_ACTIVE_MOTION = 260;

  private final Map<Joint, FlexionRange> ranges = new EnumMap<>(Joint.class);

  JointNorms(FlexionRange mcp, FlexionRange pip, FlexionRange dip) {
    ranges.put(Joint.MCP, mcp);
    ranges.put(Joint.PIP, pip);
    ranges.put(Joint.DIP, dip);
  }

  private static FlexionRange range(double low, double high) {
    return FlexionRange.degrees(low, high);
  }

  /** Returns the norm of a joint, from greatest hyperextension (negative) to greatest flexion. */
  public FlexionRange of(Joint joint) {
    FlexionRange range = ranges.get(joint);
    if (range == null) {
      throw new IllegalStateException("no norm of " + joint);
    }
    return range;
  }

  /**
   * Returns the total active motion of a finger: the sum of its greatest flexions, less what it
   * lacks of full extension, at most {@link #TOTAL_ACTIVE_MOTION}.
   *
   * @param mcp from least to greatest flexion of the knuckle
   * @param pip of the middle joint
   * @param dip of the end joint
   * @return degrees, 0 to 260
   */
  public static double totalActiveMotion(FlexionRange mcp, FlexionRange pip, FlexionRange dip) {
    Objects.requireNonNull(mcp, "mcp");
    Objects.requireNonNull(pip, "pip");
    Objects.requireNonNull(dip, "dip");
    double sum = 0;
    for (FlexionRange joint : new FlexionRange[] {mcp, pip, dip}) {
      sum += joint.high().degrees() - Math.max(0, joint.low().degrees());
    }
    return Math.max(0, Math.min(TOTAL_ACTIVE_MOTION, sum));
  }

  /** Returns by how many degrees a flexion lies outside the norm; 0 inside it. */
  public double beyond(Joint joint, Angle flexion) {
    return Math.abs(of(joint).miss(flexion.degrees()));
  }
}
