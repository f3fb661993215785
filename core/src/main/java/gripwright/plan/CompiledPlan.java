package gripwright.plan;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.log.Log;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What came of a plan for one athlete: dated sessions, weeks, tests, and what there is to say about
 * them. Immutable.
 *
 * @param plan what was compiled
 * @param athlete for whom
 * @param log what was known of the athlete
 * @param sessions sessions by date: those of the past as they were done, then those planned
 * @param weeks every week of the plan, in order
 * @param retests dated tests
 * @param climbing hard climbing days that fall in the plan, by date
 * @param findings from planning and rules, in order of place
 * @param heard what the log said of the plan's days
 */
public record CompiledPlan(
    Plan plan,
    Athlete athlete,
    Log log,
    List<DatedSession> sessions,
    List<PlanWeek> weeks,
    List<DatedRetest> retests,
    List<LocalDate> climbing,
    List<Finding> findings,
    HeardLog heard) {

  /**
   * The code of tests that were due on a day of which the log tells, and that it has no line of.
   */
  public static final String TEST_NOT_LOGGED = "plan.test-not-logged";

  /** Copies the lists. */
  public CompiledPlan {
    sessions = List.copyOf(sessions);
    weeks = List.copyOf(weeks);
    retests = List.copyOf(retests);
    climbing = List.copyOf(climbing);
    findings = List.copyOf(findings);
  }

  /** What came of a plan whose log says nothing of the plan's days. */
  public CompiledPlan(
      Plan plan,
      Athlete athlete,
      Log log,
      List<DatedSession> sessions,
      List<PlanWeek> weeks,
      List<DatedRetest> retests,
      List<LocalDate> climbing,
      List<Finding> findings) {
    this(plan, athlete, log, sessions, weeks, retests, climbing, findings, HeardLog.NOTHING);
  }

  /** Returns this result with other findings. */
  public CompiledPlan withFindings(List<Finding> others) {
    return new CompiledPlan(plan, athlete, log, sessions, weeks, retests, climbing, others, heard);
  }

  /** Returns this result with what the log changed in it. */
  public CompiledPlan changing(List<LogChange> changes) {
    return new CompiledPlan(
        plan, athlete, log, sessions, weeks, retests, climbing, findings, heard.changing(changes));
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return sessions.stream().filter(s -> s.week() == week).toList();
  }

  /**
   * Returns what was asked of the athlete, by date: sessions of the past as they were planned,
   * those that were missed with them, and what is still planned.
   */
  public List<DatedSession> asked() {
    return Stream.concat(
            sessions.stream()
                .flatMap(s -> s.happened().isEmpty() ? Stream.of(s) : planned(s.happened().get())),
            heard.missed().stream().map(MissedSession::planned))
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name))
        .toList();
  }

  private static Stream<DatedSession> planned(Happened happened) {
    return happened.planned().stream();
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return sessions.stream().filter(s -> s.date().equals(day)).toList();
  }

  /**
   * Returns this result with nothing but one day of it: its sessions, tests and climbing, and the
   * week that it lies in. Findings stay.
   */
  public CompiledPlan on(LocalDate day) {
    return new CompiledPlan(
        plan,
        athlete,
        log,
        sessionsOn(day),
        weeks.stream().filter(w -> !day.isBefore(w.from()) && !day.isAfter(w.to())).toList(),
        retests.stream().filter(r -> r.date().equals(day)).toList(),
        climbing.stream().filter(day::equals).toList(),
        findings,
        heard.on(day));
  }

  /**
   * Returns what an athlete is told with the plan: what each grip it uses calls for, by grip name,
   * then what holds for every plan.
   */
  public List<String> cautions() {
    SortedMap<String, Grip> grips = new TreeMap<>();
    sessions.stream()
        .flatMap(s -> s.exercises().stream())
        .map(e -> e.setup().grip())
        .forEach(g -> grips.put(g.name(), g));
    retests.stream()
        .flatMap(r -> r.setups().stream())
        .forEach(r -> grips.put(r.grip().name(), r.grip()));
    List<String> cautions = new ArrayList<>();
    grips.forEach((name, grip) -> grip.cautions().forEach(c -> cautions.add(name + ": " + c)));
    for (Caution caution : Caution.values()) {
      cautions.add(caution.text());
    }
    return cautions;
  }

  /** Tells whether the sessions may be used: no error stands against them. */
  public boolean usable() {
    return findings.stream().noneMatch(Finding::blocks);
  }

  /** Tells whether all days of a place of this plan are past: what stands there has happened. */
  public boolean isPast(ModelPath place) {
    return place.steps().stream()
        .filter(step -> step.kind().equals("date"))
        .map(step -> LocalDate.parse(step.name()))
        .findFirst()
        .map(heard::isPast)
        .orElseGet(
            () -> weeks.stream().anyMatch(w -> w.path().contains(place) && heard.isPast(w.to())));
  }
}
