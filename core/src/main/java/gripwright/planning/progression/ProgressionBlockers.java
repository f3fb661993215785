package gripwright.planning.progression;

import gripwright.athlete.PainReport;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.history.LogTimeline;
import gripwright.history.LoggedWork;
import gripwright.history.PainReports;
import gripwright.log.Log;
import gripwright.log.LogEntry.Pain;
import gripwright.log.RisingPain;
import gripwright.plan.Advance;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.planning.load.Dose;
import gripwright.planning.load.HeldLoad;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What in a log prevents harder work: pain, missed sets, too much effort, and weeks in which an
 * exercise was left out; and the steps that a log has earned.
 *
 * <p>With pain of 0 to 2 training continues; above 2 and up to 5 the next two sessions of a grip
 * that uses the finger stay the same or get lighter, and so do all sessions while pain stops it
 * (pain-monitoring model, Silbernagel 2007, whose limit is 5; the lower limit is common practice).
 * The same applies to the next two sessions of an exercise after missed sets or too much effort.
 * Effort is too high above the limit of the {@code advance} line, else above the exercise's own
 * effort level, else above 9 of 10, the library's own choice.
 */
public final class ProgressionBlockers {

  static final int SESSIONS_HELD = 2;
  private static final double MOST_EFFORT = 9;

  private final Plan plan;
  private final Log log;
  private final LogTimeline timeline;
  private final List<DatedSession> soFar;
  private final boolean silent;

  /**
   * Known answers, which depend only on days before the week in question and never change later.
   */
  private final Map<Question, List<Cause>> known;

  private ProgressionBlockers(
      Plan plan, LogTimeline timeline, List<DatedSession> soFar, Map<Question, List<Cause>> known) {
    this.plan = plan;
    this.log = timeline.log();
    this.timeline = timeline;
    this.soFar = List.copyOf(soFar);
    this.silent = log.entries().stream().allMatch(e -> e.date().isBefore(plan.from()));
    this.known = known;
  }

  /** Prepares the log before anything is planned. */
  public static ProgressionBlockers of(Plan plan, LogTimeline timeline) {
    return new ProgressionBlockers(plan, timeline, List.of(), new HashMap<>());
  }

  /** Returns the same with the sessions before the week that is planned. */
  public ProgressionBlockers after(List<DatedSession> sessions) {
    return new ProgressionBlockers(plan, timeline, sessions, known);
  }

  /**
   * An exercise with its past.
   *
   * @param exercise the line of the plan
   * @param grip its grip
   * @param pace when it gets harder, if it does
   */
  record Candidate(Exercise exercise, Grip grip, Optional<Advance.Pace> pace) {

    private Optional<Advance.WhenLogged> logged() {
      return pace.filter(Advance.WhenLogged.class::isInstance).map(Advance.WhenLogged.class::cast);
    }

    double mostEffort() {
      OptionalDouble written =
          logged().map(Advance.WhenLogged::effortAtMost).orElse(OptionalDouble.empty());
      if (written.isPresent()) {
        return written.getAsDouble();
      }
      return exercise.scheme().written().stream()
          .map(Scheme.Hold::level)
          .filter(Level.Effort.class::isInstance)
          .mapToDouble(level -> ((Level.Effort) level).outOfTen())
          .max()
          .orElse(MOST_EFFORT);
    }

    private double mostPain() {
      return Math.min(
          Pain.LIMIT,
          logged()
              .map(Advance.WhenLogged::painAtMost)
              .orElse(OptionalDouble.empty())
              .orElse(RisingPain.MILD));
    }

    private boolean isWork(PlannedExercise trained) {
      return !trained.warmUp() && is(trained.protocol(), trained.setup());
    }

    private boolean is(String protocol, Setup setup) {
      return protocol.equals(exercise.protocol().name())
          && setup.grip().name().equals(grip.name())
          && setup.hands() == exercise.hands()
          && setup.lifting() == exercise.lifting();
    }
  }

  /** The key for an exercise and the weeks since the last step opportunity. */
  private record Question(
      String protocol,
      String grip,
      Hands hands,
      boolean lifting,
      double effort,
      double pain,
      LocalDate since,
      LocalDate before) {}

  private List<LoggedWork> facts(Candidate candidate, LocalDate before) {
    return LoggedWork.inPlan(
        timeline, soFar, before, candidate::is, candidate.exercise().scheme().setsUpTo());
  }

  /** Returns the last logged work with a known load. */
  private static Optional<LoggedWork> last(List<LoggedWork> facts) {
    return facts.stream()
        .filter(f -> f.done().isPresent() && f.load().isPresent())
        .reduce((first, second) -> second);
  }

  /** Returns whether less than the planned load was used between two days for a known cause. */
  private boolean cutShort(Candidate candidate, LocalDate since, LocalDate before) {
    List<LoggedWork> facts =
        facts(candidate, before).stream().filter(f -> !f.date().isBefore(since)).toList();
    return facts.stream().anyMatch(LoggedWork::lighter)
        && (facts.stream().anyMatch(f -> f.trouble(candidate.mostEffort()).isPresent())
            || painReports(candidate, before).stream().anyMatch(a -> !a.date().isBefore(since)));
  }

  /**
   * Returns the load of an exercise when it was last trained before a day, if the log limited it
   * then: that load returns before anything else gets harder.
   *
   * @param line its place in the plan; empty for the greatest load of all equal exercises
   */
  Optional<HeldLoad> held(Candidate candidate, Optional<ModelPath> line, LocalDate before) {
    if (silent) {
      return Optional.empty();
    }
    return HeldLoad.last(soFar, before, candidate::isWork, line)
        .filter(last -> last.byLog() || cutShort(candidate, last.monday(plan.from()), before));
  }

  private List<PainReport> painReports(Candidate candidate, LocalDate before) {
    return PainReports.of(
            timeline.pains(), plan.from(), before, candidate.grip(), candidate.exercise().hands())
        .stream()
        .filter(a -> a.stops() || a.score() > candidate.mostPain())
        .toList();
  }

  /** Returns how often a grip was trained after one day and before another, as far as known. */
  private long sessionsBetween(Grip grip, LocalDate after, LocalDate before) {
    return soFar.stream()
        .filter(s -> s.date().isAfter(after) && s.date().isBefore(before))
        .filter(
            s -> s.exercises().stream().anyMatch(e -> e.setup().grip().name().equals(grip.name())))
        .count();
  }

  /** Returns whether a problem logged on one day still limits a grip's load on another. */
  private boolean isFresh(LocalDate logged, Grip grip, LocalDate day) {
    return sessionsBetween(grip, logged, day) < SESSIONS_HELD;
  }

  /**
   * Returns the reasons that prevent a step, the most severe first; empty if there are none.
   *
   * @param since first day of the weeks that may earn the step
   * @param before first day of the week that would be harder
   */
  List<Cause> reasons(Candidate candidate, LocalDate since, LocalDate before) {
    if (silent) {
      return List.of();
    }
    Question question =
        new Question(
            candidate.exercise().protocol().name(),
            candidate.grip().name(),
            candidate.exercise().hands(),
            candidate.exercise().lifting(),
            candidate.mostEffort(),
            candidate.mostPain(),
            since,
            before);
    List<Cause> answer = known.get(question);
    if (answer == null) {
      answer = found(candidate, since, before).stream().distinct().toList();
      known.put(question, answer);
    }
    return answer;
  }

  private List<Cause> found(Candidate candidate, LocalDate since, LocalDate before) {
    List<Cause> reasons = new ArrayList<>();
    painReports(candidate, before).stream()
        .filter(
            a ->
                (a.stops() && !a.date().isBefore(since))
                    || a.stopsOn(before)
                    || isFresh(a.date(), candidate.grip(), before))
        .sorted(Comparator.comparing(PainReport::score).reversed().thenComparing(PainReport::date))
        .forEach(a -> reasons.add(pain(a)));
    List<LoggedWork> facts = facts(candidate, before);
    for (LoggedWork fact : facts) {
      if (!fact.date().isBefore(since)) {
        fact.trouble(candidate.mostEffort()).ifPresent(reasons::add);
        if (fact.done().isEmpty()) {
          reasons.add(new Cause.LeftOut(fact.date()));
        }
      }
    }
    last(facts)
        .filter(f -> !f.date().isBefore(since) && f.lighter())
        .ifPresent(f -> reasons.add(lessLifted(f)));
    last(facts)
        .filter(f -> isFresh(f.date(), candidate.grip(), before))
        .flatMap(f -> f.trouble(candidate.mostEffort()))
        .ifPresent(reasons::add);
    farBelowBound(facts).ifPresent(reasons::add);
    held(candidate, Optional.empty(), before)
        .ifPresent(h -> reasons.add(new Cause.LoadReturnsFirst(h.load(), h.date())));
    boolean done = facts.stream().anyMatch(f -> f.done().isPresent() && !f.date().isBefore(since));
    if (timeline.isPast(since) && !done && !isTrained(candidate, since, before)) {
      reasons.add(new Cause.NotTrained(since, before.minusDays(1)));
    }
    return reasons;
  }

  /** Returns that less than half of a bound was done in the last two sessions, if it was. */
  private static Optional<Cause> farBelowBound(List<LoggedWork> facts) {
    List<LoggedWork> done = facts.stream().filter(f -> f.done().isPresent()).toList();
    if (done.size() < 2 || !done.get(done.size() - 2).farBelowBound()) {
      return Optional.empty();
    }
    LoggedWork last = done.get(done.size() - 1);
    return last.farBelowBound()
        ? Optional.of(
            new Cause.FarBelowBound(
                last.done().orElseThrow().sets().getAsInt(), last.sets().getAsInt(), last.date()))
        : Optional.empty();
  }

  private static Cause lessLifted(LoggedWork fact) {
    return new Cause.LessLifted(
        fact.load().orElseThrow(), fact.plannedLoad().orElseThrow(), fact.date());
  }

  private boolean isTrained(Candidate candidate, LocalDate since, LocalDate before) {
    return soFar.stream()
        .filter(s -> !s.date().isBefore(since) && s.date().isBefore(before))
        .flatMap(s -> s.exercises().stream())
        .anyMatch(candidate::isWork);
  }

  /**
   * Returns the greatest load allowed on a day after a problem: in the next two sessions of the
   * grip the last load; empty without a problem, or after those sessions.
   *
   * @param edge the edge of that day; there is no limit on a deeper edge than last time
   */
  Optional<Dose.Ceiling> ceiling(Candidate candidate, Length edge, LocalDate day) {
    if (silent) {
      return Optional.empty();
    }
    Optional<LoggedWork> last = last(facts(candidate, day));
    if (last.isEmpty() || edge.compareTo(last.get().done().orElseThrow().setup().edge()) > 0) {
      return Optional.empty();
    }
    Optional<Cause> trouble =
        last.filter(f -> isFresh(f.date(), candidate.grip(), day))
            .flatMap(f -> f.trouble(candidate.mostEffort()))
            .or(
                () ->
                    painReports(candidate, day).stream()
                        .filter(a -> a.stopsOn(day) || isFresh(a.date(), candidate.grip(), day))
                        .max(
                            Comparator.comparing(PainReport::score).thenComparing(PainReport::date))
                        .map(ProgressionBlockers::pain));
    Load load = last.get().load().orElseThrow();
    return trouble.map(
        why -> new Dose.Ceiling(load, new Cause.NoMoreThanOn(last.get().date(), why)));
  }

  /**
   * Returns the greatest load allowed on a day while a load returns that the log had limited; empty
   * if there is none.
   *
   * @param place the exercise's place in the model
   * @param edge the edge of that day; there is no limit on a deeper edge than before
   * @param eased true if the week is eased: no load returns in it
   */
  Optional<Dose.Ceiling> comingBack(
      Candidate candidate, ModelPath place, Length edge, LocalDate day, boolean eased) {
    double rise = plan.weeklyRise().orElse(Plan.STANDARD_WEEKLY_RISE);
    return held(candidate, Optional.of(HeldLoad.line(place)), day)
        .filter(held -> edge.compareTo(held.edge()) <= 0)
        .map(held -> held.next(rise, !day.isAfter(held.monday(plan.from()).plusDays(6)), eased));
  }

  /** Counts the steps earned in the log before a day and not lost again. */
  int earned(Candidate candidate, Advance.WhenLogged pace, LocalDate before) {
    return new EarnedSteps(plan.from(), pace, candidate.mostEffort())
        .before(before, facts(candidate, before), painReports(candidate, before));
  }

  private static Cause pain(PainReport report) {
    return new Cause.Pain(report.date(), report.score(), report.rising(), report.where());
  }
}
