package gripwright.plausibility;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All data of one athlete. Immutable.
 *
 * @param athlete the athlete
 * @param log the athlete's log; may be empty
 * @param plans every plan of the athlete, compiled or not
 * @param schedules the compiled schedules of this athlete
 */
public record Known(Athlete athlete, Log log, List<Plan> plans, List<Schedule> schedules) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if the log is not the athlete's
   */
  public Known {
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(plans, "plans");
    Objects.requireNonNull(schedules, "schedules");
    log.requireOf(athlete);
    plans = List.copyOf(plans);
    schedules = List.copyOf(schedules);
  }

  /** Returns the first day of the first plan. */
  Optional<LocalDate> firstDay() {
    return plans.stream().map(Plan::from).min(Comparator.naturalOrder());
  }

  /** Returns the last day of the last plan. */
  Optional<LocalDate> lastDay() {
    return plans.stream().map(Plan::to).max(Comparator.naturalOrder());
  }

  /**
   * Returns the day on which the athlete's data is assumed to be true: the first of a plan, or else
   * the last of the log.
   */
  Optional<LocalDate> writtenOn() {
    return firstDay()
        .or(
            () ->
                log.entries().stream()
                    .map(LogEntry::date)
                    .filter(day -> day.isAfter(athlete.born()))
                    .max(Comparator.naturalOrder()));
  }

  /** Returns the last body mass logged up to a day, or else the athlete's written one. */
  Load bodyMassOn(LocalDate day) {
    return log.bodyMassOn(day).orElse(athlete.bodyMass());
  }

  /** Returns a finding at an entry of the log, with the athlete's name. */
  Finding ofLine(String code, Severity severity, int entry) {
    return Finding.of(code, severity, ModelPath.of("log", athlete.name()).then("entry", entry + 1))
        .with("athlete", athlete.name());
  }

  /** Returns a finding about the athlete, with the athlete's name. */
  Finding ofAthlete(String code, Severity severity, ModelPath place) {
    return Finding.of(code, severity, place).with("athlete", athlete.name());
  }

  static String rounded(Load load) {
    return Numbers.plain(load.kilograms(), 1) + " kg";
  }
}
