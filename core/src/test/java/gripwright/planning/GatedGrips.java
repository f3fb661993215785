package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** What a grip asks of an athlete, calculated apart from the rules. */
final class GatedGrips {

  private static final double DAYS_IN_MONTH = 365.25 / 12;

  private GatedGrips() {}

  /** Returns whether a grip asks for anything. */
  static boolean gated(Grip grip) {
    return split(grip) || single(grip) || !grip.needs().isNone();
  }

  private static boolean split(Grip grip) {
    return grip.family() == GripFamily.SPLIT;
  }

  private static boolean single(Grip grip) {
    return grip.family() == GripFamily.SINGLE;
  }

  /** Returns the rule that prevents a grip on a day, if the athlete lacks something. */
  static Optional<String> missing(GeneratedSeason season, Grip grip, LocalDate day) {
    Athlete athlete = season.athlete();
    if (Period.between(athlete.born(), day).getYears() < 16) {
      if (split(grip) || single(grip)) {
        return Optional.of("youth-grip");
      }
    } else {
      double months = months(athlete.trained(), season, day);
      if (split(grip) && (months < 24 || athlete.ability().ircra() < 18)) {
        return Optional.of("split-grip-gate");
      }
      if (single(grip) && (months < 60 || athlete.ability().ircra() < 24)) {
        return Optional.of("single-finger-gate");
      }
    }
    return needs(season, grip, day) ? Optional.of("grip-needs-gate") : Optional.empty();
  }

  private static boolean needs(GeneratedSeason season, Grip grip, LocalDate day) {
    Athlete athlete = season.athlete();
    boolean familiar = true;
    for (var asked : grip.needs().familiar().entrySet()) {
      double has =
          athlete.familiar().stream()
              .filter(f -> f.grip().equals(asked.getKey()))
              .mapToDouble(f -> months(f.experience(), season, day))
              .max()
              .orElse(0);
      familiar &= has >= asked.getValue() - 1e-9;
    }
    return !familiar
        || months(athlete.trained(), season, day) < grip.needs().trainedMonths() - 1e-9
        || grip.needs().ability().map(a -> athlete.ability().ircra() < a.ircra()).orElse(false);
  }

  /** Returns the months of experience on a day. */
  static double months(Athlete.Experience experience, GeneratedSeason season, LocalDate day) {
    LocalDate since = experience.asOf().orElse(season.plan().from());
    return experience.months() + ChronoUnit.DAYS.between(since, day) / DAYS_IN_MONTH;
  }
}
