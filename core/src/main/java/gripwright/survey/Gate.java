package gripwright.survey;

import gripwright.ability.Ability;
import gripwright.athlete.Athlete;
import gripwright.expression.Shortfall;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.grip.Grip;
import gripwright.grip.Prerequisites;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A built-in rule that stands against a grip, and what the athlete lacks.
 *
 * @param breach the broken rule
 * @param missing what is missing, one entry each; empty where a rule counts nothing
 */
public record Gate(Finding breach, List<Missing> missing) {

  /**
   * Something that is missing.
   *
   * @param what {@code training}, {@code ability}, the name of a grip, an injury such as {@code
   *     ring a2 left}, or the property that the rule looks at, such as {@code edge}
   * @param has what there is, such as {@code 14 months}
   * @param asked what the rule asks, such as {@code 24 months}
   */
  public record Missing(String what, Message has, Message asked) {}

  /** Copies the list. */
  public Gate {
    missing = List.copyOf(missing);
  }

  /** Finds out what is missing where a rule stands against a grip on a day. */
  static Gate of(Finding breach, Grip grip, Athlete athlete, LocalDate day) {
    return new Gate(
        breach,
        switch (breach.rule().orElse("")) {
          case "grip-needs-gate" -> needs(grip.needs(), athlete, day);
          case "injured-finger" -> injuries(grip, athlete, day);
          default -> counted(breach, athlete, day);
        });
  }

  /** Tells whether the rule closes the grip; a warning closes nothing. */
  public boolean closes() {
    return breach.blocks();
  }

  /** Returns the name of the rule. */
  public String rule() {
    return breach.rule().orElse(breach.code());
  }

  /** Returns the sentence of the rule. */
  public String message() {
    return String.valueOf(breach.arguments().getOrDefault("message", breach.code()));
  }

  private static List<Missing> counted(Finding breach, Athlete athlete, LocalDate day) {
    List<Missing> missing = new ArrayList<>();
    if (breach.arguments().get("missing") instanceof List<?> all) {
      for (Object each : all) {
        if (each instanceof Shortfall shortfall) {
          missing.add(
              shortfall.what().equals("trained")
                  ? new Missing("training", months(trained(athlete, day)), shortfall.limit())
                  : new Missing(shortfall.what(), shortfall.was(), shortfall.limit()));
        }
      }
    }
    return missing;
  }

  private static List<Missing> needs(Prerequisites needs, Athlete athlete, LocalDate day) {
    List<Missing> missing = new ArrayList<>();
    double trained = trained(athlete, day);
    if (trained < needs.trainedMonths()) {
      missing.add(new Missing("training", months(trained), months(needs.trainedMonths())));
    }
    Ability ability = athlete.ability();
    needs
        .ability()
        .filter(asked -> ability.compareTo(asked) < 0)
        .ifPresent(asked -> missing.add(new Missing("ability", graded(ability), graded(asked))));
    needs
        .familiar()
        .forEach(
            (grip, asked) -> {
              double has = familiar(athlete, grip, day);
              if (has < asked) {
                missing.add(new Missing(grip, months(has), months(asked)));
              }
            });
    return missing;
  }

  private static List<Missing> injuries(Grip grip, Athlete athlete, LocalDate day) {
    return athlete.injuries().stream()
        .filter(injury -> injury.openOn(day))
        .filter(injury -> grip.fingers().has(injury.finger()))
        .map(
            injury ->
                new Missing(
                    injury.toString(),
                    Clause.of("breach.open-since", "date", injury.from()),
                    Clause.of("breach.cleared")))
        .toList();
  }

  /** Months of structured finger training on a day. */
  static double trained(Athlete athlete, LocalDate day) {
    return athlete.trained().monthsOn(day, day);
  }

  /** Months with a grip on a day; 0 for one the athlete has not used. */
  static double familiar(Athlete athlete, String grip, LocalDate day) {
    return athlete.familiar().stream()
        .filter(f -> f.grip().equals(grip))
        .mapToDouble(f -> f.experience().monthsOn(day, day))
        .max()
        .orElse(0);
  }

  private static Message graded(Ability ability) {
    return new WrittenText(ability + ", IRCRA " + ability.ircra());
  }

  /** Writes whole months that have passed. */
  private static Message months(double months) {
    String whole = Numbers.plain(Math.floor(months + 1e-9), 0);
    return new WrittenText(whole + (whole.equals("1") ? " month" : " months"));
  }
}
