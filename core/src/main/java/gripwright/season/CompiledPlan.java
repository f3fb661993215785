package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.Note;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A compiled plan for one athlete: dated sessions, weeks, tests, and the findings about them.
 * Immutable.
 */
public final class CompiledPlan {

  /** The components; lists are copied. */
  private record Parts(
      Schedule schedule, LogTimeline timeline, List<LogChange> changes, List<Finding> findings) {
    Parts {
      changes = List.copyOf(changes);
      findings = List.copyOf(findings);
    }
  }

  private final Parts parts;

  private CompiledPlan(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a compiled plan without changes and findings.
   *
   * @param schedule sessions, weeks and tests by date
   * @param timeline plan and log of the athlete, read together
   */
  public static CompiledPlan of(Schedule schedule, LogTimeline timeline) {
    return new CompiledPlan(new Parts(schedule, timeline, List.of(), List.of()));
  }

  /** Returns this result with other changes by the log. */
  CompiledPlan withChanges(List<LogChange> others) {
    return new CompiledPlan(new Parts(parts.schedule, parts.timeline, others, parts.findings));
  }

  /** Returns the sessions, weeks and tests by date. */
  public Schedule schedule() {
    return parts.schedule;
  }

  /** Returns the plan and log of the athlete, read together. */
  public LogTimeline timeline() {
    return parts.timeline;
  }

  /**
   * Returns the changes in the days ahead that log entries since the plan's start caused, by date.
   */
  public List<LogChange> changes() {
    return parts.changes;
  }

  /** Returns the findings from planning and rules, in order of place. */
  public List<Finding> findings() {
    return parts.findings;
  }

  /** Returns the plan as written. */
  public Plan plan() {
    return parts.schedule.plan();
  }

  /** Returns the athlete. */
  public Athlete athlete() {
    return parts.schedule.athlete();
  }

  /** Returns the log used. */
  public Log log() {
    return parts.timeline.log();
  }

  /** Returns the sessions by date: past ones as trained, then planned ones. */
  public List<DatedSession> sessions() {
    return parts.schedule.sessions();
  }

  /** Returns every week of the plan, in order. */
  public List<PlanWeek> weeks() {
    return parts.schedule.weeks();
  }

  /** Returns the dated tests. */
  public List<DatedRetest> retests() {
    return parts.schedule.retests();
  }

  /** Returns the days of hard climbing within the plan, by date. */
  public List<LocalDate> climbing() {
    return parts.schedule.climbing();
  }

  /** Returns past sessions that were planned but not done, by date. */
  public List<MissedSession> missed() {
    return parts.schedule.missed();
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return parts.schedule.sessionsOf(week);
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return parts.schedule.sessionsOn(day);
  }

  /** Returns the injuries whose weeks of return after clearance overlap the plan. */
  public List<Injury> clearances() {
    return athlete().injuries().stream()
        .filter(injury -> injury.isReturning(plan().from(), plan().to()))
        .toList();
  }

  /**
   * Returns who supervises one of these sessions: the person it names itself, or the one the plan
   * names.
   */
  public Optional<String> supervisorOf(DatedSession session) {
    return plan().supervisorOf(session.block(), session.name(), athlete().name());
  }

  /** Returns the last day whose sessions are known; empty if the log covers none of the plan. */
  public Optional<LocalDate> lastKnownDay() {
    return parts.timeline.lastKnownDay();
  }

  /** Returns this result with other findings. */
  public CompiledPlan withFindings(List<Finding> others) {
    return new CompiledPlan(new Parts(parts.schedule, parts.timeline, parts.changes, others));
  }

  /** Returns this result with a finding before the others. */
  CompiledPlan withFinding(Finding first) {
    return withFindings(Stream.concat(Stream.of(first), parts.findings.stream()).toList());
  }

  /**
   * Returns this result reduced to one day: its sessions, tests, climbing and changes, and its
   * week. Findings stay.
   */
  public CompiledPlan on(LocalDate day) {
    return new CompiledPlan(
        new Parts(
            parts.schedule.on(day),
            parts.timeline,
            parts.changes.stream().filter(c -> c.change().date().equals(day)).toList(),
            parts.findings));
  }

  /**
   * Returns the cautions of the plan: those of each grip in use, by grip name, then those of every
   * plan.
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    grips()
        .forEach(
            (name, grip) ->
                grip.cautions().forEach(text -> cautions.add(new Caution.OfGrip(name, text))));
    cautions.addAll(Caution.general());
    return cautions;
  }

  /**
   * Returns the notes of the plan, of its blocks, and of the protocols and grips in use, in this
   * order; those of sessions and exercises are with them.
   */
  public List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    Plan plan = plan();
    plan.notes().forEach(text -> notes.add(new Note(Note.About.PLAN, plan.name(), text)));
    SortedMap<String, Protocol> protocols = new TreeMap<>();
    for (Block block : plan.blocks()) {
      Block.Content content = block.contentFor(athlete().name());
      content.notes().forEach(text -> notes.add(new Note(Note.About.BLOCK, block.name(), text)));
      content.sessions().stream()
          .flatMap(session -> session.contentFor(athlete().name()).exercises().stream())
          .forEach(line -> protocols.put(line.protocol().name(), line.protocol()));
    }
    plan.retests().stream()
        .flatMap(test -> test.exercises().stream())
        .forEach(line -> protocols.put(line.protocol().name(), line.protocol()));
    protocols.forEach(
        (name, protocol) ->
            protocol.notes().forEach(text -> notes.add(new Note(Note.About.PROTOCOL, name, text))));
    grips()
        .forEach(
            (name, grip) ->
                grip.notes().forEach(text -> notes.add(new Note(Note.About.GRIP, name, text))));
    return notes;
  }

  private SortedMap<String, Grip> grips() {
    SortedMap<String, Grip> grips = new TreeMap<>();
    sessions().stream()
        .flatMap(s -> s.exercises().stream())
        .map(e -> e.setup().grip())
        .forEach(g -> grips.put(g.name(), g));
    retests().stream()
        .flatMap(
            r ->
                Stream.concat(
                    r.setups().stream(), r.exercises().stream().map(PlannedExercise::setup)))
        .forEach(setup -> grips.put(setup.grip().name(), setup.grip()));
    return grips;
  }

  /** Returns whether the sessions may be used, which no error prevents. */
  public boolean usable() {
    return parts.findings.stream().noneMatch(Finding::blocks);
  }

  /** Returns whether all days of a place in this plan are in the past. */
  public boolean isPast(ModelPath place) {
    return parts.timeline.isPast(place, parts.schedule.weeks());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CompiledPlan that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "CompiledPlan" + parts.toString().substring("Parts".length());
  }
}
