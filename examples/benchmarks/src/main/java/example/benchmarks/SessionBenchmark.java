package example.benchmarks;

import gripwright.fatigue.Bout;
import gripwright.fatigue.Course;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Muscle;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Simulates one session with the fatigue model: by its closed form, and by a general-purpose
 * integrator.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SessionBenchmark {

  private static final FatigueRates RATES = FatigueRates.FINGERS_INTENSE;
  private static final double TOLERANCE = 1e-10;

  /** Which session: see {@link #write}. */
  @Param({"repeaters", "hour", "maximal"})
  String session = "repeaters";

  private double[] seconds = {};
  private double[] loads = {};
  private List<Bout> bouts = List.of();
  private Muscle muscle = new Muscle(RATES);

  /**
   * Writes the session: {@code repeaters} is 4 sets of 6 holds of 7 s with 3 s between at 60 %;
   * {@code hour} is 360 such holds without a break at 40 %; {@code maximal} is 24 such holds with
   * maximal effort.
   */
  @Setup
  public void write() {
    bouts =
        switch (session) {
          case "hour" -> holds(1, 360, 0.4);
          case "maximal" -> holds(1, 24, 1);
          default -> holds(4, 6, 0.6);
        };
    seconds = bouts.stream().mapToDouble(Bout::seconds).toArray();
    loads = bouts.stream().mapToDouble(Bout::ofMvc).toArray();
    muscle = new Muscle(RATES);
  }

  private static List<Bout> holds(int sets, int repetitions, double ofMvc) {
    List<Bout> bouts = new ArrayList<>();
    for (int set = 0; set < sets; set++) {
      for (int i = 0; i < repetitions; i++) {
        bouts.add(Bout.hold(7, ofMvc));
        bouts.add(Bout.rest(i == repetitions - 1 ? 180 : 3));
      }
    }
    return bouts;
  }

  /** The closed form, all holds and rests; returns the fatigued share at the end. */
  @Benchmark
  public double closedForm() {
    muscle.freshen();
    for (int i = 0; i < seconds.length; i++) {
      if (loads[i] > 0) {
        muscle.hold(loads[i], seconds[i]);
      } else {
        muscle.rest(seconds[i]);
      }
    }
    return muscle.fatigued();
  }

  /**
   * The same, with the capacity after every hold kept in a list that is allocated for each session.
   */
  @Benchmark
  public Course course() {
    return Course.of(RATES, bouts);
  }

  /** Integrates the published equations by Dormand and Prince's method with tolerance 1e-10. */
  @Benchmark
  public double dormandPrince() {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-12, 1000, TOLERANCE, TOLERANCE);
    double[] shares = {1, 0, 0};
    for (int i = 0; i < seconds.length; i++) {
      shares =
          integrator
              .integrate(new Law(loads[i]), new ODEState(0, shares), seconds[i])
              .getPrimaryState();
    }
    return shares[2];
  }

  /** Resting, active and fatigued share under a load, 0 for a rest. */
  private record Law(double load) implements OrdinaryDifferentialEquation {

    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double time, double[] y) {
      double lacking = load - y[1];
      double called = FatigueRates.DRIVE * (lacking > 0 && y[0] <= lacking ? y[0] : lacking);
      double fatigue = RATES.fatigue() * y[1];
      double recovery = RATES.recovery() * (load == 0 ? RATES.restMultiplier() : 1) * y[2];
      return new double[] {recovery - called, called - fatigue, fatigue - recovery};
    }
  }
}
