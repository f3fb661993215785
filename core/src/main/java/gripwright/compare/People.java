package gripwright.compare;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Setup;
import gripwright.protocol.Level;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Who a comparison is about: an athlete, or the persons of a cohort. */
interface People {

  /** Returns the name of the athlete or the cohort. */
  String name();

  /** Returns how many persons are drawn; 0 for an athlete. */
  int size();

  /**
   * Prepares the setups that the arms use.
   *
   * @param setups in the order of their places
   * @param pulleys whether pulleys are measured
   */
  Prepared prepare(List<Setup> setups, boolean pulleys);

  /** Returns the athlete for whom the plans of arms are compiled. */
  Athlete planned(String name);

  /**
   * Returns the load of a hold, as a share of the maximum or in kg.
   *
   * @param seconds time of the hold
   * @return empty if it can't be given, which {@link #refusal} explains
   */
  Optional<Amount> load(Setup setup, Level level, double seconds);

  /** Returns why a setup can't be trained or has no load; empty if it can. */
  Optional<Finding> refusal(Setup setup, Level level, double seconds);

  /** Returns the share of the test that a load has; empty if there is no test of the setup. */
  OptionalDouble shareOfTest(Setup setup, double kilograms);

  /**
   * A load that follows from a person.
   *
   * @param kind how
   * @param value the share or the kg
   */
  record Amount(Program.Kind kind, double value) {}

  /** Persons with numbers for the setups of all arms. Thread-safe. */
  interface Prepared {

    /** Returns the typical athlete at the published parameters. */
    Person reference();

    /** Returns a person of the cohort at the published parameters. */
    Person member(int number);

    /** Returns the names of the parameters that are drawn. */
    List<String> inputs();

    /**
     * Returns the typical athlete with other parameters of the models.
     *
     * @param deviates standard normal deviates, in the order of {@link #inputs}
     */
    Person drawn(double[] deviates);
  }
}
