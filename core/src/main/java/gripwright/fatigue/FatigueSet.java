package gripwright.fatigue;

import gripwright.strength.ForceTime;

/** A named set of numbers for a model of fatigue, with the range of loads where it is valid. */
public sealed interface FatigueSet permits FatigueRates, PoolRates {

  /** Returns the name of the set in results and pages. */
  String name();

  /** Returns the lightest load where the set is valid, as a fraction of MVC. */
  double from();

  /** Returns the heaviest load where it is valid. */
  double to();

  /** Returns the optimistic end of the interval: the same with less fatigue. */
  FatigueSet optimistic();

  /** Returns the pessimistic end of the interval: the same with more fatigue. */
  FatigueSet pessimistic();

  /**
   * Returns the same set with another rate of fatigue.
   *
   * @param factor on the rate, above 0; 2 is twice as much fatigue
   */
  FatigueSet times(double factor);

  /** Returns fresh fingers that tire by this set. */
  Fingers fresh();

  /**
   * Returns the greatest load that fresh fingers hold for a time.
   *
   * @param seconds 0 s or more
   * @return fraction of MVC, above 0 and at most 1; non-increasing in time
   * @throws IllegalArgumentException if the time is negative or not a number
   */
  double greatestLoad(double seconds);

  /**
   * Tells whether a load, as a fraction of MVC, is in the range for which the set was fitted or
   * published.
   */
  default boolean validAt(double ofMvc) {
    return ofMvc >= from() && ofMvc <= to();
  }

  /**
   * Turns a fraction of the greatest load held for 7 s into a fraction of MVC, by this set's own
   * {@link #greatestLoad}, so that the full 7 s maximum can be held for exactly 7 s. Rohmert's
   * curve gives a little more ({@code EnduranceLaw.ROHMERT.share(7)}).
   *
   * @param ofReference load divided by the reference maximum, 0 or more
   */
  default double ofMvc(double ofReference) {
    return ofReference * greatestLoad(ForceTime.REFERENCE_SECONDS);
  }
}
