package gripwright.strength;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.GripStructure;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.hand.Structure;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Loads known to be light without a test: a total load of at most a share of body mass, by fingers,
 * hands and edge. Such a load is never hard. All numbers are the library's own. A hold that has no
 * row here, such as one on a shallower edge, on two fingers or on one, has no known light load.
 *
 * <table>
 * <caption>Greatest load as a share of body mass</caption>
 * <tr><th>how</th><th>adult</th><th>restricted</th></tr>
 * <tr><td>two hands, four fingers</td><td>0.6, on 35 mm or more 0.8</td><td>0.4</td></tr>
 * <tr><td>two hands, three open fingers</td><td>0.4</td><td>0.25</td></tr>
 * <tr><td>one hand, four fingers</td><td>0.25</td><td>0.15</td></tr>
 * </table>
 */
public final class KnownLight {

  /** Least depth with a known light load, in mm. */
  private static final double LEAST_EDGE = 18;

  /** Depth from which the share of four fingers on two hands is higher, in mm. */
  private static final double DEEP_EDGE = 35;

  /** Age in months below which the restricted column applies and no test is advised: under 16. */
  public static final long YOUNG_MONTHS = 192;

  /** Weeks after clearance during which the restricted column applies. */
  private static final long WEEKS_AFTER_CLEARANCE = 12;

  private KnownLight() {}

  /**
   * Returns the greatest total load that is known to be light.
   *
   * @param setup grip, edge and hands, hanging or lifting
   * @param bodyMass body mass on the day
   * @param restricted true for the restricted column, see {@link #restricted}
   * @return empty if no load is known to be light
   */
  public static Optional<Load> most(Setup setup, Load bodyMass, boolean restricted) {
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(bodyMass, "bodyMass");
    double depth = setup.edge().millimetres();
    if (depth < LEAST_EDGE) {
      return Optional.empty();
    }
    int fingers = setup.grip().fingers().count();
    boolean both = setup.hands() == Hands.BOTH;
    if (fingers == 4) {
      double adult = both ? (depth < DEEP_EDGE ? 0.6 : 0.8) : 0.25;
      return Optional.of(bodyMass.times(restricted ? (both ? 0.4 : 0.15) : adult));
    }
    return both && fingers == 3 && setup.grip().structure() == GripStructure.OPEN
        ? Optional.of(bodyMass.times(restricted ? 0.25 : 0.4))
        : Optional.empty();
  }

  /**
   * Returns whether the restricted column applies: under 16, with an injury of a finger in use that
   * is not cleared, and within 12 weeks of its clearance. Cleared skin has no such period.
   *
   * @param setup which fingers of which hands are in use
   * @param day the day of the exercise
   */
  public static boolean restricted(Athlete athlete, Setup setup, LocalDate day) {
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(day, "day");
    return isUnder16(athlete, day)
        || athlete.injuries().stream().anyMatch(i -> uses(setup, i) && restricts(i, day));
  }

  /**
   * Returns whether tests are not allowed: under 16, or with an uncleared injury of a finger in
   * use.
   */
  public static boolean forbidsTests(Athlete athlete, Setup setup, LocalDate day) {
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(day, "day");
    return isUnder16(athlete, day)
        || athlete.injuries().stream().anyMatch(i -> uses(setup, i) && i.openOn(day));
  }

  /** Returns whether an athlete is under 16 on a day. */
  public static boolean isUnder16(Athlete athlete, LocalDate day) {
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(day, "day");
    return athlete.ageInMonths(day) < YOUNG_MONTHS;
  }

  private static boolean uses(Setup setup, Injury injury) {
    return setup.grip().fingers().has(injury.finger())
        && injury.side().map(setup.hands().sides()::contains).orElse(true);
  }

  private static boolean restricts(Injury injury, LocalDate day) {
    boolean after =
        injury.structure() != Structure.SKIN
            && injury
                .cleared()
                .filter(on -> !day.isBefore(on))
                .filter(on -> day.isBefore(on.plusWeeks(WEEKS_AFTER_CLEARANCE)))
                .isPresent();
    return after || injury.openOn(day);
  }
}
