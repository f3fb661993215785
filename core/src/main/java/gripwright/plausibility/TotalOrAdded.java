package gripwright.plausibility;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Load;
import java.time.LocalDate;

/**
 * Decides whether a total load was probably meant as added load. That is assumed on two hands and
 * four fingers if the total is below body mass minus all available assistance, or at most half of
 * body mass; both limits are the library's own choice. Loads are not doubted in the first year of
 * training or within a year of an injury, when light loads are expected.
 */
final class TotalOrAdded {

  private static final double HALF = 0.5;

  /** Tolerance for different scales and days, as a share of body mass; the library's own choice. */
  private static final double SCALES = 0.03;

  private static final int MONTHS = 12;
  private static final double TOLERANCE = 1e-9;

  private final Known known;
  private final Athlete athlete;

  TotalOrAdded(Known known) {
    this.known = known;
    this.athlete = known.athlete();
  }

  /** Returns whether a total load on a day was probably meant as added load. */
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
        athlete.allEquipment().stream()
            .flatMap(each -> each.assist().stream())
            .mapToDouble(steps -> steps.limit().kilograms())
            .max()
            .orElse(0);
    return load.kilograms() < mass * (1 - SCALES) - assist - TOLERANCE
        || load.kilograms() <= mass * HALF + TOLERANCE;
  }

  private boolean isNew(LocalDate day) {
    return athlete.trained().monthsOn(day, known.firstDay().orElse(day)) < MONTHS;
  }
}
