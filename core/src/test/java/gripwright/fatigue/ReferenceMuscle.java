package gripwright.fatigue;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The equations as published, all three shares, given to a general-purpose integrator: Dormand and
 * Prince's of order 8(5,3). It starts a new step where capacity meets the load, since a kink of the
 * law there would cost two digits.
 */
public final class ReferenceMuscle {

  private final FatigueRates rates;
  private final double tolerance;
  private double[] shares = {1, 0, 0};

  /**
   * Creates fresh fingers with these rates.
   *
   * @param tolerance absolute and relative, of a step; the total error of a session can be a
   *     hundred times larger
   */
  public ReferenceMuscle(FatigueRates rates, double tolerance) {
    this.rates = rates;
    this.tolerance = tolerance;
  }

  /** Holds or rests. */
  public void spend(Bout bout) {
    if (bout.seconds() > 0) {
      DormandPrince853Integrator integrator =
          new DormandPrince853Integrator(1e-12, 1000, tolerance, tolerance);
      integrator.addEventDetector(new Bend(bout.ofMvc()));
      shares =
          integrator
              .integrate(new Law(bout.ofMvc()), new ODEState(0, shares), bout.seconds())
              .getPrimaryState();
    }
  }

  /** Returns the largest difference of a share. */
  public double difference(Muscle muscle) {
    return Math.max(
        Math.abs(shares[0] - muscle.resting()),
        Math.max(Math.abs(shares[1] - muscle.active()), Math.abs(shares[2] - muscle.fatigued())));
  }

  /** The right-hand side for one load: resting, active, fatigued. */
  private final class Law implements OrdinaryDifferentialEquation {

    private final double load;

    Law(double load) {
      this.load = load;
    }

    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double time, double[] y) {
      double lacking = load - y[1];
      double called = FatigueRates.DRIVE * (lacking > 0 && y[0] <= lacking ? y[0] : lacking);
      double fatigue = rates.fatigue() * y[1];
      double recovery = rates.recovery() * (load == 0 ? rates.restMultiplier() : 1) * y[2];
      return new double[] {recovery - called, called - fatigue, fatigue - recovery};
    }
  }

  /** Where capacity meets the load. */
  private record Bend(double load) implements ODEEventDetector {

    @Override
    public double g(ODEStateAndDerivative state) {
      return state.getPrimaryState()[2] - (1 - load);
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(1);
    }

    @Override
    public int getMaxIterationCount() {
      return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, 1e-12, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> Action.RESET_DERIVATIVES;
    }
  }
}
