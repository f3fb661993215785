package gripwright.rule.view;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Prerequisites;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.NavigableMap;

/** The state of an athlete on a day. */
final class AthleteView {

  /** Divisor for the elapsed part of a month, so that no month exceeds 1. */
  private static final double DAYS = 31;

  /** Tolerance when months are compared, far below a day. */
  private static final double TOLERANCE = 1e-9;

  final Athlete athlete;
  final LocalDate date;
  private final NavigableMap<LocalDate, Load> bodyMasses;
  private final LocalDate planFrom;
  private final double age;
  private final double trainedMonths;

  AthleteView(
      Athlete athlete,
      NavigableMap<LocalDate, Load> bodyMasses,
      LocalDate date,
      LocalDate planFrom) {
    this.athlete = athlete;
    this.bodyMasses = bodyMasses;
    this.date = date;
    this.planFrom = planFrom;
    long months = athlete.ageInMonths(date);
    long days = ChronoUnit.DAYS.between(athlete.born().plusMonths(months), date);
    age = Unit.MONTH.toBase(months + days / DAYS);
    trainedMonths = athlete.trained().monthsOn(date, planFrom);
  }

  /** Returns the age in seconds, exact on each monthly birthday and interpolated in between. */
  double age() {
    return age;
  }

  double trained() {
    return Unit.MONTH.toBase(trainedMonths);
  }

  /** Returns how long a grip has been used, in seconds; 0 if it is not familiar. */
  double familiar(String grip) {
    return Unit.MONTH.toBase(familiarMonths(grip));
  }

  private double familiarMonths(String grip) {
    return athlete.familiar().stream()
        .filter(f -> f.grip().equals(grip))
        .mapToDouble(f -> f.experience().monthsOn(date, planFrom))
        .max()
        .orElse(0);
  }

  double bodyMass() {
    Map.Entry<LocalDate, Load> logged = bodyMasses.floorEntry(date);
    return (logged == null ? athlete.bodyMass() : logged.getValue()).kilograms();
  }

  boolean injured() {
    return athlete.injuries().stream().anyMatch(i -> i.openOn(date));
  }

  /**
   * Returns whether the athlete meets the prerequisites of a grip and of any grip that it replaces.
   */
  boolean meetsNeeds(Grip grip) {
    Prerequisites needs = grip.allNeeds();
    return trainedMonths >= needs.trainedMonths() - TOLERANCE
        && needs.ability().map(a -> athlete.ability().compareTo(a) >= 0).orElse(true)
        && needs.familiar().entrySet().stream()
            .allMatch(e -> familiarMonths(e.getKey()) >= e.getValue() - TOLERANCE);
  }
}
