package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.StrongPain;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How far a log tells of a plan's sessions.
 *
 * <p>It tells of them once a session of the plan is logged as trained or skipped on the plan's
 * first day or later. They are known up to the last such line; a later line on climbing or pain, or
 * of a session that the plan does not have, says that the days before it are over as well, while
 * its own evening may still be trained.
 */
final class Heard {

  private final Plan plan;
  private final Log log;
  private final Set<String> names;
  private final Optional<LocalDate> until;

  Heard(Plan plan, Athlete athlete, Log log) {
    this.plan = plan;
    this.log = log;
    this.names =
        plan.blocks().stream()
            .flatMap(b -> b.contentFor(athlete.name()).sessions().stream())
            .map(SessionPlan::name)
            .collect(Collectors.toSet());
    this.until = lastSession().map(this::orLater);
  }

  private Optional<LocalDate> lastSession() {
    return log.entries().stream()
        .filter(this::isOfPlan)
        .map(LogEntry::date)
        .max(Comparator.naturalOrder());
  }

  private boolean isOfPlan(LogEntry entry) {
    Optional<String> name =
        entry instanceof LogEntry.Trained trained
            ? Optional.of(trained.session())
            : entry instanceof LogEntry.Skipped skipped
                ? Optional.of(skipped.session())
                : Optional.empty();
    return inPlan(entry.date()) && name.filter(names::contains).isPresent();
  }

  /** Tells whether a line is of a session whose name the plan does not have. */
  private boolean isOther(LogEntry entry) {
    return entry instanceof LogEntry.Trained trained && !names.contains(trained.session());
  }

  /**
   * Returns sessions of other names that were trained in the plan, whose days the log does not tell
   * of otherwise; the fingers worked count in gaps.
   */
  List<LogEntry.Trained> others() {
    return log.of(LogEntry.Trained.class).stream()
        .filter(this::isOther)
        .filter(t -> inPlan(t.date()) && !isPast(t.date()))
        .toList();
  }

  private boolean inPlan(LocalDate day) {
    return !day.isBefore(plan.from()) && !day.isAfter(plan.to());
  }

  private LocalDate orLater(LocalDate session) {
    LocalDate before =
        log.entries().stream()
            .filter(e -> e instanceof LogEntry.Climbed || e instanceof LogEntry.Pain || isOther(e))
            .map(LogEntry::date)
            .max(Comparator.naturalOrder())
            .map(day -> day.minusDays(1))
            .filter(session::isBefore)
            .orElse(session);
    return before.isAfter(plan.to()) ? plan.to() : before;
  }

  /** Returns the last day whose sessions are known; empty if the log tells of none. */
  Optional<LocalDate> until() {
    return until;
  }

  /** Tells whether the sessions of a day are known. */
  boolean isPast(LocalDate day) {
    return until.isPresent() && !day.isAfter(until.get());
  }

  /**
   * Tells whether pain that stops training was logged from the last session on, and before a week.
   *
   * @param last day of the last session; empty if there was none in the plan
   */
  boolean hurts(Optional<LocalDate> last, LocalDate first) {
    return StrongPain.of(log).stream()
        .map(StrongPain::date)
        .filter(day -> !day.isBefore(plan.from()) && day.isBefore(first))
        .anyMatch(day -> last.isEmpty() || !day.isBefore(last.get()));
  }

  /** Returns the sessions logged in a week, as a log. */
  Log ofWeek(LocalDate first) {
    List<LogEntry> lines =
        log.entries().stream()
            .filter(e -> e instanceof LogEntry.Trained || e instanceof LogEntry.Skipped)
            .filter(e -> !e.date().isBefore(first) && e.date().isBefore(first.plusDays(7)))
            .filter(e -> isPast(e.date()))
            .toList();
    return new Log(log.athlete(), lines);
  }

  /** Returns what a log said before a plan began. */
  static Log before(Log log, LocalDate from) {
    return new Log(
        log.athlete(), log.entries().stream().filter(e -> e.date().isBefore(from)).toList());
  }

  /** Tells whether a log has a line on a plan's first day or later, and not after its last. */
  static boolean speaks(Log log, Plan plan) {
    return log.entries().stream()
        .anyMatch(e -> !e.date().isBefore(plan.from()) && !e.date().isAfter(plan.to()));
  }
}
