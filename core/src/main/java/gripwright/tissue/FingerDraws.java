package gripwright.tissue;

/** The forces on one finger in every draw, in N; read, never written to, by others. */
final class FingerDraws {

  private final double[] fingertip;
  private final double[] fdp;
  private final double[] fds;
  private final double[] a2;
  private final double[] a4;

  private FingerDraws(int draws) {
    fingertip = new double[draws];
    fdp = new double[draws];
    fds = new double[draws];
    a2 = new double[draws];
    a4 = new double[draws];
  }

  double[] fingertip() {
    return fingertip;
  }

  double[] fdp() {
    return fdp;
  }

  double[] fds() {
    return fds;
  }

  double[] a2() {
    return a2;
  }

  double[] a4() {
    return a4;
  }

  /**
   * Draws a finger's forces.
   *
   * @param hands the finger, one value per sampled hand, repeated to the number of draws
   * @param newtons on the whole hand
   * @param shares the finger's share in each draw
   */
  static FingerDraws of(FingerPulleys[] hands, double newtons, double[] shares, Variation[] draws) {
    int count = draws.length;
    FingerDraws drawn = new FingerDraws(count);
    for (int i = 0; i < count; i++) {
      double force = shares[i] * newtons;
      FingerPulleys.Forces forces = hands[i % hands.length].forces(draws[i]);
      drawn.fingertip[i] = force;
      drawn.fdp[i] = forces.fdp() * force;
      drawn.fds[i] = forces.fds() * force;
      drawn.a2[i] = forces.a2() * force;
      drawn.a4[i] = forces.a4() * force;
    }
    return drawn;
  }

  /** Returns the force on a pulley by its breaking load in every draw. */
  double[] use(Pulley pulley, Variation[] draws) {
    double[] forces = pulley == Pulley.A2 ? a2 : a4;
    double[] use = new double[forces.length];
    for (int i = 0; i < use.length; i++) {
      use[i] = forces[i] / (pulley.breakingNewtons() * draws[i].capacity(pulley));
    }
    return use;
  }
}
