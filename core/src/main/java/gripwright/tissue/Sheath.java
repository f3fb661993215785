package gripwright.tissue;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import java.util.stream.Stream;

/**
 * How the turn of the flexor tendons is shared along their sheath.
 *
 * <p>A pulley that turns a tendon under tension T by an angle d carries {@code 2 T sin(d/2)}; with
 * friction the tension differs on its two sides by {@code exp(friction x d)}. A joint bent
 * backwards presses the tendon onto the bone and loads no pulley.
 *
 * <p>No retrieved source gives the shares, so the sets are assumptions with a name.
 *
 * @param name of the set
 * @param a2OfMcp share of the knuckle's turn that A2 takes, 0 to 1; what is left is A1's
 * @param a2OfPip share of the middle joint's turn that A2 takes, 0 to 1
 * @param a4OfPip share of the middle joint's turn that A4 takes, 0 to 1; what is left is A3's
 * @param a4OfDip share of the end joint's turn that A4 takes, 0 to 1; what is left is taken by A5
 *     and the insertion
 * @param friction coefficient between tendon and pulley, 0 or more; it helps the muscle, as when a
 *     load was lowered into
 */
public record Sheath(
    String name, double a2OfMcp, double a2OfPip, double a4OfPip, double a4OfDip, double friction) {

  /**
   * A2 lies between knuckle and middle joint and takes of the turn of both; A4 takes the rest of
   * the middle joint's and little of the end joint's, to which A5 and the insertion lie nearer.
   *
   * <p>The shares of A2 were set with its force by that of FDP in view, 0.825 in a crimp and 0.326
   * in a slope; A4's of the end joint with its force in a crimp by that in a slope in view, 2.2
   * (Schoeffl I et al. 2009, J Biomech 42(13):2183-2187). So these three are no check of the model.
   */
  public static final Sheath KNUCKLE = new Sheath("knuckle", 0.45, 0.43, 0.57, 0.15, 0);

  /** The pulleys on the two sides of a joint share its turn evenly; A3, the weakest, gives way. */
  public static final Sheath EVEN = new Sheath("even", 0, 0.5, 0.5, 0.5, 0);

  /** A2, A3 and A4 take a third each of the middle joint's turn. */
  public static final Sheath THIRDS = new Sheath("thirds", 0, 1.0 / 3, 1.0 / 3, 0.5, 0);

  /**
   * Checks the shares.
   *
   * @throws IllegalArgumentException if a share is not within 0 to 1, those of the middle joint are
   *     more than the whole, or friction is not within 0 to 1
   */
  public Sheath {
    if (!(a2OfMcp >= 0
        && a2OfMcp <= 1
        && a2OfPip >= 0
        && a4OfPip >= 0
        && a2OfPip + a4OfPip <= 1 + 1e-9
        && a4OfDip >= 0
        && a4OfDip <= 1
        && friction >= 0
        && friction <= 1)) {
      throw new IllegalArgumentException("not shares of a turn: " + name);
    }
  }

  /** Returns what the set is called; a name that is not one of ours stands as it was given. */
  public Message words() {
    return Stream.of(KNUCKLE, EVEN, THIRDS).anyMatch(known -> known.name.equals(name))
        ? Clause.of("grips.sheath-" + name)
        : new WrittenText(name);
  }

  /** Returns this set with friction between tendon and pulley. */
  public Sheath withFriction(double coefficient) {
    return new Sheath(name, a2OfMcp, a2OfPip, a4OfPip, a4OfDip, coefficient);
  }

  /** Returns the turn of the tendons at A2 for flexions of knuckle and middle joint, in radians. */
  public double turnOfA2(double mcp, double pip) {
    return a2OfMcp * Math.max(0, mcp) + a2OfPip * Math.max(0, pip);
  }

  /** Returns the turn of FDP at A4 for flexions of middle and end joint, in radians. */
  public double turnOfA4(double pip, double dip) {
    return a4OfPip * Math.max(0, pip) + a4OfDip * Math.max(0, dip);
  }

  /**
   * Returns the force on a pulley that turns a tendon.
   *
   * @param tension on the finger's side, in N, 0 or more
   * @param turn in radians, 0 to pi; a turn below 0 loads no pulley
   * @return N
   */
  public double pulleyForce(double tension, double turn) {
    double angle = Math.max(0, turn);
    if (friction == 0) {
      return 2 * tension * Math.sin(angle / 2);
    }
    double beyond = tension * pass(angle);
    return Math.sqrt(
        Math.max(0, tension * tension + beyond * beyond - 2 * tension * beyond * Math.cos(angle)));
  }

  /** Returns what is left of a tension beyond a pulley that turns the tendon by so many radians. */
  double pass(double turn) {
    return Math.exp(-friction * Math.max(0, turn));
  }
}
