package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.athlete.Slot;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.history.LogTimeline;
import gripwright.planning.placement.Conflict;
import gripwright.planning.placement.HardDays;
import gripwright.planning.placement.HardWork;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.PlacementReasons;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.schedule.NotMadeUp;
import gripwright.schedule.PlacementReason;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Places the sessions of a week and says what prevents those that find no day. */
final class WeekPlacing {

  private final Athlete athlete;
  private final LogTimeline timeline;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final Meter meter;

  WeekPlacing(
      Athlete athlete,
      LogTimeline timeline,
      SessionExpansion expansion,
      LookAhead lookAhead,
      Meter meter) {
    this.meter = meter;
    this.athlete = athlete;
    this.timeline = timeline;
    this.expansion = expansion;
    this.lookAhead = lookAhead;
  }

  /**
   * The sessions of a week on their days.
   *
   * @param sessions those that found a day
   * @param withoutLogLimits fingers that each would work hard if the log had limited nothing
   * @param notMadeUp what would have found a day without the log
   */
  record Placed(
      List<DatedSession> sessions,
      Map<ModelPath, FingerSet> withoutLogLimits,
      List<NotMadeUp> notMadeUp) {

    /** A week without a session. */
    static final Placed NOTHING = new Placed(List.of(), Map.of(), List.of());
  }

  /**
   * Returns the sessions of a week on their days, and reports which find none.
   *
   * @param known hard days as far as they were known when the week began
   * @param before what is dated before the week
   * @param found what can't be met is added here
   */
  Placed place(
      WeekContext week,
      List<SessionExpansion.Draft> drafts,
      HardDays known,
      HardWork before,
      FindingList found) {
    List<SessionExpansion.Draft> fitting =
        drafts.stream().filter(d -> fitsSomeDay(week, d, found)).toList();
    Search search = search(week, fitting, known, before);
    noteUnproved(week, search.found(), found);
    PlacementReasons reasons = new PlacementReasons(search.fixed(), athlete, week.number());
    Placement.Days days = search.found().first();
    List<DatedSession> placed = new ArrayList<>();
    Map<ModelPath, FingerSet> hardFingers = new HashMap<>();
    for (int i = 0; i < fitting.size(); i++) {
      SessionExpansion.Draft draft = fitting.get(i);
      if (days.spot(i).isPresent()) {
        Placement.Spot spot = days.spot(i).get();
        PlacementReason because = reasons.because(draft.request(), spot);
        expansion
            .dated(week, draft.session(), spot, because, found)
            .ifPresent(
                session -> {
                  draft
                      .request()
                      .hardFingers()
                      .ifPresent(fingers -> hardFingers.put(session.path(), fingers));
                  placed.add(session);
                });
      }
    }
    List<NotMadeUp> notMadeUp = List.of();
    if (!search.missing().isEmpty()) {
      Search asPlanned =
          timeline.log().entries().isEmpty()
              ? search
              : search(week, fitting, known.withoutLog(), before);
      notMadeUp = notMadeUp(week, search, asPlanned);
      if (!timeline.isPast(week.first())) {
        noteMissing(week, search, asPlanned, notMadeUp, found);
      }
    }
    return new Placed(placed, hardFingers, notMadeUp);
  }

  private static void noteUnproved(WeekContext week, Placement.Found search, FindingList found) {
    if (!search.proved()) {
      found.add(
          Finding.advice("plan.days-unproved", week.path())
              .with("week", week.number())
              .with("more", search.more()),
          search.more());
    }
  }

  private boolean fitsSomeDay(WeekContext week, SessionExpansion.Draft draft, FindingList found) {
    Duration longest =
        athlete.available().stream()
            .filter(draft.request()::isAt)
            .map(Slot::time)
            .max(Duration::compareTo)
            .orElse(Duration.ZERO);
    if (longest.isZero() || draft.request().minutes() <= longest.toMinutes()) {
      return true;
    }
    found.add(
        Finding.error("plan.session-too-long", week.path().then("session", draft.session().name()))
            .with("session", draft.session().name())
            .with("minutes", draft.request().minutes())
            .with("longest", longest.toMinutes()),
        draft.request().minutes());
    return false;
  }

  /** Looks for days, which are kept from what is hard. */
  private Search search(
      WeekContext week, List<SessionExpansion.Draft> drafts, HardDays hard, HardWork before) {
    Placement.Week fixed =
        new Placement.Week(
            week.first(),
            athlete::slotsOn,
            hard.near(week.first(), before),
            PlanState.lastOfName(before.sessions()));
    List<Placement.Request> requests =
        drafts.stream().map(SessionExpansion.Draft::request).toList();
    Placement.Found found =
        Placement.place(
            new Placement.WeekDemand(fixed, requests, lookAhead.testsIn(week.number())),
            lookAhead::gapDays,
            () ->
                lookAhead.after(
                    week, requests, day -> hard.asPlanned(day, before.retests()).near(day, before)),
            meter);
    return new Search(fixed, drafts, found);
  }

  /**
   * How days were looked for, and the result of it.
   *
   * @param fixed the week before its sessions
   * @param drafts sessions that wanted a day
   * @param found the days, in the order of the drafts
   */
  private record Search(
      Placement.Week fixed, List<SessionExpansion.Draft> drafts, Placement.Found found) {

    /** Returns how many of each name find no day. */
    Map<String, Integer> missing() {
      Map<String, Integer> missing = new TreeMap<>();
      for (int i = 0; i < drafts.size(); i++) {
        if (found.first().sessions().get(i).isEmpty()) {
          missing.merge(drafts.get(i).session().name(), 1, Integer::sum);
        }
      }
      return missing;
    }

    /** Returns the requests of other names that find a day. */
    List<Placement.Request> placedBeside(String name) {
      List<Placement.Request> placed = new ArrayList<>();
      for (int i = 0; i < drafts.size(); i++) {
        Placement.Request request = drafts.get(i).request();
        if (found.first().sessions().get(i).isPresent() && !request.name().equals(name)) {
          placed.add(request);
        }
      }
      return placed;
    }
  }

  /**
   * Returns the sessions that find no day for what was logged: only as many as would find none
   * without the log are the plan's own.
   *
   * @param asPlanned how days are found as if nothing had been logged
   */
  private static List<NotMadeUp> notMadeUp(WeekContext week, Search search, Search asPlanned) {
    Map<String, Integer> own = asPlanned.missing();
    int byLog = Math.max(0, sum(search.missing()) - sum(own));
    List<NotMadeUp> lost = new ArrayList<>();
    for (Map.Entry<String, Integer> missing : search.missing().entrySet()) {
      int count = missing.getValue();
      int ofPlan = Math.min(count, Math.max(own.getOrDefault(missing.getKey(), 0), count - byLog));
      byLog -= count - ofPlan;
      if (ofPlan < count) {
        lost.add(new NotMadeUp(week.number(), missing.getKey(), count - ofPlan));
      }
    }
    return lost;
  }

  /** Says which sessions find no day. What was logged is never an error of the plan. */
  private void noteMissing(
      WeekContext week,
      Search search,
      Search asPlanned,
      List<NotMadeUp> notMadeUp,
      FindingList found) {
    Map<String, Integer> own = asPlanned.missing();
    Map<String, Integer> lost = new TreeMap<>();
    notMadeUp.forEach(some -> lost.put(some.session(), some.count()));
    for (Map.Entry<String, Integer> missing : search.missing().entrySet()) {
      String name = missing.getKey();
      int count = missing.getValue();
      int ofPlan = count - lost.getOrDefault(name, 0);
      if (ofPlan > 0) {
        noteMissing(week, own.containsKey(name) ? asPlanned : search, name, ofPlan, found);
      }
      if (ofPlan < count) {
        noteNotMadeUp(week, search, name, count, found);
      }
    }
  }

  private static int sum(Map<String, Integer> missing) {
    return missing.values().stream().mapToInt(Integer::intValue).sum();
  }

  private void noteNotMadeUp(
      WeekContext week, Search search, String name, int missing, FindingList found) {
    SessionExpansion.Draft draft = draft(search, name);
    int wanted = draft.session().perWeek();
    found.add(
        Finding.advice("plan.session-not-made-up", week.path().then("session", name))
            .with("session", name)
            .with("week", week.number())
            .with("wanted", wanted)
            .with("placed", wanted - missing)
            .with(
                "reason",
                new PlacementReasons(search.fixed(), athlete, week.number())
                    .conflict(draft.request(), facts(search, draft))),
        missing);
  }

  private static SessionExpansion.Draft draft(Search search, String name) {
    return search.drafts().stream()
        .filter(d -> d.session().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Set<Conflict.Fact> facts(Search search, SessionExpansion.Draft draft) {
    String name = draft.session().name();
    int wanted = draft.session().perWeek();
    return new Conflict(search.fixed(), draft.request(), wanted, search.placedBeside(name))
        .fewest(meter);
  }

  private void noteMissing(
      WeekContext week, Search search, String name, int missing, FindingList found) {
    SessionExpansion.Draft draft = draft(search, name);
    int wanted = draft.session().perWeek();
    Set<Conflict.Fact> facts = facts(search, draft);
    boolean away = week.first().datesUntil(week.first().plusDays(7)).anyMatch(athlete::isAway);
    boolean afterLog = timeline.isPast(week.first().minusDays(7));
    ModelPath place = week.path().then("session", name);
    Optional<LocalDate> goal =
        facts.stream()
            .filter(
                f ->
                    f instanceof Conflict.HardOn hard
                        && hard.day().what() instanceof HardThing.Goal)
            .map(f -> ((Conflict.HardOn) f).day().date())
            .findFirst();
    Finding finding =
        away || goal.isPresent() || afterLog
            ? Finding.warning("plan.week-short", place)
            : Finding.error("plan.no-day", place);
    if (goal.isPresent()) {
      finding = finding.with("goal", goal.get());
    } else if (afterLog && !away) {
      finding = finding.with("after", timeline.lastKnownDay().orElseThrow());
    }
    found.add(
        finding
            .with("session", name)
            .with("week", week.number())
            .with("wanted", wanted)
            .with("placed", wanted - missing)
            .with(
                "reason",
                new PlacementReasons(search.fixed(), athlete, week.number())
                    .conflict(draft.request(), facts, refusesToShare(week, search))),
        missing);
  }

  /** Returns whether a session would share days if the athlete were old enough. */
  private boolean refusesToShare(WeekContext week, Search search) {
    return !new SharedDays(athlete).isOldEnough(week.first())
        && search.drafts().stream().anyMatch(draft -> draft.session().share().isPresent());
  }
}
