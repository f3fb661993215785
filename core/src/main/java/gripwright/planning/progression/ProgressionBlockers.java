package gripwright.planning.progression;

import gripwright.athlete.PainReport;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.history.ExerciseMatch;
import gripwright.history.LogTimeline;
import gripwright.history.LoggedWork;
import gripwright.history.PainReports;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
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
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What in a log stands against harder work: pain, missed sets, too much effort, and weeks in which
 * an exercise was left out; and what a log has earned.
 *
 * <p>Pain of 0 to 2 goes on; above 2 and up to 5 the next two sessions of a grip that uses the
 * finger are the same or lower (pain-monitoring model, Silbernagel 2007, whose limit is 5; the
 * lower limit is common practice). After missed sets or too much effort so are the next two of the
 * exercise. Effort is too high above what the line on progress asks, else above what the exercise's
 * own level says, else above 9 of 10, the library's own choice.
 */
public final class ProgressionBlockers {

  private static final int SESSIONS_HELD = 2;
  private static final double MOST_EFFORT = 9;

  private final Plan plan;
  private final Log log;
  private final LogTimeline timeline;
  private final List<DatedSession> soFar;
  private final boolean silent;

  /** Answers rest on days before the week that is asked about, which later weeks leave alone. */
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

  /** Prepares to look at a log before anything is planned. */
  public static ProgressionBlockers of(Plan plan, LogTimeline timeline) {
    return new ProgressionBlockers(plan, timeline, List.of(), new HashMap<>());
  }

  /** Returns the same with the sessions up to the week that is planned. */
  public ProgressionBlockers after(List<DatedSession> sessions) {
    return new ProgressionBlockers(plan, timeline, sessions, known);
  }

  /**
   * An exercise whose past is asked for.
   *
   * @param exercise the line of the plan
   * @param grip its grip
   * @param pace when it gets harder, if it does
   */
  record Asked(Exercise exercise, Grip grip, Optional<Advance.Pace> pace) {

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

    private boolean is(String protocol, Setup setup) {
      return protocol.equals(exercise.protocol().name())
          && setup.grip().name().equals(grip.name())
          && setup.hands() == exercise.hands()
          && setup.lifting() == exercise.lifting();
    }
  }

  /** Weeks in a row since the last chance of a step, and an exercise. */
  private record Question(
      String protocol,
      String grip,
      Hands hands,
      boolean lifting,
      double effort,
      double pain,
      LocalDate since,
      LocalDate before) {}

  /** Returns what was done of an exercise since the plan began and before a day, oldest first. */
  private List<LoggedWork> facts(Asked asked, LocalDate before) {
    List<LoggedWork> facts = new ArrayList<>();
    for (LogEntry.Trained line : log.of(LogEntry.Trained.class)) {
      if (line.date().isBefore(plan.from()) || !line.date().isBefore(before)) {
        continue;
      }
      Optional<DatedSession> planned =
          soFar.stream()
              .flatMap(s -> s.happened().stream())
              .filter(h -> timeline.line(h).equals(line))
              .flatMap(h -> h.planned().stream())
              .findFirst();
      if (planned.isPresent()) {
        for (ExerciseMatch match : ExerciseMatch.of(planned.get(), line)) {
          fact(asked, line.date(), match).ifPresent(facts::add);
        }
      } else {
        line.done().stream()
            .filter(d -> asked.is(d.protocol(), d.setup()))
            .map(
                d ->
                    new LoggedWork(
                        line.date(), Optional.of(d), d.setsAsked(), d.load(), Optional.empty()))
            .forEach(facts::add);
      }
    }
    return facts;
  }

  private static Optional<LoggedWork> fact(Asked asked, LocalDate date, ExerciseMatch match) {
    boolean is =
        match.done().map(d -> asked.is(d.protocol(), d.setup())).orElse(false)
            || match.asked().map(e -> asked.is(e.protocol(), e.setup())).orElse(false);
    if (!is) {
      return Optional.empty();
    }
    OptionalInt written = match.done().map(Done::setsAsked).orElse(OptionalInt.empty());
    Optional<Load> wanted = match.asked().map(PlannedExercise::totalLoad);
    return Optional.of(
        new LoggedWork(
            date,
            match.done(),
            written.isPresent() ? written : match.setsAsked(),
            match.done().flatMap(Done::load).or(() -> wanted),
            wanted));
  }

  /** Returns what was trained last, as far as its load is known. */
  private static Optional<LoggedWork> last(List<LoggedWork> facts) {
    return facts.stream()
        .filter(f -> f.done().isPresent() && f.load().isPresent())
        .reduce((first, second) -> second);
  }

  /** Tells whether less was loaded than asked between two days, and something stood against it. */
  private boolean cutShort(Asked asked, LocalDate since, LocalDate before) {
    List<LoggedWork> facts =
        facts(asked, before).stream().filter(f -> !f.date().isBefore(since)).toList();
    return facts.stream().anyMatch(LoggedWork::lighter)
        && (facts.stream().anyMatch(f -> f.trouble(asked.mostEffort()).isPresent())
            || aches(asked, before).stream().anyMatch(a -> !a.date().isBefore(since)));
  }

  /**
   * Returns what was held of an exercise when it was last trained before a day, if the log held it
   * down then: its load comes back first, and nothing else gets harder.
   *
   * @param line where it stands in the plan; empty for the greatest of all alike
   */
  Optional<HeldLoad> held(Asked asked, Optional<ModelPath> line, LocalDate before) {
    if (silent) {
      return Optional.empty();
    }
    return HeldLoad.last(soFar, before, e -> asked.is(e.protocol(), e.setup()), line)
        .filter(last -> last.byLog() || cutShort(asked, last.monday(plan.from()), before));
  }

  private List<PainReport> aches(Asked asked, LocalDate before) {
    return PainReports.of(log, plan.from(), before, asked.grip(), asked.exercise().hands()).stream()
        .filter(a -> a.stops() || a.score() > asked.mostPain())
        .toList();
  }

  /** Tells how often a grip was trained after one day and before another, as far as is known. */
  private long sessionsBetween(Grip grip, LocalDate after, LocalDate before) {
    return soFar.stream()
        .filter(s -> s.date().isAfter(after) && s.date().isBefore(before))
        .filter(
            s -> s.exercises().stream().anyMatch(e -> e.setup().grip().name().equals(grip.name())))
        .count();
  }

  /** Tells whether what was told of a day still holds the load of a grip on another. */
  private boolean isFresh(LocalDate told, Grip grip, LocalDate day) {
    return sessionsBetween(grip, told, day) < SESSIONS_HELD;
  }

  /**
   * Returns what prevents a step, the most severe first; empty if nothing does.
   *
   * @param since first day of the weeks that may earn the step
   * @param before first day of the week that would be harder
   */
  List<Cause> reasons(Asked asked, LocalDate since, LocalDate before) {
    if (silent) {
      return List.of();
    }
    Question question =
        new Question(
            asked.exercise().protocol().name(),
            asked.grip().name(),
            asked.exercise().hands(),
            asked.exercise().lifting(),
            asked.mostEffort(),
            asked.mostPain(),
            since,
            before);
    List<Cause> answer = known.get(question);
    if (answer == null) {
      answer = found(asked, since, before).stream().distinct().toList();
      known.put(question, answer);
    }
    return answer;
  }

  private List<Cause> found(Asked asked, LocalDate since, LocalDate before) {
    List<Cause> reasons = new ArrayList<>();
    aches(asked, before).stream()
        .filter(
            a ->
                (a.stops() && !a.date().isBefore(since)) || isFresh(a.date(), asked.grip(), before))
        .sorted(Comparator.comparing(PainReport::score).reversed().thenComparing(PainReport::date))
        .forEach(a -> reasons.add(pain(a)));
    List<LoggedWork> facts = facts(asked, before);
    for (LoggedWork fact : facts) {
      if (!fact.date().isBefore(since)) {
        fact.trouble(asked.mostEffort()).ifPresent(reasons::add);
        if (fact.done().isEmpty()) {
          reasons.add(new Cause.LeftOut(fact.date()));
        }
      }
    }
    last(facts)
        .filter(f -> isFresh(f.date(), asked.grip(), before))
        .flatMap(f -> f.trouble(asked.mostEffort()))
        .ifPresent(reasons::add);
    held(asked, Optional.empty(), before)
        .ifPresent(h -> reasons.add(new Cause.LoadReturnsFirst(h.load(), h.date())));
    if (timeline.isPast(before.minusDays(1)) && !isTrained(asked, since, before)) {
      reasons.add(new Cause.NotTrained(since, before.minusDays(1)));
    }
    return reasons;
  }

  private boolean isTrained(Asked asked, LocalDate since, LocalDate before) {
    return soFar.stream()
        .filter(s -> !s.date().isBefore(since) && s.date().isBefore(before))
        .flatMap(s -> s.exercises().stream())
        .anyMatch(e -> asked.is(e.protocol(), e.setup()));
  }

  /**
   * Returns the most that may be loaded on a day after trouble: in the next two sessions of the
   * grip what was loaded last; empty without trouble, or once they are over.
   *
   * @param edge the edge of that day; on a deeper one than last there is no such limit
   */
  Optional<Dose.Ceiling> ceiling(Asked asked, Length edge, LocalDate day) {
    if (silent) {
      return Optional.empty();
    }
    Optional<LoggedWork> last = last(facts(asked, day));
    if (last.isEmpty() || edge.compareTo(last.get().done().orElseThrow().setup().edge()) > 0) {
      return Optional.empty();
    }
    Optional<Cause> trouble =
        last.filter(f -> isFresh(f.date(), asked.grip(), day))
            .flatMap(f -> f.trouble(asked.mostEffort()))
            .or(
                () ->
                    aches(asked, day).stream()
                        .filter(a -> isFresh(a.date(), asked.grip(), day))
                        .max(
                            Comparator.comparing(PainReport::score).thenComparing(PainReport::date))
                        .map(ProgressionBlockers::pain));
    Load load = last.get().load().orElseThrow();
    return trouble.map(
        why -> new Dose.Ceiling(load, new Cause.NoMoreThanOn(last.get().date(), why)));
  }

  /**
   * Returns the most that may be loaded on a day while a load comes back that a log held down;
   * empty if none did.
   *
   * @param place where the exercise stands
   * @param edge the edge of that day; on a deeper one than before there is no such limit
   * @param eased true if the week is eased: nothing comes back in it
   */
  Optional<Dose.Ceiling> comingBack(
      Asked asked, ModelPath place, Length edge, LocalDate day, boolean eased) {
    double rise = plan.weeklyRise().orElse(Plan.STANDARD_WEEKLY_RISE);
    return held(asked, Optional.of(HeldLoad.line(place)), day)
        .filter(held -> edge.compareTo(held.edge()) <= 0)
        .map(held -> held.next(rise, !day.isAfter(held.monday(plan.from()).plusDays(6)), eased));
  }

  /** Counts the steps that the log has earned before a day and not lost again. */
  int earned(Asked asked, Advance.WhenLogged pace, LocalDate before) {
    int steps = 0;
    int row = 0;
    int cooling = 0;
    Optional<LocalDate> lastStep = Optional.empty();
    List<PainReport> aches = aches(asked, before);
    int next = 0;
    List<LoggedWork> facts = facts(asked, before);
    for (int i = 0; i <= facts.size(); i++) {
      LocalDate day = i < facts.size() ? facts.get(i).date() : before;
      while (next < aches.size() && aches.get(next).date().isBefore(day)) {
        row = 0;
        cooling = SESSIONS_HELD;
        steps -= lost(lastStep, aches.get(next).date());
        lastStep = kept(lastStep, aches.get(next).date());
        next++;
      }
      if (i == facts.size()) {
        break;
      }
      LoggedWork fact = facts.get(i);
      cooling = Math.max(0, cooling - 1);
      boolean good =
          cooling == 0
              && fact.done().isPresent()
              && fact.trouble(asked.mostEffort()).isEmpty()
              && deserves(pace, fact.done().get());
      row = good ? row + 1 : 0;
      if (!good && fact.trouble(asked.mostEffort()).isPresent()) {
        steps -= lost(lastStep, fact.date());
        lastStep = kept(lastStep, fact.date());
      }
      if (row == pace.sessions()) {
        steps++;
        row = 0;
        lastStep = Optional.of(fact.date());
      }
    }
    return Math.max(0, steps);
  }

  /** A step that is earned and not yet taken is lost by trouble in the same week. */
  private int lost(Optional<LocalDate> step, LocalDate trouble) {
    return step.isPresent() && week(step.get()) == week(trouble) ? 1 : 0;
  }

  private Optional<LocalDate> kept(Optional<LocalDate> step, LocalDate trouble) {
    return step.filter(day -> lost(step, trouble) == 0);
  }

  private long week(LocalDate day) {
    return Math.floorDiv(ChronoUnit.DAYS.between(plan.from(), day), 7L);
  }

  private static boolean deserves(Advance.WhenLogged pace, Done done) {
    return (!pace.doneInFull() || done.inFull())
        && (pace.effortAtMost().isEmpty()
            || (done.effort().isPresent()
                && done.effort().getAsDouble() <= pace.effortAtMost().getAsDouble()))
        && (pace.painAtMost().isEmpty()
            || (done.pain().isPresent()
                && done.pain().getAsDouble() <= pace.painAtMost().getAsDouble()));
  }

  private static Cause pain(PainReport report) {
    return new Cause.Pain(report.date(), report.score(), report.rising(), report.where());
  }
}
