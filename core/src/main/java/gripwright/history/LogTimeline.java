package gripwright.history;

import gripwright.athlete.Athlete;
import gripwright.finding.ModelPath;
import gripwright.log.FeltPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.schedule.Happened;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The log of an athlete, read once for a plan. Immutable.
 *
 * <p>The log covers the plan once a session of it is logged as trained or skipped on its first day
 * or later. Sessions are known up to the last such entry. A later entry on climbing, pain or a
 * session of another name shows that the days before it are past too; a session may still follow on
 * its own day.
 */
public final class LogTimeline {

  /** Number of weeks before a plan that are read, equal to the weeks of return after clearance. */
  public static final int WEEKS_BACK = 12;

  private final Plan plan;
  private final Athlete athlete;
  private final Log log;
  private final Set<String> names;
  private final Optional<LocalDate> lastKnownDay;

  /** All pain of the log, computed on first use. */
  private @Nullable List<FeltPain> pains;

  private LogTimeline(Plan plan, Athlete athlete, Log log) {
    this.plan = plan;
    this.athlete = athlete;
    this.log = log;
    this.names =
        plan.blocks().stream()
            .flatMap(b -> b.contentFor(athlete.name()).sessions().stream())
            .map(SessionPlan::name)
            .collect(Collectors.toSet());
    this.lastKnownDay = lastSession().map(this::orLater);
  }

  /**
   * Reads a log.
   *
   * @param plan the plan
   * @param athlete one of the plan's athletes
   * @param log the athlete's log; may be empty
   * @throws IllegalArgumentException if the plan is not for this athlete, begins before the
   *     athlete's date of birth, or the log is another athlete's
   */
  public static LogTimeline of(Plan plan, Athlete athlete, Log log) {
    if (!plan.athletes().contains(athlete.name())) {
      throw new IllegalArgumentException(
          "plan "
              + plan.name()
              + " is for "
              + String.join(", ", plan.athletes())
              + ", not for "
              + athlete.name());
    }
    if (plan.from().isBefore(athlete.born())) {
      throw new IllegalArgumentException(
          "plan "
              + plan.name()
              + " begins on "
              + plan.from()
              + ", before the date of birth "
              + athlete.born());
    }
    log.requireOf(athlete);
    return new LogTimeline(plan, athlete, log);
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** The athlete. */
  public Athlete athlete() {
    return athlete;
  }

  /** The log. */
  public Log log() {
    return log;
  }

  /** Returns all pain of the log, in the order of its entries. */
  public List<FeltPain> pains() {
    List<FeltPain> known = pains;
    if (known == null) {
      known = FeltPain.of(log, athlete.injuries());
      pains = known;
    }
    return known;
  }

  /** Returns the log reduced to the entries before a day. */
  public LogTimeline before(LocalDate day) {
    List<LogEntry> earlier = log.entries().stream().filter(e -> e.date().isBefore(day)).toList();
    return earlier.size() == log.entries().size()
        ? this
        : new LogTimeline(plan, athlete, new Log(log.athlete(), earlier));
  }

  /** Returns the log reduced to the entries before the plan's first day. */
  public LogTimeline withoutPlanDays() {
    return before(plan.from());
  }

  /** Returns whether the log has an entry within the days of the plan. */
  public boolean coversPlanDays() {
    return log.entries().stream().anyMatch(e -> inPlan(e.date()));
  }

  /** Returns the position of an entry of the log, from 0. */
  public int entry(LogEntry entry) {
    return log.entries().indexOf(entry);
  }

  /**
   * Returns the log entry of a past session.
   *
   * @throws IndexOutOfBoundsException if it is not in this log
   */
  public LogEntry.Trained line(Happened happened) {
    return (LogEntry.Trained) log.entries().get(happened.entry());
  }

  private Optional<LocalDate> lastSession() {
    return log.entries().stream()
        .filter(this::isOfPlan)
        .map(LogEntry::date)
        .max(Comparator.naturalOrder());
  }

  private boolean isOfPlan(LogEntry entry) {
    return inPlan(entry.date())
        && entry instanceof LogEntry.OfSession line
        && names.contains(line.session());
  }

  /** Returns whether an entry is a session whose name is not in the plan. */
  private boolean isOther(LogEntry entry) {
    return entry instanceof LogEntry.Trained trained && !names.contains(trained.session());
  }

  /**
   * Returns sessions trained during the plan whose names are not in it; their fingers count in gaps
   * between sessions.
   */
  public List<LogEntry.Trained> others() {
    return log.of(LogEntry.Trained.class).stream()
        .filter(this::isOther)
        .filter(t -> inPlan(t.date()) && !isPast(t.date()))
        .toList();
  }

  /**
   * Returns trained sessions that are in no plan, from {@link #WEEKS_BACK} weeks before this plan
   * to its end.
   *
   * @param earlier the schedules of the athlete's plans that began before this one
   */
  public List<LogEntry.Trained> beside(List<Schedule> earlier) {
    LocalDate since = plan.from().minusWeeks(WEEKS_BACK);
    return Stream.concat(
            log.of(LogEntry.Trained.class).stream()
                .filter(t -> t.date().isBefore(plan.from()) && !t.date().isBefore(since)),
            others().stream())
        .filter(line -> earlier.stream().noneMatch(other -> has(other, line)))
        .sorted(Comparator.comparing(LogEntry.Trained::date))
        .toList();
  }

  private static boolean has(Schedule schedule, LogEntry.Trained line) {
    return schedule.sessions().stream()
        .anyMatch(
            session ->
                session.happened().isPresent()
                    && session.date().equals(line.date())
                    && session.name().equals(line.session()));
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

  /** Returns the last day whose sessions are known; empty if there is none. */
  public Optional<LocalDate> lastKnownDay() {
    return lastKnownDay;
  }

  /** Returns whether the sessions of a day are known. */
  public boolean isPast(LocalDate day) {
    return lastKnownDay.isPresent() && !day.isAfter(lastKnownDay.get());
  }

  /**
   * Returns whether all days of a place are in the past.
   *
   * @param place a place in a schedule
   * @param weeks the weeks of that schedule
   */
  public boolean isPast(ModelPath place, List<PlanWeek> weeks) {
    return place.steps().stream()
        .filter(step -> step.kind().equals("date"))
        .map(step -> LocalDate.parse(step.name()))
        .findFirst()
        .map(this::isPast)
        .orElseGet(() -> weeks.stream().anyMatch(w -> w.path().contains(place) && isPast(w.to())));
  }

  /**
   * Returns whether pain that stops training was logged between the last session and a week.
   *
   * @param last day of the last session; empty if the plan had none yet
   */
  public boolean hurts(Optional<LocalDate> last, LocalDate first) {
    return pains().stream()
        .filter(FeltPain::stops)
        .map(FeltPain::date)
        .filter(day -> !day.isBefore(plan.from()) && day.isBefore(first))
        .anyMatch(day -> last.isEmpty() || !day.isBefore(last.get()));
  }

  /** Returns the sessions logged in a week, as a log. */
  public Log ofWeek(LocalDate first) {
    List<LogEntry> lines =
        log.entries().stream()
            .filter(LogEntry.OfSession.class::isInstance)
            .filter(e -> !e.date().isBefore(first) && e.date().isBefore(first.plusDays(7)))
            .filter(e -> isPast(e.date()))
            .toList();
    return new Log(log.athlete(), lines);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LogTimeline timeline
        && plan.equals(timeline.plan)
        && athlete.equals(timeline.athlete)
        && log.equals(timeline.log);
  }

  @Override
  public int hashCode() {
    return Objects.hash(plan, athlete, log);
  }

  @Override
  public String toString() {
    return "log of " + log.athlete() + " beside " + plan.name();
  }
}
