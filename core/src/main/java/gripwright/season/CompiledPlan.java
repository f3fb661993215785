package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of a plan for one athlete: dated sessions, weeks, tests, and what there is to say about
 * them. Immutable.
 *
 * @param schedule sessions, weeks and tests by date
 * @param timeline what was known of the athlete
 * @param changes what the log's lines since the plan began changed in the days ahead, by date
 * @param findings from planning and rules, in order of place
 */
public record CompiledPlan(
    Schedule schedule, LogTimeline timeline, List<LogChange> changes, List<Finding> findings) {

  /** Copies the lists. */
  public CompiledPlan {
    changes = List.copyOf(changes);
    findings = List.copyOf(findings);
  }

  /** Returns what was compiled. */
  public Plan plan() {
    return schedule.plan();
  }

  /** Returns for whom it was compiled. */
  public Athlete athlete() {
    return schedule.athlete();
  }

  /** Returns what was known of the athlete. */
  public Log log() {
    return timeline.log();
  }

  /** Returns the sessions by date: those of the past as they were done, then those planned. */
  public List<DatedSession> sessions() {
    return schedule.sessions();
  }

  /** Returns every week of the plan, in order. */
  public List<PlanWeek> weeks() {
    return schedule.weeks();
  }

  /** Returns the dated tests. */
  public List<DatedRetest> retests() {
    return schedule.retests();
  }

  /** Returns the hard climbing days that fall in the plan, by date. */
  public List<LocalDate> climbing() {
    return schedule.climbing();
  }

  /** Returns what was planned in the past and not done, by date. */
  public List<MissedSession> missed() {
    return schedule.missed();
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return schedule.sessionsOf(week);
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return schedule.sessionsOn(day);
  }

  /** Returns the last day whose sessions are known; empty if the log covers none of the plan. */
  public Optional<LocalDate> lastKnownDay() {
    return timeline.lastKnownDay();
  }

  /** Returns this result with other findings. */
  public CompiledPlan withFindings(List<Finding> others) {
    return new CompiledPlan(schedule, timeline, changes, others);
  }

  /**
   * Returns this result with nothing but one day of it: its sessions, tests, climbing and changes,
   * and the week that it lies in. Findings stay.
   */
  public CompiledPlan on(LocalDate day) {
    return new CompiledPlan(
        schedule.on(day),
        timeline,
        changes.stream().filter(c -> c.change().date().equals(day)).toList(),
        findings);
  }

  /**
   * Returns the cautions that go with the plan: what each grip it uses calls for, by grip name,
   * then what holds for every plan.
   */
  public List<Caution> cautions() {
    SortedMap<String, Grip> grips = new TreeMap<>();
    sessions().stream()
        .flatMap(s -> s.exercises().stream())
        .map(e -> e.setup().grip())
        .forEach(g -> grips.put(g.name(), g));
    retests().stream()
        .flatMap(r -> r.setups().stream())
        .forEach(r -> grips.put(r.grip().name(), r.grip()));
    List<Caution> cautions = new ArrayList<>();
    grips.forEach(
        (name, grip) ->
            grip.cautions().forEach(text -> cautions.add(new Caution.OfGrip(name, text))));
    cautions.addAll(Caution.general());
    return cautions;
  }

  /** Tells whether the sessions may be used: no error prevents it. */
  public boolean usable() {
    return findings.stream().noneMatch(Finding::blocks);
  }

  /** Tells whether all days of a place of this plan are past: what stands there has happened. */
  public boolean isPast(ModelPath place) {
    return timeline.isPast(place, schedule.weeks());
  }
}
