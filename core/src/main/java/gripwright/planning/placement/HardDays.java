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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The days on which the fingers are worked hard: sessions, tests, and climbing. */
public final class HardDays {

  private final Plan plan;
  private final Athlete athlete;
  private final LogTimeline timeline;
  private final Optional<Placement.HardDay> goal;
  private final List<LogEntry.Climbed> climbed;

  /** Sessions that the plan doesn't have, on days that are not known otherwise. */
  private final List<LogEntry.Trained> others;

  /**
   * Knows the fingers' hard days: the day a plan works towards is one as well, and tests that were
   * logged on its first day or later.
   */
  public HardDays(Plan plan, Athlete athlete, LogTimeline timeline) {
    this.plan = plan;
    this.athlete = athlete;
    this.timeline = timeline;
    this.others = timeline.others();
    this.climbed = timeline.log().of(LogEntry.Climbed.class);
    goal =
        plan.towards()
            .map(g -> new Placement.HardDay(g.date(), FingerSet.FOUR, new HardThing.Goal()));
  }

  /** Returns these days as they were known before a day. */
  public HardDays before(LocalDate day) {
    return new HardDays(plan, athlete, timeline.before(day));
  }

  /** Returns what is hard within reach of a week's gaps. */
  public List<Placement.HardDay> near(LocalDate first, HardWork work) {
    List<Placement.HardDay> near = new ArrayList<>();
    LocalDate after = first.minusDays(8);
    LocalDate before = first.plusDays(15);
    for (LocalDate day = after; day.isBefore(before); day = day.plusDays(1)) {
      if (climbsHard(day)) {
        near.add(new Placement.HardDay(day, FingerSet.FOUR, new HardThing.Climbing()));
      }
    }
    goal.filter(day -> day.date().isAfter(after) && day.date().isBefore(before))
        .ifPresent(near::add);
    for (LogEntry.Tested tested : timeline.log().of(LogEntry.Tested.class)) {
      boolean isNear = tested.date().isAfter(after) && tested.date().isBefore(before);
      if (isNear && !tested.date().isBefore(plan.from())) {
        near.add(
            new Placement.HardDay(
                tested.date(), tested.test().setup().grip().fingers(), new HardThing.LoggedTest()));
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
    return near;
  }

  /** Fingers are worked hard unless the effort is written down and below 8. */
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
    return retest.setups().stream()
        .map(s -> s.grip().fingers())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()))
        .orElse(FingerSet.FOUR);
  }

  /** What was logged of a day's climbing stands for what is usual on its weekday. */
  private boolean climbsHard(LocalDate day) {
    boolean logged = false;
    boolean hard = false;
    for (LogEntry.Climbed entry : climbed) {
      boolean then = entry.date().equals(day);
      logged |= then;
      hard |= then && isHard(entry);
    }
    boolean told = logged && !day.isBefore(plan.from());
    return hard || (!told && usuallyHard(day));
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
