package gripwright.tissue;

import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.util.List;
import java.util.function.Function;

/**
 * The hang that tissue estimates are given relative to: the athlete's own, with body mass on two
 * hands, in a half crimp on an edge of 20 mm. Immutable.
 *
 * <p>1 is what the same tendon or pulley of the same finger carries in that hang. Both sides of the
 * quotient have the same draws, so an error that both share cancels. The little finger of a half
 * crimp carries little on its pulleys, so its quotients are large in a grip that bends it, and
 * their intervals wide.
 */
public final class OwnHang {

  /** Grip and edge of the hang: all four fingers, in the grip that is tested and trained most. */
  public static final Setup SETUP = Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));

  /**
   * A draw of the hang counts with at least this part of the best estimate: a finger may be
   * straight in some draws, and nothing can be given relative to a force of 0.
   */
  private static final double LEAST_PART = 0.05;

  /** The library's own choice. It leaves out the little finger, which a half crimp has straight. */
  private static final double LEAST_COMPARED = 0.2;

  private final Load bodyMass;
  private final TissueLoad load;

  private OwnHang(Load bodyMass, TissueLoad load) {
    this.bodyMass = bodyMass;
    this.load = load;
  }

  /**
   * Calculates the hang.
   *
   * @param fit of one hand to {@link #SETUP}; where the hand does not take it, its nearest pose
   *     stands for it, see {@link #taken()}
   * @param bodyMass of the athlete; each hand holds half
   * @throws IllegalArgumentException if the fit is of another grip
   */
  public static OwnHang of(GripFit fit, Load bodyMass, TissueModel model) {
    if (!fit.grip().equals(SETUP.grip())) {
      throw new IllegalArgumentException("not the own hang: " + fit.grip().name());
    }
    return new OwnHang(bodyMass, TissueLoad.of(fit, bodyMass.newtons() / 2, model));
  }

  /** Returns the body mass that hangs. */
  public Load bodyMass() {
    return bodyMass;
  }

  /** Returns the fit of the hang. */
  public GripFit fit() {
    return load.fit();
  }

  /** Returns whether the hand takes the grip; if not, its nearest pose stands for it. */
  public boolean taken() {
    return load.fit().reachable();
  }

  /**
   * Returns whether this hang loads a finger's pulley enough to rest a judgement on the quotient:
   * by at least a fifth of what the most loaded pulley of its kind carries.
   */
  public boolean loads(Finger finger, Pulley pulley) {
    double most = 0;
    for (Finger each : SETUP.grip().fingers().fingers()) {
      most = Math.max(most, load.force(each, pulley));
    }
    double force = load.force(finger, pulley);
    return force > 0 && force >= LEAST_COMPARED * most;
  }

  /**
   * Returns the best estimate of the force on a finger's pulley, relative to this hang; 0 where the
   * hang does not load the pulley.
   */
  public double relative(TissueLoad other, Finger finger, Pulley pulley) {
    return quotient(other.force(finger, pulley), load.force(finger, pulley));
  }

  /**
   * Returns what every finger of a load carries, relative to this hang, in the order of the hand.
   *
   * @param other a load on the same hand, estimated with the same model
   * @throws IllegalArgumentException if it has another model
   */
  public List<RelativeLoad> relative(TissueLoad other) {
    if (!other.model().equals(load.model())) {
      throw new IllegalArgumentException("loads of two models");
    }
    return other.fingers().stream()
        .map(
            finger ->
                new RelativeLoad(
                    finger.finger(),
                    relative(other, finger, FingerLoad::fdp, FingerDraws::fdp),
                    relative(other, finger, FingerLoad::fds, FingerDraws::fds),
                    relative(other, finger, FingerLoad::a2, FingerDraws::a2),
                    relative(other, finger, FingerLoad::a4, FingerDraws::a4)))
        .toList();
  }

  private Estimate relative(
      TissueLoad other,
      FingerLoad finger,
      Function<FingerLoad, Estimate> force,
      Function<FingerDraws, double[]> draws) {
    double own = force.apply(load.finger(finger.finger()).orElseThrow()).value();
    double[] drawn = draws.apply(other.drawn(finger.finger())).clone();
    double[] ownDrawn = draws.apply(load.drawn(finger.finger()));
    for (int i = 0; i < drawn.length; i++) {
      drawn[i] = quotient(drawn[i], Math.max(ownDrawn[i], LEAST_PART * own));
    }
    return Estimate.of(quotient(force.apply(finger).value(), own), drawn);
  }

  private static double quotient(double force, double own) {
    return own > 0 ? force / own : 0;
  }
}
