package gripwright.tissue;

/** The forces on one finger in every draw, in N. */
record FingerDraws(double[] fingertip, double[] fdp, double[] fds, double[] a2, double[] a4) {

  /**
   * Draws a finger's forces.
   *
   * @param hands the finger, one value per sampled hand, repeated to the number of draws
   * @param newtons on the whole hand
   * @param shares the finger's share in each draw
   */
  static FingerDraws of(FingerPulleys[] hands, double newtons, double[] shares, Variation[] draws) {
    int count = draws.length;
    FingerDraws drawn =
        new FingerDraws(
            new double[count],
            new double[count],
            new double[count],
            new double[count],
            new double[count]);
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
