package gripwright.planning.placement;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.protocol.Hardness;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The days of hard work for the fingers: sessions, tests, and climbing. */
public final class HardDays {

  private final Plan plan;
  private final Athlete athlete;
  private final LogTimeline timeline;

  /** Schedules of plans that began before this one. */
  private final List<Schedule> earlier;

  /** Those of them that ended before it begins. */
  private final List<Schedule> ended;

  /** The goal days of this plan and of those before it. */
  private final List<Placement.HardDay> goals;

  private final List<LogEntry.Climbed> climbed;

  /** Logged sessions that are not in the plan. */
  private final List<LogEntry.Trained> others;

  /** Logged sessions that are in no plan, as done. */
  private final List<DatedSession> beside;

  /** Logged tests that are not in the plan. */
  private final List<LogEntry.Tested> tested;

  /**
   * Creates the hard days, which include goal days and logged sessions that are in no plan.
   *
   * @param timeline the plan, the athlete and the log
   * @param earlier the schedules of the athlete's plans that began before this one; those that
   *     overlap it keep no days free
   * @param beside logged sessions that are in no plan, as done
   */
  public HardDays(LogTimeline timeline, List<Schedule> earlier, List<DatedSession> beside) {
    this(timeline, earlier, beside, timeline.log().of(LogEntry.Tested.class));
  }

  private HardDays(
      LogTimeline timeline,
      List<Schedule> earlier,
      List<DatedSession> beside,
      List<LogEntry.Tested> tested) {
    this.tested = tested;
    this.plan = timeline.plan();
    this.athlete = timeline.athlete();
    this.timeline = timeline;
    this.earlier = List.copyOf(earlier);
    this.ended = earlier.stream().filter(s -> s.plan().to().isBefore(plan.from())).toList();
    this.others = timeline.others();
    this.beside = beside.stream().filter(session -> session.date().isBefore(plan.from())).toList();
    this.climbed = timeline.log().of(LogEntry.Climbed.class);
    goals =
        Stream.concat(earlier.stream().map(Schedule::plan), Stream.of(plan))
            .flatMap(each -> each.towards().stream())
            .map(g -> new Placement.HardDay(g.date(), FingerSet.FOUR, new HardThing.Goal()))
            .distinct()
            .toList();
  }

  /** Returns the hard days known before a day. */
  public HardDays before(LocalDate day) {
    return new HardDays(
        timeline.before(day),
        earlier,
        beside.stream().filter(session -> session.date().isBefore(day)).toList());
  }

  /** Returns the hard days without the log, which are those of the plan and of regular climbing. */
  public HardDays withoutLog() {
    return before(LocalDate.MIN);
  }

  /**
   * Returns the hard days without logged tests that may be the week's planned ones, so that the
   * week is planned the same before and after its tests.
   *
   * @param first first day of the week
   * @param before tests of the weeks before it
   */
  public HardDays asPlanned(LocalDate first, List<DatedRetest> before) {
    List<LogEntry.Tested> its = new LoggedRetests(plan, timeline.log()).near(first, before);
    return its.isEmpty()
        ? this
        : new HardDays(
            timeline, earlier, beside, tested.stream().filter(t -> !its.contains(t)).toList());
  }

  /** Returns the hard work within reach of a week's gaps. */
  public List<Placement.HardDay> near(LocalDate first, HardWork work) {
    List<Placement.HardDay> near = new ArrayList<>();
    LocalDate after = first.minusDays(8);
    LocalDate before = first.plusDays(15);
    for (LocalDate day = after; day.isBefore(before); day = day.plusDays(1)) {
      if (climbsHard(day)) {
        near.add(new Placement.HardDay(day, FingerSet.FOUR, new HardThing.Climbing()));
      }
    }
    goals.stream()
        .filter(day -> day.date().isAfter(after) && day.date().isBefore(before))
        .forEach(near::add);
    for (LogEntry.Tested line : tested) {
      boolean isNear = line.date().isAfter(after) && line.date().isBefore(before);
      if (isNear && retests(work).noneMatch(test -> LoggedRetests.stands(test, line))) {
        near.add(
            new Placement.HardDay(
                line.date(), line.test().setup().grip().fingers(), new HardThing.LoggedTest()));
      }
    }
    for (LogEntry.Trained other : others) {
      if (other.date().isAfter(after) && other.date().isBefore(before)) {
        hardFingers(other)
            .ifPresent(
                f ->
                    near.add(
                        new Placement.HardDay(
                            other.date(), f, new HardThing.Session(other.session()))));
      }
    }
    for (Schedule other : ended) {
      add(new HardWork(other.sessions(), other.retests(), Map.of()), after, near);
    }
    add(new HardWork(beside, List.of(), Map.of()), after, near);
    add(work, after, near);
    return near;
  }

  /** Returns the tests of this plan and of those that ended before it. */
  private Stream<DatedRetest> retests(HardWork work) {
    return Stream.concat(
        work.retests().stream(), ended.stream().flatMap(each -> each.retests().stream()));
  }

  private static void add(HardWork work, LocalDate after, List<Placement.HardDay> near) {
    for (DatedSession session : work.sessions()) {
      if (session.date().isAfter(after)) {
        hardFingers(session, work)
            .ifPresent(
                f ->
                    near.add(
                        new Placement.HardDay(
                            session.date(), f, new HardThing.Session(session.name()))));
      }
    }
    for (DatedRetest retest : work.retests()) {
      if (retest.date().isAfter(after)) {
        near.add(new Placement.HardDay(retest.date(), fingers(retest), new HardThing.Tests()));
      }
    }
  }

  /**
   * Returns the fingers of hard exercises: a logged exercise is hard unless its effort is logged
   * and below 8.
   */
  private static Optional<FingerSet> hardFingers(LogEntry.Trained other) {
    return other.done().stream()
        .filter(d -> d.effort().orElse(Hardness.EFFORT) >= Hardness.EFFORT)
        .map(d -> d.setup().grip().fingers())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()));
  }

  private static Optional<FingerSet> hardFingers(DatedSession session, HardWork work) {
    return Stream.concat(
            session.exercises().stream()
                .filter(PlannedExercise::hard)
                .map(e -> e.setup().grip().fingers()),
            Optional.ofNullable(work.withoutLogLimits().get(session.path())).stream())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()));
  }

  private static FingerSet fingers(DatedRetest retest) {
    return Stream.concat(
            retest.setups().stream(),
            retest.exercises().stream().filter(PlannedExercise::hard).map(PlannedExercise::setup))
        .map(s -> s.grip().fingers())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()))
        .orElse(FingerSet.FOUR);
  }

  /**
   * Returns whether there is hard climbing on a day: logged climbing replaces the regular climbing
   * of the weekday.
   */
  private boolean climbsHard(LocalDate day) {
    boolean logged = false;
    boolean hard = false;
    for (LogEntry.Climbed entry : climbed) {
      boolean then = entry.date().equals(day);
      logged |= then;
      hard |= then && isHard(entry);
    }
    return hard || (!logged && !isFreshOn(day) && usuallyHard(day));
  }

  private boolean isFreshOn(LocalDate day) {
    for (Placement.HardDay goal : goals) {
      if (goal.date().equals(day)) {
        return true;
      }
    }
    return false;
  }

  private boolean usuallyHard(LocalDate day) {
    for (Athlete.ClimbingDay usual : athlete.climbing()) {
      if (usual.hard() && usual.day() == day.getDayOfWeek()) {
        return !athlete.isAway(day);
      }
    }
    return false;
  }

  private static boolean isHard(LogEntry.Climbed climbed) {
    return climbed.hard() || climbed.effort().orElse(0) >= Hardness.EFFORT;
  }

  /** Returns the days of hard climbing between two days, both included. */
  public List<LocalDate> climbing(LocalDate from, LocalDate to) {
    return from.datesUntil(to.plusDays(1)).filter(this::climbsHard).toList();
  }
}
