package gripwright.plausibility;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Load;
import java.time.LocalDate;

/**
 * Whether a total load may be meant as what was added to body mass: on two hands and four fingers,
 * less than body mass with all assistance that there is, or at most half of body mass. Both numbers
 * are our own. Nothing is doubted in the first year of training and within a year of an injury,
 * when loads are light.
 */
final class TotalOrAdded {

  private static final double HALF = 0.5;

  /** Scales, and days, differ by this share of body mass; our own number. */
  private static final double SCALES = 0.03;

  private static final int MONTHS = 12;
  private static final double TOLERANCE = 1e-9;

  private final Known known;
  private final Athlete athlete;

  TotalOrAdded(Known known) {
    this.known = known;
    this.athlete = known.athlete();
  }

  /** Tells whether a total load on a day may be meant as added. */
  boolean inDoubt(Setup setup, Load load, LocalDate day) {
    if (setup.hands() != Hands.BOTH
        || setup.lifting()
        || setup.grip().fingers().count() < FingerSet.FOUR.count()
        || isNew(day)
        || athlete.injuries().stream().anyMatch(injury -> injury.isNear(day))) {
      return false;
    }
    double mass = known.bodyMassOn(day).kilograms();
    double assist =
        athlete.equipment().assist().map(Equipment.Steps::limit).orElse(Load.ZERO).kilograms();
    return load.kilograms() < mass * (1 - SCALES) - assist - TOLERANCE
        || load.kilograms() <= mass * HALF + TOLERANCE;
  }

  private boolean isNew(LocalDate day) {
    return athlete.trained().monthsOn(day, known.firstDay().orElse(day)) < MONTHS;
  }
}
