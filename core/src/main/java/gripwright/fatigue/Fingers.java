package gripwright.fatigue;

/** Fingers that tire under load and recover at rest. Mutable and for one thread. */
public sealed interface Fingers permits Muscle, Pools {

  /**
   * Holds a load.
   *
   * @param ofMvc load as a fraction of MVC, above 0
   * @param seconds how long, 0 s or more
   * @return for how many seconds the load was carried: all of them if the hold was completed
   * @throws IllegalArgumentException if load or time is out of range or not finite
   */
  double hold(double ofMvc, double seconds);

  /**
   * Holds a load for at most a time and lets go when it can't be held any more.
   *
   * @param ofMvc load as a fraction of MVC, above 0
   * @param seconds the longest time, 0 s or more
   * @return for how many seconds the load was held
   * @throws IllegalArgumentException if load or time is out of range or not finite
   */
  double holdUpTo(double ofMvc, double seconds);

  /**
   * Rests.
   *
   * @param seconds how long, 0 s or more
   * @throws IllegalArgumentException if the time is negative or not finite
   */
  void rest(double seconds);

  /** Returns the capacity once the load is released, as a fraction of MVC, 0..1. */
  double reserve();
}
